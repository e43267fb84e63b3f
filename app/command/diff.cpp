#include <memory>

#include "checks/registry.h"
#include "checks/titles.h"
#include "emit/differences.h"
#include "help.h"
#include "opened.h"
#include "outcome.h"
#include "project/file.h"
#include "verbs.h"

namespace tenter::command {

namespace {

struct DiffArguments : Arguments {
    std::string after;
    bool json = false;
};

std::optional<project::Project> projectIn(const std::string& file) {
    const std::optional<std::string> text = fileText(file);
    if (!text) {
        refuse(file, "The file cannot be read.", "Check its name, its folder and its permissions.");
        return std::nullopt;
    }
    // Without a folder: the pictures of an old version need not be there.
    project::Problems problems;
    std::optional<project::Project> project = project::parse(*text, file, {}, problems, checks::isCheckName);
    printProblems(problems);
    return project;
}

int runDiff(const DiffArguments& arguments) {
    for (const std::string& file : {arguments.project, arguments.after})
        if (wouldOverwrite(arguments, file)) return wrongInput;
    const std::optional<project::Project> before = projectIn(arguments.project);
    const std::optional<project::Project> after = projectIn(arguments.after);
    if (!before || !after) return wrongInput;
    const std::vector<project::Difference> found =
        project::differences(*before, *after, checks::titleOfCheck);
    const int delivered =
        deliver(arguments, arguments.json ? emit::differencesJson(found) : emit::differencesList(found));
    if (delivered != done) return delivered;
    return found.empty() ? done : hasFindings;
}

}  // namespace

void addDiff(CLI::App& app, Action& action) {
    auto arguments = std::make_shared<DiffArguments>();
    CLI::App* verb = app.add_subcommand("diff", "Print what differs between two project files");
    verb->add_option("OLD", arguments->project, "Project file, *.tenter.json.")
        ->required()
        ->type_name("FILE");
    verb->add_option("NEW", arguments->after, "Project file, *.tenter.json.")->required()->type_name("FILE");
    verb->add_flag("--json", arguments->json,
                   "Print JSON instead of sentences: the JSON pointers and the values in both files.");
    addOut(*verb, *arguments, "OLD or NEW");
    setHelpEnd(
        *verb,
        "Values are compared, not how the files write them: the order of keys, values that are the "
        "default, and keys that start with x- are no differences.",
        {"diff row.tenter.json changed.tenter.json", "diff row.tenter.json row.tenter.json --json"},
        {{0, "Done. The projects do not differ."}, {1, "Done. The projects differ."}, exitWrongInput()});
    verb->callback([&action, arguments] { action = [arguments] { return runDiff(*arguments); }; });
}

}  // namespace tenter::command
