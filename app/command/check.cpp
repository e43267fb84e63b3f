#include "checks/checks.h"

#include <algorithm>
#include <memory>

#include "audience.h"
#include "emit/findings.h"
#include "emit/room_for_copy.h"
#include "help.h"
#include "opened.h"
#include "outcome.h"
#include "remedy/remedies.h"
#include "verbs.h"

namespace tenter::command {

namespace {

struct CheckArguments : Arguments {
    bool json = false;
    bool room = false;
    bool remedies = false;
    std::string failOn = "error";
    std::string audience;
};

/// The remedies of each finding.
emit::RemediesOfAll remediesOf(Opened& opened, const std::vector<checks::Finding>& findings,
                               const checks::Options& options) {
    emit::RemediesOfAll all;
    for (const checks::Finding& finding : findings)
        all.push_back(
            remedy::remediesFor(opened.project, opened.variant, finding, opened.store, {.checks = options}));
    return all;
}

/// The room of each text of the variant, in characters, as JSON or as a table.
std::string roomOf(Opened& opened, const checks::Options& options, bool json) {
    const std::vector<checks::RoomForCopy> rooms =
        checks::roomForCopy(opened.project, opened.variant, opened.store, options);
    if (json) return emit::roomJson(opened.project, rooms);
    if (rooms.empty())
        return "No wish limits the line count of a text, so no text has a limit to its length.\n";
    return emit::roomSentence() + "\n" + emit::roomTable(opened.project, rooms);
}

int runCheck(CheckArguments arguments) {
    const auto failOn = checks::severityOf(arguments.failOn);
    if (!failOn)
        return refuse("--fail-on",
                      "The severity must be note, warning or error; it is \"" + arguments.failOn + "\".", "");
    checks::Options options;
    const bool both = arguments.engine.empty();
    if (both) arguments.engine = text::defaultProfile().name();
    if (!readVisits(arguments.audience, options.audience)) return wrongInput;
    const std::unique_ptr<Opened> opened = openProject(arguments);
    if (!opened) return wrongInput;
    if (!both) options.profile = opened->profile;
    options.untried = opened->untried;
    if (arguments.room) return deliver(arguments, roomOf(*opened, options, arguments.json));
    const checks::Checked checked =
        checks::checkAll(opened->project, opened->variant, opened->store, options);
    const std::vector<checks::Finding>& findings = checked.findings;
    const std::string shareOf = options.audience.empty() ? "widths" : "visits";
    const emit::RemediesOfAll remedies =
        arguments.remedies ? remediesOf(*opened, findings, options) : emit::RemediesOfAll();
    const auto asJson = [&] {
        return arguments.remedies ? emit::findingsJson(opened->project, findings, remedies)
                                  : emit::findingsJson(findings);
    };
    const int delivered =
        deliver(arguments,
                arguments.json ? asJson() : emit::findingsList(opened->project, checked, shareOf, remedies));
    if (delivered != done) return delivered;
    const bool any = std::ranges::any_of(
        findings, [&](const checks::Finding& finding) { return finding.severity >= *failOn; });
    return any ? hasFindings : done;
}

}  // namespace

void addCheck(CLI::App& app, Action& action) {
    auto arguments = std::make_shared<CheckArguments>();
    arguments->engine.clear();
    CLI::App* verb =
        app.add_subcommand("check", "Print findings: what is wrong or could be better, at which widths");
    addFiles(*verb, *arguments);
    addVariant(*verb, *arguments);
    CLI::Option* trial = addTrial(*verb, *arguments);
    addEngine(*verb, *arguments);
    verb->add_flag("--json", arguments->json,
                   "Print JSON instead of a list. In JSON, the first card and the first part have the "
                   "number 0.");
    verb->add_flag(
        "--room", arguments->room,
        "Print the room for text instead of findings: the number of characters that you can add to each "
        "text before it needs more lines than its wish allows.");
    verb->add_flag("--remedies", arguments->remedies,
                   "Also print the remedies of each finding: changes that Tenter has tried, and what else "
                   "each of them does. The verb remedy applies one, by its number such as 2.1.")
        ->excludes(trial);
    verb->add_option("--fail-on", arguments->failOn,
                     "Lowest severity of a finding that makes the exit code 1: note, warning or error. "
                     "Default: error.")
        ->type_name("SEVERITY");
    addAudience(*verb, arguments->audience);
    setHelpEnd(*verb, checks::caution,
               {"check row.tenter.json", "check row.tenter.json --audience visits.csv --fail-on warning"},
               {{0, "Done. No finding reaches the severity of --fail-on."},
                {1, "Done. At least one finding reaches the severity of --fail-on."},
                exitWrongInput()});
    verb->callback([&action, arguments] { action = [arguments] { return runCheck(*arguments); }; });
}

}  // namespace tenter::command
