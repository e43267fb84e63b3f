#include "checks/checks.h"

#include <algorithm>
#include <memory>

#include "emit/findings.h"
#include "emit/room_for_copy.h"
#include "help.h"
#include "opened.h"
#include "outcome.h"
#include "verbs.h"

namespace tenter::command {

namespace {

struct CheckArguments : Arguments {
    bool json = false;
    bool room = false;
    std::string failOn = "error";
    std::string audience;
};

/// Reads the audience file into `audience`. False if it cannot be used; the reason has been printed.
bool readVisits(const std::string& file, checks::Audience& audience) {
    const std::optional<std::string> text = fileText(file);
    if (!text) {
        refuse(file, "The audience file cannot be read.",
               "Check its name and folder; it must be a CSV file with the columns width and visits.");
        return false;
    }
    project::Problems problems;
    const auto read = checks::readAudience(*text, file, problems);
    printProblems(problems);
    if (read) audience = *read;
    return read.has_value();
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
    if (!arguments.audience.empty() && !readVisits(arguments.audience, options.audience)) return wrongInput;
    const std::unique_ptr<Opened> opened = openProject(arguments);
    if (!opened) return wrongInput;
    if (!both) options.profile = opened->profile;
    options.untried = opened->untried;
    if (arguments.room) return deliver(arguments, roomOf(*opened, options, arguments.json));
    const checks::Checked checked =
        checks::checkAll(opened->project, opened->variant, opened->store, options);
    const std::vector<checks::Finding>& findings = checked.findings;
    const std::string shareOf = options.audience.empty() ? "widths" : "visits";
    const int delivered =
        deliver(arguments, arguments.json ? emit::findingsJson(findings)
                                          : emit::findingsList(opened->project, checked, shareOf));
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
    addTrial(*verb, *arguments);
    addEngine(*verb, *arguments);
    verb->add_flag("--json", arguments->json,
                   "Print JSON instead of a list. In JSON, the first card and the first part have the "
                   "number 0.");
    verb->add_flag(
        "--room", arguments->room,
        "Print the room for text instead of findings: the number of characters that you can add to each "
        "text before it needs more lines than its wish allows.");
    verb->add_option("--fail-on", arguments->failOn,
                     "Lowest severity of a finding that makes the exit code 1: note, warning or error. "
                     "Default: error.")
        ->type_name("SEVERITY");
    verb->add_option(
            "--audience", arguments->audience,
            "Weight findings by audience: a CSV file of visits per viewport width, with the columns width "
            "and visits. Default: every width counts the same.")
        ->type_name("FILE.csv");
    setHelpEnd(*verb, checks::caution,
               {"check row.tenter.json", "check row.tenter.json --audience visits.csv --fail-on warning"},
               {{0, "Done. No finding reaches the severity of --fail-on."},
                {1, "Done. At least one finding reaches the severity of --fail-on."},
                exitWrongInput()});
    verb->callback([&action, arguments] { action = [arguments] { return runCheck(*arguments); }; });
}

}  // namespace tenter::command
