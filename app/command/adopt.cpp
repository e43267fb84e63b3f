#include "markup/adopt.h"

#include <memory>
#include <vector>

#include "browse.h"
#include "help.h"
#include "opened.h"
#include "outcome.h"
#include "pictures/source.h"
#include "project/file.h"
#include "project/utf8.h"
#include "verbs.h"

namespace tenter::command {

namespace {

struct AdoptArguments : Arguments {
    std::string page;
    std::vector<std::string> parts;
    std::string theme;
    bool measure = false;
};

/// Splits every ROLE=SELECTOR. False if one lacks either; a message has been printed.
bool readChoices(const AdoptArguments& arguments, std::vector<markup::RoleChoice>& choices) {
    for (const std::string& part : arguments.parts) {
        const std::size_t equals = part.find('=');
        if (equals == std::string::npos || equals == 0 || equals + 1 == part.size()) {
            refuse("--part",
                   "The value must be ROLE=SELECTOR, such as heading=.walk-title; it is \"" + part + "\".",
                   "");
            return false;
        }
        choices.push_back({part.substr(0, equals), part.substr(equals + 1)});
    }
    return true;
}

int runAdopt(const AdoptArguments& arguments) {
    markup::PageToAdopt page;
    if (!readChoices(arguments, page.choices)) return wrongInput;
    const std::unique_ptr<Opened> opened = openProject(arguments);
    if (!opened) return wrongInput;
    const std::optional<std::string> bytes = fileText(arguments.page);
    if (!bytes)
        return refuse(arguments.page, "The page cannot be read.",
                      "Check its name, its folder and its permissions.");
    page.bytes = *bytes;
    page.file = arguments.page;
    page.pictureSize = pictures::sizeOfFile;
    if (!arguments.theme.empty()) {
        page.theme = fileText(arguments.theme);
        if (!page.theme)
            return refuse(arguments.theme, "The stylesheet cannot be read.",
                          "Check its name, its folder and its permissions.");
    }
    if (arguments.measure) {
        const std::string browser = installedBrowser();
        if (browser.empty())
            return refuse("--measure", "No browser was found.",
                          "Install Chromium or Firefox, or leave out --measure.");
        page.browse = [browser](const std::string& html) { return browse(browser, html); };
    }
    page.projectFolder = opened->folder.empty() ? "." : opened->folder;
    project::Problems problems;
    const std::optional<markup::Adopted> adopted = markup::adopt(opened->project, page, problems);
    printProblems(problems);
    if (!adopted) return wrongInput;
    for (const std::string& sentence : adopted->report)
        printNote(project::visible(sentence));
    return deliver(arguments, project::write(adopted->project));
}

}  // namespace

void addAdopt(CLI::App& app, Action& action) {
    auto arguments = std::make_shared<AdoptArguments>();
    CLI::App* verb = app.add_subcommand("adopt", "Import a row of cards from an HTML page into the project");
    addFiles(*verb, *arguments);
    verb->add_option("PAGE", arguments->page, "HTML file: a saved page, or the row alone.")
        ->required()
        ->type_name("FILE");
    verb->add_option("--part", arguments->parts,
                     "CSS selector of the elements with a role: row, card, picture, heading, body, button, "
                     "or a role of "
                     "your own. Example: --part heading=h3. Can be given once for each role. Default: Tenter "
                     "guesses the "
                     "selectors and reports them.")
        ->type_name("ROLE=SELECTOR")
        ->expected(1)
        ->take_all();
    verb->add_option("--theme", arguments->theme,
                     "CSS file of the site's theme. Default: the stylesheets that the page contains or links "
                     "to and that "
                     "are saved with it.")
        ->type_name("FILE.css");
    verb->add_flag("--measure", arguments->measure,
                   "Measure the container of the row and the root font size in an installed browser at every "
                   "whole viewport "
                   "width, with scripts and network off. A difference from the CSS is reported, and the "
                   "measured values "
                   "are imported. Default: off.");
    setHelpEnd(
        *verb,
        "Prints the project with the imported cards, markup and selectors. PROJECT itself does not change. "
        "Standard error lists what Tenter found and guessed.",
        {"adopt row.tenter.json page.html --out imported.tenter.json",
         "adopt row.tenter.json page.html --part card=li --part heading=h3 --theme theme.css"},
        {exitDone(), exitWrongInput()});
    verb->callback([&action, arguments] { action = [arguments] { return runAdopt(*arguments); }; });
}

}  // namespace tenter::command
