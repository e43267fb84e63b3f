#include "remedy/remedies.h"

#include <memory>
#include <optional>
#include <utility>

#include "audience.h"
#include "checks/checks.h"
#include "help.h"
#include "opened.h"
#include "outcome.h"
#include "project/file.h"
#include "project/wording.h"
#include "remedy/wording.h"
#include "verbs.h"

namespace tenter::command {

namespace {

struct RemedyArguments : Arguments {
    std::string number;
    std::string audience;
};

/// The finding and the remedy, from 1, that `2.1` names; empty for any other text.
std::optional<std::pair<std::size_t, std::size_t>> numbersOf(const std::string& text) {
    const std::size_t dot = text.find('.');
    const auto numberOf = [](const std::string& digits) -> std::size_t {
        // Longer numbers name no finding.
        if (digits.empty() || digits.size() > 6) return 0;
        for (const char c : digits)
            if (c < '0' || c > '9') return 0;
        return std::stoul(digits);
    };
    if (dot == std::string::npos) return std::nullopt;
    const std::pair numbers{numberOf(text.substr(0, dot)), numberOf(text.substr(dot + 1))};
    if (numbers.first == 0 || numbers.second == 0) return std::nullopt;
    return numbers;
}

std::string counted(std::size_t count, const std::string& one, const std::string& several) {
    return count == 0 ? "no " + one : std::to_string(count) + " " + (count == 1 ? one : several);
}

int runRemedy(RemedyArguments arguments) {
    const auto numbers = numbersOf(arguments.number);
    if (!numbers)
        return refuse("REMEDY",
                      "The number must be that of a finding and of its remedy, such as 2.1; it is " +
                          project::inQuotes(arguments.number) + ".",
                      "tenter-cli check PROJECT --remedies prints them.");
    const bool both = arguments.engine.empty();
    if (both) arguments.engine = text::defaultProfile().name();
    checks::Options options;
    if (!readVisits(arguments.audience, options.audience)) return wrongInput;
    const std::unique_ptr<Opened> opened = openProject(arguments);
    if (!opened) return wrongInput;
    if (!both) options.profile = opened->profile;
    const std::vector<checks::Finding> findings =
        checks::check(opened->project, opened->variant, opened->store, options);
    const auto [finding, number] = *numbers;
    if (finding > findings.size())
        return refuse("REMEDY",
                      "There is no finding " + std::to_string(finding) + "; the row has " +
                          counted(findings.size(), "finding", "findings") + ".",
                      "tenter-cli check PROJECT --remedies prints them.");
    std::vector<remedy::Remedy> remedies = remedy::remediesFor(
        opened->project, opened->variant, findings[finding - 1], opened->store, {.checks = options});
    if (number > remedies.size())
        return refuse("REMEDY",
                      "Finding " + std::to_string(finding) + " has no remedy " + std::to_string(number) +
                          "; it has " + counted(remedies.size(), "remedy", "remedies") + ".",
                      "tenter-cli check PROJECT --remedies prints them.");
    const remedy::Remedy& chosen = remedies[number - 1];
    const std::string report = remedy::titleOf(chosen) + ". " +
                               remedy::effectOf(chosen, options.audience.empty() ? "widths" : "visits") +
                               "\n";
    const int delivered = deliver(arguments, project::write(chosen.project));
    if (delivered == done) printNote(report);
    return delivered;
}

}  // namespace

void addRemedy(CLI::App& app, Action& action) {
    auto arguments = std::make_shared<RemedyArguments>();
    arguments->engine.clear();
    CLI::App* verb = app.add_subcommand("remedy", "Print the project with a remedy of a finding applied");
    addFiles(*verb, *arguments);
    verb->add_option("REMEDY", arguments->number,
                     "Number of a finding and of its remedy, such as 2.1, as check --remedies prints it with "
                     "the same --variant, --engine and --audience.")
        ->required();
    addVariant(*verb, *arguments);
    addEngine(*verb, *arguments);
    addAudience(*verb, arguments->audience);
    setHelpEnd(*verb,
               "Remedy: a change that Tenter has tried; it removes the finding, or at least half of its "
               "widths, and adds none that is as severe. Standard error says what the change does.",
               {"remedy row.tenter.json 1.1", "remedy row.tenter.json 1.1 --out fixed.tenter.json"},
               {exitDone(), exitWrongInput()});
    verb->callback([&action, arguments] { action = [arguments] { return runRemedy(*arguments); }; });
}

}  // namespace tenter::command
