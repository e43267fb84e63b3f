#include <iostream>
#include <memory>
#include <nlohmann/json.hpp>

#include "intake/size_reading.h"
#include "outcome.h"
#include "units/number.h"
#include "verbs.h"

namespace tenter::command {

namespace {

struct SizeArguments {
    std::string text;
    intake::SizeContext context;
    bool json = false;
};

std::string asJson(const intake::SizeReading& reading) {
    const auto point = [](units::RampPoint at) {
        return nlohmann::json{{"width", at.width}, {"size", at.size}};
    };
    const bool card = reading.follow == project::Follow::Card;
    return nlohmann::json{{"from", point(reading.ramp.from())},
                          {"to", point(reading.ramp.to())},
                          {"follow", card ? "card" : "viewport"},
                          {"exact", reading.exact},
                          {"departs", units::rounded(reading.departs)},
                          {"departsAt", units::rounded(reading.departsAt)},
                          {"says", reading.says}}
        .dump(2);
}

int runSize(const SizeArguments& arguments) {
    project::Problems problems;
    const auto reading = intake::readSize(arguments.text, arguments.context, problems);
    for (project::Problem& problem : problems)
        problem.file = problem.place.empty() ? "tenter-cli size" : "TEXT";
    tell(problems);
    if (!reading) return wrongInput;
    std::cout << (arguments.json ? asJson(*reading) : reading->says) << '\n';
    return done;
}

}  // namespace

void addSize(CLI::App& app, Action& action) {
    auto arguments = std::make_shared<SizeArguments>();
    CLI::App* verb = app.add_subcommand("size", "Print which ramp a font size in CSS is");
    verb->add_option("TEXT", arguments->text,
                     "A value, a declaration or a rule; -- before it if it starts with -")
        ->required();
    verb->add_option("--least", arguments->context.least, "Least page width in px (320 if left out)")
        ->type_name("PX");
    verb->add_option("--most", arguments->context.most, "Greatest page width in px (1920 if left out)")
        ->type_name("PX");
    verb->add_option("--root", arguments->context.root, "The theme's root size in px (16 if left out)")
        ->type_name("PX");
    verb->add_flag("--json", arguments->json, "Print it as JSON");
    verb->callback([&action, arguments] { action = [arguments] { return runSize(*arguments); }; });
}

}  // namespace tenter::command
