#include <algorithm>
#include <memory>

#include "help.h"
#include "opened.h"
#include "outcome.h"
#include "project/file.h"
#include "project/utf8.h"
#include "project/wording.h"
#include "start/findings_json.h"
#include "start/live_import.h"
#include "verbs.h"

namespace tenter::command {

namespace {

struct IntakeArguments : Arguments {
    double root = 16;
    bool json = false;
};

/// The file itself; of a folder its index.html, or else its only page.
std::filesystem::path pageIn(const std::filesystem::path& file) {
    std::error_code error;
    if (!std::filesystem::is_directory(file, error)) return file;
    std::filesystem::path index = file / "index.html";
    if (std::filesystem::exists(index, error)) return index;
    std::vector<std::filesystem::path> pages;
    for (const auto& entry : std::filesystem::directory_iterator(file, error)) {
        const std::filesystem::path ending = entry.path().extension();
        if (ending == ".html" || ending == ".htm" || ending == ".xhtml") pages.push_back(entry.path());
    }
    return pages.size() == 1 ? pages.front() : index;
}

int runIntake(const IntakeArguments& arguments) {
    const std::filesystem::path file = pageIn(arguments.project);
    const std::optional<std::string> bytes = fileText(file.string());
    if (!bytes)
        return refuse(file.string(), "The file cannot be read.",
                      "Check its name, its folder and its permissions.");
    if (wouldOverwrite(arguments, file.string())) return wrongInput;
    start::LiveSource source{
        {*bytes, file, std::filesystem::path(arguments.out).parent_path(), arguments.root},
        file.extension() == ".css"};
    if (source.projectFolder.empty())
        source.projectFolder = arguments.out.empty() ? file.parent_path() : std::filesystem::path(".");
    text::Fonts fonts;
    text::ParagraphStore store(fonts);
    project::Problems problems;
    const std::optional<start::LiveImport> read = start::importLive(source, arguments.json, store, problems);
    printProblems(problems);
    if (!read) return wrongInput;
    const start::Imported& import = read->import;
    if (arguments.json) {
        const std::string form =
            std::string(read->isOwn ? "own " : "") + (source.isSheet ? "stylesheet" : "page");
        return deliver(arguments,
                       start::findingsJson(file.string(), form, import.found, import.notes, import.report));
    }
    for (const std::string& sentence : import.report)
        printNote(project::visible(sentence));
    return deliver(arguments, project::write(import.project));
}

}  // namespace

void addIntake(CLI::App& app, Action& action) {
    auto arguments = std::make_shared<IntakeArguments>();
    CLI::App* verb = app.add_subcommand("intake", "Print a project that is read from a page or a stylesheet");
    verb->add_option("FILE", arguments->project,
                     "Stylesheet (*.css), page (*.html), or folder with an index.html or one page.")
        ->required()
        ->type_name("FILE");
    verb->add_option("--root", arguments->root,
                     "Root font size of the theme, for a stylesheet alone: px from 1 to 100. Default: 16.")
        ->check(numberFrom(1, 100))
        ->type_name("PX");
    verb->add_flag("--json", arguments->json,
                   "Print JSON instead of the project: each element with its role, its declarations and the "
                   "file, line and column of their rules, and what is not in the project. Default: off.");
    addOut(*verb, *arguments, "FILE");
    setHelpEnd(
        *verb,
        "Reads every form of page and stylesheet that Tenter prints. Of any other page it reads the row of "
        "cards: markup, columns, breakpoints, sizes, spacing and colours. Of any other stylesheet it finds "
        "the "
        "rules for a row, its cards and their parts by what they declare and by their selectors. A "
        "stylesheet "
        "alone has no texts: its cards have placeholder texts. Standard error lists what to check, first "
        "what a "
        "project cannot hold. Use adopt to put the row of a page into an existing project.",
        {"intake row.css --out again.tenter.json", "intake page.html --json --out found.json"},
        {exitDone(), exitWrongInput()});
    verb->callback([&action, arguments] { action = [arguments] { return runIntake(*arguments); }; });
}

}  // namespace tenter::command
