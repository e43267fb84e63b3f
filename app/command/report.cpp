#include "emit/report.h"

#include <memory>

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
        app.add_subcommand("report", "Print what the row comes to at each breakpoint, as a table");
    addFiles(*verb, *arguments);
    addTrial(*verb, *arguments);
    addEngine(*verb, *arguments);
    verb->callback([&action, arguments] { action = [arguments] { return runReport(*arguments); }; });
}

}  // namespace tenter::command
