#include <algorithm>
#include <memory>

#include "help.h"
#include "intake/own_project.h"
#include "opened.h"
#include "outcome.h"
#include "pictures/source.h"
#include "project/file.h"
#include "project/utf8.h"
#include "project/wording.h"
#include "start/findings_json.h"
#include "start/page_project.h"
#include "start/sheet_project.h"
#include "verbs.h"

namespace tenter::command {

namespace {

struct IntakeArguments : Arguments {
    double root = 16;
    bool json = false;
};

/// What was read: an own page or stylesheet, or those of others.
struct Read {
    std::string form;
    project::Project project;
    std::vector<std::string> report;
    std::vector<start::PageNote> notes;
    std::vector<start::FoundElement> found;
};

/// Reads a page or a stylesheet as one that Tenter did not write.
std::optional<start::Imported> readForeign(const intake::OwnSource& source, bool isSheet,
                                           project::Problems& problems) {
    text::Fonts fonts;
    text::ParagraphStore store(fonts);
    if (isSheet) return start::importSheet(source.bytes, source.file, store, problems);
    markup::PageToAdopt page;
    page.bytes = source.bytes;
    page.file = source.file;
    page.pictureSize = pictures::sizeOfFile;
    page.projectFolder = source.projectFolder.empty() ? "." : source.projectFolder;
    return start::importPage(page, store, problems);
}

std::optional<Read> readSource(const IntakeArguments& arguments, const intake::OwnSource& source,
                               project::Problems& problems) {
    const bool isSheet = source.file.extension() == ".css";
    const char* const kind = isSheet ? "stylesheet" : "page";
    project::Problems ignored;
    std::optional<intake::OwnProject> own =
        isSheet ? intake::projectOfSheet(source, ignored) : intake::projectOfPage(source, ignored);
    if (!own) {
        std::optional<start::Imported> read = readForeign(source, isSheet, problems);
        if (!read) return std::nullopt;
        std::vector<std::string> report = intake::whyNotOwn(ignored);
        report.insert(report.end(), read->report.begin(), read->report.end());
        return Read{kind, std::move(read->project), std::move(report), std::move(read->notes),
                    std::move(read->found)};
    }
    problems = std::move(ignored);
    Read read{"own ", std::move(own->project), std::move(own->report), {}, {}};
    read.form += kind;
    if (!arguments.json) return read;
    for (const std::string& sentence : read.report)
        if (project::isWarning(sentence)) read.notes.push_back({sentence, std::nullopt});
    project::Problems unread;
    if (auto declared = readForeign(source, isSheet, unread)) read.found = std::move(declared->found);
    return read;
}

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
    intake::OwnSource source{*bytes, file, std::filesystem::path(arguments.out).parent_path(),
                             arguments.root};
    if (source.projectFolder.empty())
        source.projectFolder = arguments.out.empty() ? file.parent_path() : std::filesystem::path(".");
    project::Problems problems;
    const std::optional<Read> read = readSource(arguments, source, problems);
    printProblems(problems);
    if (!read) return wrongInput;
    if (arguments.json)
        return deliver(arguments, start::findingsJson(file.string(), read->form, read->found, read->notes,
                                                      read->report));
    for (const std::string& sentence : read->report)
        printNote(project::visible(sentence));
    return deliver(arguments, project::write(read->project));
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
