#include <charconv>
#include <filesystem>
#include <memory>

#include "checks/registry.h"
#include "checks/titles.h"
#include "emit/differences.h"
#include "help.h"
#include "opened.h"
#include "outcome.h"
#include "project/file.h"
#include "project/utf8.h"
#include "start/sheet_comparison.h"
#include "text/fonts.h"
#include "verbs.h"

namespace tenter::command {

namespace {

struct DiffArguments : Arguments {
    std::string after;
    std::string take;
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

/// The differences that `--take` names: `all`, or their numbers. Empty, with a message printed, if it is
/// wrong.
std::optional<std::vector<bool>> taken(const std::string& text, std::size_t count) {
    if (text == "all") return std::vector<bool>(count, true);
    std::vector<bool> chosen(count, false);
    for (std::size_t at = 0; at <= text.size();) {
        const std::size_t end = std::min(text.find(',', at), text.size());
        std::size_t number = 0;
        const auto [rest, error] = std::from_chars(text.data() + at, text.data() + end, number);
        if (error != std::errc() || rest != text.data() + end || number < 1 || number > count) {
            refuse("--take", "There is no difference with the number \"" + text.substr(at, end - at) + "\".",
                   count == 0 ? "The stylesheet has the values of the project."
                              : "Give all, or numbers from 1 to " + std::to_string(count) + ".");
            return std::nullopt;
        }
        chosen[number - 1] = true;
        at = end + 1;
    }
    return chosen;
}

/// Compares a project with a stylesheet that is live.
int runWithSheet(const DiffArguments& arguments) {
    std::optional<project::Project> project = projectIn(arguments.project);
    if (!project) return wrongInput;
    const std::optional<std::string> css = fileText(arguments.after);
    if (!css)
        return refuse(arguments.after, "The file cannot be read.",
                      "Check its name, its folder and its permissions.");
    text::Fonts fonts;
    text::ParagraphStore store(fonts);
    project::Problems problems;
    const auto found = start::compareWithSheet(*project, *css, arguments.after, store, problems);
    printProblems(problems);
    if (!found) return wrongInput;
    for (const std::string& sentence : found->report)
        printNote(project::visible(sentence));
    if (!arguments.take.empty()) {
        const auto chosen = taken(arguments.take, found->differences.size());
        if (!chosen) return wrongInput;
        start::takeDifferences(*project, *found, *chosen);
        return deliver(arguments, project::write(*project));
    }
    const int delivered =
        deliver(arguments, arguments.json ? start::differencesJson(*found) : start::differencesList(*found));
    if (delivered != done) return delivered;
    return found->differences.empty() ? done : hasFindings;
}

int runDiff(const DiffArguments& arguments) {
    for (const std::string& file : {arguments.project, arguments.after})
        if (wouldOverwrite(arguments, file)) return wrongInput;
    if (std::filesystem::path(arguments.after).extension() == ".css") return runWithSheet(arguments);
    if (!arguments.take.empty())
        return refuse("--take", "NEW is no stylesheet.", "Give a stylesheet, *.css, or leave out --take.");
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
    CLI::App* verb =
        app.add_subcommand("diff", "Print what differs between two projects, or from a stylesheet");
    verb->add_option("OLD", arguments->project, "Project file, *.tenter.json.")
        ->required()
        ->type_name("FILE");
    verb->add_option("NEW", arguments->after,
                     "Project file, *.tenter.json, or stylesheet, *.css, such as the one that is live.")
        ->required()
        ->type_name("FILE");
    verb->add_flag("--json", arguments->json,
                   "Print JSON instead of sentences: the JSON pointers and the values in both files.");
    verb->add_option(
            "--take", arguments->take,
            "Print the project OLD with values of the stylesheet NEW: all, or the numbers of differences "
            "in the order of the list. Example: --take 1,3. Default: the list is printed.")
        ->type_name("NUMBERS");
    addOut(*verb, *arguments, "OLD or NEW");
    setHelpEnd(
        *verb,
        "Values are compared, not how the files write them: the order of keys, values that are the "
        "default, and keys that start with x- are no differences. A stylesheet has no texts and pictures, so "
        "only settings are compared; of one that Tenter printed, what was changed since.",
        {"diff row.tenter.json changed.tenter.json", "diff row.tenter.json row.css --take all"},
        {{0, "Done. Nothing differs, or the project is printed."},
         {1, "Done. Something differs."},
         exitWrongInput()});
    verb->callback([&action, arguments] { action = [arguments] { return runDiff(*arguments); }; });
}

}  // namespace tenter::command
