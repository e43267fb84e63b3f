#include "checks/checks.h"

#include <algorithm>
#include <memory>

#include "emit/findings.h"
#include "emit/room_for_copy.h"
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

/// Reads the audience's file into `audience`; false if it cannot be used, which has been told.
bool readVisits(const std::string& file, checks::Audience& audience) {
    const std::optional<std::string> text = fileText(file);
    if (!text) {
        refuse("--audience", file + " cannot be read", "name a file of comma separated values");
        return false;
    }
    project::Problems problems;
    const auto read = checks::readAudience(*text, file, problems);
    tell(problems);
    if (read) audience = *read;
    return read.has_value();
}

/// The room for copy of the variant's parts, as JSON or as a table.
std::string roomOf(Opened& opened, const checks::Options& options, bool json) {
    const std::vector<checks::RoomForCopy> rooms =
        checks::roomForCopy(opened.project, opened.variant, opened.store, options);
    if (json) return emit::roomJson(opened.project, rooms);
    if (rooms.empty()) return "No lines of any copy are wished to be at most so many.\n";
    return emit::roomSentence() + "\n" + emit::roomTable(opened.project, rooms);
}

int runCheck(CheckArguments arguments) {
    const auto failOn = checks::severityOf(arguments.failOn);
    if (!failOn)
        return refuse("--fail-on", "\"" + arguments.failOn + "\" is no severity",
                      "use note, warning or error");
    checks::Options options;
    const bool both = arguments.engine.empty();
    if (both) arguments.engine = text::blink().name();
    if (!arguments.audience.empty() && !readVisits(arguments.audience, options.audience)) return wrongInput;
    const std::unique_ptr<Opened> opened = openProject(arguments);
    if (!opened) return wrongInput;
    if (!both) options.profile = opened->profile;
    options.untried = opened->untried;
    if (arguments.room) return deliver(arguments, roomOf(*opened, options, arguments.json));
    const checks::Checked checked =
        checks::checkAll(opened->project, opened->variant, opened->store, options);
    const std::vector<checks::Finding>& findings = checked.findings;
    const std::string shareOf = options.audience.empty() ? "the widths" : "the visits";
    const int delivered = deliver(
        arguments, arguments.json ? emit::findingsJson(findings) : emit::findingsList(checked, shareOf));
    if (delivered != done) return delivered;
    const bool any = std::ranges::any_of(
        findings, [&](const checks::Finding& finding) { return finding.severity >= *failOn; });
    return any ? hasFindings : done;
}

}  // namespace

void addCheck(CLI::App& app, Action& action) {
    auto arguments = std::make_shared<CheckArguments>();
    arguments->engine.clear();
    CLI::App* verb = app.add_subcommand("check", "Say what is wrong, or could be better, at any width");
    addFiles(*verb, *arguments);
    addVariant(*verb, *arguments);
    addTrial(*verb, *arguments);
    verb->add_option("--engine", arguments->engine,
                     "Whose rules for line breaks: blink or gecko (both if left out)")
        ->type_name("ENGINE");
    verb->add_flag("--json", arguments->json, "As JSON instead of a list");
    verb->add_flag("--room", arguments->room,
                   "Instead of findings, how many more characters each text has room for");
    verb->add_option(
            "--fail-on", arguments->failOn,
            "Exit with 1 on findings of this severity or above: note, warning or error (error if left "
            "out)")
        ->type_name("SEVERITY");
    verb->add_option("--audience", arguments->audience,
                     "Weigh findings by visits: comma separated values with columns width and visits")
        ->type_name("FILE");
    verb->footer(std::string(checks::caution));
    verb->callback([&action, arguments] { action = [arguments] { return runCheck(*arguments); }; });
}

}  // namespace tenter::command
