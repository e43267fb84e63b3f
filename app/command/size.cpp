#include <memory>
#include <nlohmann/json.hpp>

#include "help.h"
#include "intake/size_reading.h"
#include "opened.h"
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
                          {"departs", units::rounded(reading.largestError)},
                          {"departsAt", units::rounded(reading.errorAt)},
                          {"says", reading.says}}
        .dump(2);
}

int runSize(const SizeArguments& arguments) {
    project::Problems problems;
    const auto reading = intake::readSize(arguments.text, arguments.context, problems);
    for (project::Problem& problem : problems)
        problem.file = problem.place.empty() ? "tenter-cli size" : "TEXT";
    printProblems(problems);
    if (!reading) return wrongInput;
    return deliver({}, (arguments.json ? asJson(*reading) : reading->says) + "\n");
}

}  // namespace

void addSize(CLI::App& app, Action& action) {
    auto arguments = std::make_shared<SizeArguments>();
    CLI::App* verb = app.add_subcommand("size", "Print the ramp that a CSS font size describes");
    verb->add_option("TEXT", arguments->text,
                     "CSS text: a value such as \"clamp(1rem, 2vw, 2rem)\", a font-size declaration, or one "
                     "rule. Write -- "
                     "before it if it starts with a hyphen.")
        ->required();
    verb->add_option("--least", arguments->context.least,
                     "Smallest viewport width in px, from 1 to 10000. Default: 320.")
        ->check(numberFrom(1, 10000))
        ->type_name("PX");
    verb->add_option("--most", arguments->context.most,
                     "Largest viewport width in px, from 1 to 10000; above --least. Default: 1920.")
        ->check(numberFrom(1, 10000))
        ->type_name("PX");
    verb->add_option("--root", arguments->context.root,
                     "Root font size of the theme in px, from 1 to 100. Default: 16.")
        ->check(numberFrom(1, 100))
        ->type_name("PX");
    verb->add_flag("--json", arguments->json, "Print JSON instead of a sentence.");
    setHelpEnd(
        *verb,
        "Ramp: a font size that changes in a straight line between two widths and is constant outside them.",
        {"size \"clamp(1rem, 0.5rem + 2vw, 2rem)\"", "size \"font-size: 2rem\" --root 10 --json"},
        {exitDone(), exitWrongInput()});
    verb->callback([&action, arguments] { action = [arguments] { return runSize(*arguments); }; });
}

}  // namespace tenter::command
