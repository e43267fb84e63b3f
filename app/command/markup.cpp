#include <algorithm>
#include <memory>

#include "emit/class_names.h"
#include "emit/page.h"
#include "help.h"
#include "opened.h"
#include "outcome.h"
#include "verbs.h"

namespace tenter::command {

namespace {

struct MarkupArguments : Arguments {
    bool classes = false;
};

/// The elements and their classes in two columns.
std::string classTable(const project::Project& project, std::size_t variant) {
    const std::vector<emit::ClassName> names = emit::classNames(project, variant);
    std::size_t widest = 0;
    for (const emit::ClassName& one : names)
        widest = std::max(widest, one.element.size());
    std::string out;
    for (const emit::ClassName& one : names)
        out += one.element + std::string(widest + 2 - one.element.size(), ' ') + one.name + "\n";
    return out;
}

int runMarkup(const MarkupArguments& arguments) {
    const std::unique_ptr<Opened> opened = openProject(arguments);
    if (!opened) return wrongInput;
    if (opened->project.row().given)
        return refuse(arguments.project, "The row was imported, so its markup is on its page.",
                      "Print the page with tenter-cli page, or remove \"given\" from the project.");
    return deliver(arguments, arguments.classes ? classTable(opened->project, opened->variant)
                                                : emit::markup(opened->project, opened->variant));
}

}  // namespace

void addMarkup(CLI::App& app, Action& action) {
    auto arguments = std::make_shared<MarkupArguments>();
    CLI::App* verb = app.add_subcommand("markup", "Print the HTML of the row for the stylesheet");
    addFiles(*verb, *arguments);
    addVariant(*verb, *arguments);
    verb->add_flag("--classes", arguments->classes,
                   "Print which class each kind of element needs, for a page that has its own markup.");
    setHelpEnd(*verb, "The HTML has the classes, alternative texts and heading levels of the project.",
               {"markup row.tenter.json --out row.html", "markup row.tenter.json --classes"},
               {exitDone(), exitWrongInput()});
    verb->callback([&action, arguments] { action = [arguments] { return runMarkup(*arguments); }; });
}

}  // namespace tenter::command
