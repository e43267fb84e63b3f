#include "emit/page.h"

#include <memory>
#include <optional>
#include <string>

#include "emit/saved_page.h"

#include "help.h"
#include "opened.h"
#include "outcome.h"
#include "verbs.h"

namespace tenter::command {

namespace {

struct PageArguments : Arguments {
    std::string around;
};

int runPage(const PageArguments& arguments) {
    const std::unique_ptr<Opened> opened = openProject(arguments);
    if (!opened) return wrongInput;
    project::Problems problems;
    std::string page;
    if (arguments.around.empty()) {
        page = emit::page(opened->project, opened->variant, opened->folder, opened->store, problems);
    } else {
        const std::optional<std::string> bytes = fileText(arguments.around);
        if (!bytes)
            return refuse(arguments.around, "The page cannot be read.",
                          "Check its name, its folder and its permissions.");
        page = emit::savedPageWithStylesheet(opened->project, opened->variant, opened->folder,
                                             {*bytes, arguments.around}, opened->store, problems);
    }
    for (project::Problem& problem : problems)
        if (problem.file.empty()) problem.file = arguments.project;
    printProblems(problems);
    return page.empty() ? wrongInput : deliver(arguments, page);
}

}  // namespace

void addPage(CLI::App& app, Action& action) {
    auto arguments = std::make_shared<PageArguments>();
    CLI::App* verb =
        app.add_subcommand("page", "Print the row as one HTML page with its pictures and fonts inside");
    addFiles(*verb, *arguments);
    addVariant(*verb, *arguments);
    verb->add_option("--around", arguments->around,
                     "Saved HTML page that contains the row. Prints that page with the stylesheet "
                     "of the row added; the project must have an imported row. Default: a page of the row "
                     "alone.")
        ->type_name("PAGE.html");
    setHelpEnd(*verb, "The page needs no other file and no network.",
               {"page row.tenter.json --out row.html",
                "page imported.tenter.json --around page.html --out preview.html"},
               {exitDone(), exitWrongInput()});
    verb->callback([&action, arguments] { action = [arguments] { return runPage(*arguments); }; });
}

}  // namespace tenter::command
