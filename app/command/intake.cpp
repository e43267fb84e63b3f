#include <algorithm>
#include <memory>

#include "help.h"
#include "intake/own_project.h"
#include "opened.h"
#include "outcome.h"
#include "pictures/source.h"
#include "project/file.h"
#include "project/utf8.h"
#include "start/page_project.h"
#include "verbs.h"

namespace tenter::command {

namespace {

struct IntakeArguments : Arguments {
    double root = 16;
};

/// Prints the project of a page that Tenter did not write.
int printOtherPage(const IntakeArguments& arguments, const intake::OwnSource& source) {
    markup::PageToAdopt page;
    page.bytes = source.bytes;
    page.file = source.file;
    page.pictureSize = pictures::sizeOfFile;
    page.projectFolder = source.projectFolder.empty() ? "." : source.projectFolder;
    text::Fonts fonts;
    text::ParagraphStore store(fonts);
    project::Problems problems;
    const std::optional<markup::Adopted> adopted = start::newProjectFrom(page, store, problems);
    printProblems(problems);
    if (!adopted) return wrongInput;
    for (const std::string& sentence : adopted->report)
        printNote(project::visible(sentence));
    return deliver(arguments, project::write(adopted->project));
}

int runIntake(const IntakeArguments& arguments) {
    std::filesystem::path file = arguments.project;
    std::error_code error;
    if (std::filesystem::is_directory(file, error)) file /= "index.html";
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
    const bool isSheet = file.extension() == ".css";
    const std::optional<intake::OwnProject> read =
        isSheet ? intake::projectOfSheet(source, problems) : intake::projectOfPage(source, problems);
    if (!read && !isSheet) return printOtherPage(arguments, source);
    printProblems(problems);
    if (!read) return wrongInput;
    for (const std::string& sentence : read->report)
        printNote(project::visible(sentence));
    return deliver(arguments, project::write(read->project));
}

}  // namespace

void addIntake(CLI::App& app, Action& action) {
    auto arguments = std::make_shared<IntakeArguments>();
    CLI::App* verb =
        app.add_subcommand("intake", "Print a project that is read from a page or from Tenter's stylesheet");
    verb->add_option("FILE", arguments->project,
                     "Stylesheet (*.css), page (*.html), or folder with an index.html.")
        ->required()
        ->type_name("FILE");
    verb->add_option("--root", arguments->root,
                     "Root font size of the theme, for a stylesheet alone: px from 1 to 100. Default: 16.")
        ->check(numberFrom(1, 100))
        ->type_name("PX");
    addOut(*verb, *arguments, "FILE");
    setHelpEnd(
        *verb,
        "Reads every form of stylesheet that Tenter prints for its own markup. A stylesheet alone has no "
        "texts: its project has one card with placeholder texts. Of any other page it reads the row of "
        "cards: "
        "markup, columns, breakpoints, sizes, spacing and colours. Standard error lists what to check, first "
        "what a project cannot hold. Use adopt to put the row of a page into an existing project.",
        {"intake row.css --out again.tenter.json", "intake site --out from-site.tenter.json"},
        {exitDone(), exitWrongInput()});
    verb->callback([&action, arguments] { action = [arguments] { return runIntake(*arguments); }; });
}

}  // namespace tenter::command
