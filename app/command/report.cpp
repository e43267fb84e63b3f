#include "emit/report.h"

#include <memory>

#include "help.h"
#include "opened.h"
#include "outcome.h"
#include "verbs.h"

namespace tenter::command {

namespace {

int runReport(const Arguments& arguments) {
    const std::unique_ptr<Opened> opened = openProject(arguments);
    if (!opened) return wrongInput;
    return deliver(arguments, emit::report(opened->project, opened->store, *opened->profile));
}

}  // namespace

void addReport(CLI::App& app, Action& action) {
    auto arguments = std::make_shared<Arguments>();
    CLI::App* verb =
        app.add_subcommand("report", "Print sizes, lines and slack at each breakpoint as a table");
    addFiles(*verb, *arguments);
    addTrial(*verb, *arguments);
    addEngine(*verb, *arguments);
    setHelpEnd(*verb,
               "The report covers every variant. Slack: the smallest change of the text width, as a share of "
               "that width, that moves a line break; below 0.25\u00A0% another browser may break the line "
               "differently.",
               {"report row.tenter.json", "report row.tenter.json --try longer=50% --out report.txt"},
               {exitDone(), exitWrongInput()});
    verb->callback([&action, arguments] { action = [arguments] { return runReport(*arguments); }; });
}

}  // namespace tenter::command
