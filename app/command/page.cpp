#include "emit/page.h"

#include <memory>

#include "opened.h"
#include "outcome.h"
#include "verbs.h"

namespace tenter::command {

namespace {

int runPage(const Arguments& arguments) {
    const std::unique_ptr<Opened> opened = openProject(arguments);
    if (!opened) return wrongInput;
    project::Problems problems;
    const std::string page =
        emit::page(opened->project, opened->variant, opened->folder, opened->store, problems);
    for (project::Problem& problem : problems)
        problem.file = arguments.project;
    tell(problems);
    return page.empty() ? wrongInput : deliver(arguments, page);
}

}  // namespace

void addPage(CLI::App& app, Action& action) {
    auto arguments = std::make_shared<Arguments>();
    CLI::App* verb =
        app.add_subcommand("page", "Print the row as one HTML page with its pictures and fonts within");
    addFiles(*verb, *arguments);
    addVariant(*verb, *arguments);
    verb->callback([&action, arguments] { action = [arguments] { return runPage(*arguments); }; });
}

}  // namespace tenter::command
