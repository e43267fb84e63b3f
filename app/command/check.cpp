#include "checks/checks.h"

#include <algorithm>
#include <array>
#include <filesystem>
#include <memory>

#include "audience.h"
#include "emit/findings.h"
#include "emit/junit.h"
#include "emit/room_for_copy.h"
#include "emit/sarif.h"
#include "emit/table.h"
#include "help.h"
#include "opened.h"
#include "outcome.h"
#include "project/file.h"
#include "remedy/remedies.h"
#include "verbs.h"

namespace tenter::command {

namespace {

struct CheckArguments : Arguments {
    std::vector<std::string> projects;
    bool json = false;
    bool sarif = false;
    bool junit = false;
    bool room = false;
    bool remedies = false;
    std::string failOn = "error";
    std::string audience;
    std::string language{"en"};
};

/// A project, opened and checked.
struct Result {
    std::unique_ptr<Opened> opened;
    emit::CheckedProject checked;
    emit::RemediesOfAll remedies;
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

std::size_t countOf(const std::vector<checks::Finding>& findings, checks::Severity severity) {
    return static_cast<std::size_t>(std::ranges::count(findings, severity, &checks::Finding::severity));
}

/// The number of findings of each severity, for each project and for all.
std::string summaryOf(const std::vector<Result>& results) {
    constexpr std::array severities{checks::Severity::Error, checks::Severity::Warning,
                                    checks::Severity::Note};
    std::array<std::size_t, severities.size()> sums{};
    std::vector<emit::Cells> lines{{"errors", "warnings", "notes", "silenced", "project"}};
    std::size_t silenced = 0;
    for (const Result& result : results) {
        emit::Cells line;
        for (std::size_t i = 0; i < severities.size(); ++i) {
            const std::size_t count = countOf(result.checked.checked.findings, severities[i]);
            sums[i] += count;
            line.push_back(std::to_string(count));
        }
        silenced += result.checked.checked.silenced.size();
        line.push_back(std::to_string(result.checked.checked.silenced.size()));
        line.push_back(emit::oneLine(result.checked.file));
        lines.push_back(std::move(line));
    }
    lines.push_back({std::to_string(sums[0]), std::to_string(sums[1]), std::to_string(sums[2]),
                     std::to_string(silenced), "all " + std::to_string(results.size()) + " projects"});
    return emit::table(lines);
}

std::string listOf(const std::vector<Result>& results, const std::string& shareOf) {
    std::string out;
    for (const Result& result : results) {
        if (results.size() > 1) out += (out.empty() ? "" : "\n") + result.checked.file + "\n\n";
        out += emit::findingsList(result.opened->project, result.checked.checked, shareOf, result.remedies);
    }
    if (results.size() > 1) out += "\n" + summaryOf(results);
    return out;
}

std::string jsonOf(const std::vector<Result>& results, bool remedies) {
    const Result& first = results.front();
    if (results.size() == 1) {
        const std::vector<checks::Finding>& findings = first.checked.checked.findings;
        return remedies ? emit::findingsJson(first.opened->project, findings, first.remedies)
                        : emit::findingsJson(findings);
    }
    std::vector<const project::Project*> projects;
    std::vector<std::string> files;
    std::vector<std::vector<checks::Finding>> findings;
    std::vector<emit::RemediesOfAll> tried;
    for (const Result& result : results) {
        projects.push_back(&result.opened->project);
        files.push_back(result.checked.file);
        findings.push_back(result.checked.checked.findings);
        if (remedies) tried.push_back(result.remedies);
    }
    return emit::findingsJson(projects, files, findings, tried);
}

std::string printed(const CheckArguments& arguments, const std::vector<Result>& results,
                    checks::Severity failOn) {
    if (!arguments.sarif && !arguments.junit)
        return arguments.json ? jsonOf(results, arguments.remedies)
                              : listOf(results, arguments.audience.empty() ? "widths" : "visits");
    std::vector<emit::CheckedProject> checked;
    checked.reserve(results.size());
    for (const Result& result : results)
        checked.push_back(result.checked);
    return arguments.sarif ? emit::sarif(checked) : emit::junit(checked, failOn);
}

/// The project files of the arguments, with those in folders and their subfolders, sorted by path. Empty if a
/// folder has none; a message has been printed then.
std::vector<std::string> filesOf(const std::vector<std::string>& arguments) {
    namespace fs = std::filesystem;
    std::vector<std::string> files;
    for (const std::string& argument : arguments) {
        std::error_code error;
        if (!fs::is_directory(argument, error)) {
            files.push_back(argument);
            continue;
        }
        std::vector<std::string> found;
        constexpr auto options = fs::directory_options::skip_permission_denied;
        for (fs::recursive_directory_iterator at(argument, options, error), end; !error && at != end;
             at.increment(error)) {
            const std::string name = at->path().filename().string();
            // Folders such as that of a version control system have no projects of their own.
            if (name.starts_with('.') && at->is_directory(error)) at.disable_recursion_pending();
            if (name.ends_with(project::fileEnding) && at->is_regular_file(error))
                found.push_back(at->path().string());
        }
        if (found.empty()) {
            refuse(argument, "The folder has no project files, *.tenter.json.",
                   "Name another folder, or a file.");
            return {};
        }
        std::ranges::sort(found);
        files.insert(files.end(), found.begin(), found.end());
    }
    return files;
}

int runCheck(CheckArguments arguments) {
    if (!useLanguage(arguments.language)) return wrongInput;
    const auto failOn = checks::severityOf(arguments.failOn);
    if (!failOn)
        return refuse("--fail-on",
                      "The severity must be note, warning or error; it is \"" + arguments.failOn + "\".", "");
    const std::vector<std::string> files = filesOf(arguments.projects);
    if (files.empty()) return wrongInput;
    if (arguments.room && files.size() > 1)
        return refuse("--room", "The room for text is that of one project, but there are several.",
                      "Name one PROJECT.");
    checks::Options options;
    const bool both = arguments.engine.empty();
    if (both) arguments.engine = text::defaultProfile().name();
    if (!readVisits(arguments.audience, options.audience)) return wrongInput;
    std::vector<Result> results;
    // A project that cannot be read hides no problem of another.
    bool allRead = true;
    for (const std::string& file : files) {
        arguments.project = file;
        Result result;
        result.opened = openProject(arguments);
        allRead = allRead && result.opened;
        if (!allRead) continue;
        Opened& opened = *result.opened;
        if (!both) options.profile = opened.profile;
        options.untried = opened.untried;
        if (arguments.room) return deliver(arguments, roomOf(opened, options, arguments.json));
        result.checked = {file, fileText(file).value_or(""),
                          opened.project.row().variants[opened.variant].className,
                          checks::checkAll(opened.project, opened.variant, opened.store, options)};
        if (arguments.remedies)
            result.remedies = remediesOf(opened, result.checked.checked.findings, options);
        results.push_back(std::move(result));
    }
    if (!allRead) return wrongInput;
    const int delivered = deliver(arguments, printed(arguments, results, *failOn));
    if (delivered != done) return delivered;
    const bool any = std::ranges::any_of(results, [&](const Result& result) {
        return std::ranges::any_of(result.checked.checked.findings, [&](const checks::Finding& finding) {
            return finding.severity >= *failOn;
        });
    });
    return any ? hasFindings : done;
}

void addFormats(CLI::App& verb, CheckArguments& arguments) {
    CLI::Option* json =
        verb.add_flag("--json", arguments.json,
                      "Print JSON instead of a list. In JSON, the first card and the first part have the "
                      "number 0. With several projects, each finding names its file.");
    CLI::Option* sarif =
        verb.add_flag("--sarif", arguments.sarif,
                      "Print SARIF 2.1.0, which pipelines show beside the lines of the project file.");
    CLI::Option* junit = verb.add_flag(
        "--junit", arguments.junit,
        "Print JUnit XML: one test suite for each project, one test case for each check. A finding at or "
        "above --fail-on is a failure.");
    json->excludes(sarif)->excludes(junit);
    sarif->excludes(junit);
}

}  // namespace

void addCheck(CLI::App& app, Action& action) {
    auto arguments = std::make_shared<CheckArguments>();
    arguments->engine.clear();
    CLI::App* verb =
        app.add_subcommand("check", "Print findings: what is wrong or could be better, at which widths");
    verb->add_option(
            "PROJECT", arguments->projects,
            "One or more project files, *.tenter.json, or folders: of a folder, all project files in it and "
            "in its subfolders. With several projects, a table of the numbers of findings ends the list.")
        ->required()
        ->type_name("FILE");
    addOut(*verb, *arguments, "PROJECT");
    addVariant(*verb, *arguments);
    CLI::Option* trial = addTrial(*verb, *arguments);
    addEngine(*verb, *arguments);
    addFormats(*verb, *arguments);
    CLI::Option* room = verb->add_flag(
        "--room", arguments->room,
        "Print the room for text instead of findings: the number of characters that you can add to each "
        "text before it needs more lines than its wish allows.");
    CLI::Option* remedies =
        verb->add_flag(
                "--remedies", arguments->remedies,
                "Also print the remedies of each finding: changes that Tenter has tried, and what else "
                "each of them does. The verb remedy applies one, by its number such as 2.1.")
            ->excludes(trial);
    for (const char* format : {"--sarif", "--junit"}) {
        room->excludes(verb->get_option(format));
        remedies->excludes(verb->get_option(format));
    }
    verb->add_option("--fail-on", arguments->failOn,
                     "Lowest severity of a finding that makes the exit code 1: note, warning or error. "
                     "Default: error.")
        ->type_name("SEVERITY");
    addAudience(*verb, arguments->audience);
    room->excludes(addLanguage(*verb, arguments->language));
    setHelpEnd(*verb, checks::caution,
               {"check row.tenter.json --audience visits.csv --fail-on warning",
                "check row.tenter.json changed.tenter.json --junit --out findings.xml"},
               {{0, "Done. No finding reaches the severity of --fail-on."},
                {1, "Done. At least one finding reaches the severity of --fail-on."},
                exitWrongInput()});
    verb->callback([&action, arguments] { action = [arguments] { return runCheck(*arguments); }; });
}

}  // namespace tenter::command
