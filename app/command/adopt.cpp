#include "markup/adopt.h"

#include <cstdio>
#include <memory>
#include <vector>

#include "opened.h"
#include "outcome.h"
#include "project/file.h"
#include "project/utf8.h"
#include "verbs.h"

namespace tenter::command {

namespace {

struct AdoptArguments : Arguments {
    std::string page;
    std::vector<std::string> parts;
    std::string theme;
};

/// True if every ROLE=SELECTOR has both; else that has been told.
bool readChoices(const AdoptArguments& arguments, std::vector<markup::RoleChoice>& choices) {
    for (const std::string& part : arguments.parts) {
        const std::size_t equals = part.find('=');
        if (equals == std::string::npos || equals == 0 || equals + 1 == part.size()) {
            refuse("--part", "\"" + part + "\" is no role with a selector",
                   "write it as heading=.walk-title");
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
        return refuse(arguments.page, "there is no such page, or it may not be read",
                      "check its name and folder");
    page.bytes = *bytes;
    page.file = arguments.page;
    if (!arguments.theme.empty()) {
        page.theme = fileText(arguments.theme);
        if (!page.theme)
            return refuse(arguments.theme, "there is no such style sheet, or it may not be read",
                          "check its name and folder");
    }
    page.projectFolder = opened->folder.empty() ? "." : opened->folder;
    project::Problems problems;
    const std::optional<markup::Adopted> adopted = markup::adopt(opened->project, page, problems);
    tell(problems);
    if (!adopted) return wrongInput;
    for (const std::string& sentence : adopted->report)
        std::fprintf(stderr, "%s\n", project::visible(sentence).c_str());
    return deliver(arguments, project::write(adopted->project));
}

}  // namespace

void addAdopt(CLI::App& app, Action& action) {
    auto arguments = std::make_shared<AdoptArguments>();
    CLI::App* verb = app.add_subcommand("adopt", "Print the project with the row that a page prints already");
    addFiles(*verb, *arguments);
    verb->add_option("PAGE", arguments->page, "The page, or the row alone, as HTML")
        ->required()
        ->type_name("FILE");
    verb->add_option(
            "--part", arguments->parts,
            "Which elements are what, instead of guessing: row, card, picture, heading, body, button or "
            "another role, and a CSS selector; may be repeated")
        ->type_name("ROLE=SELECTOR")
        ->expected(1)
        ->take_all();
    verb->add_option("--theme", arguments->theme,
                     "The theme's CSS, instead of the style sheets of the page or beside it")
        ->type_name("FILE.css");
    verb->callback([&action, arguments] { action = [arguments] { return runAdopt(*arguments); }; });
}

}  // namespace tenter::command
