#include "emit/wraps.h"

#include <memory>

#include "help.h"
#include "opened.h"
#include "outcome.h"
#include "verbs.h"

namespace tenter::command {

namespace {

struct WrapsArguments : Arguments {
    bool json = false;
};

int runWraps(const WrapsArguments& arguments) {
    const std::unique_ptr<Opened> opened = openProject(arguments);
    if (!opened) return wrongInput;
    const layout::PreparedRow row(opened->project, opened->variant, opened->store, *opened->profile);
    const auto wraps = sweep::wrapPoints(row, opened->project.leastWidth, opened->project.mostWidth);
    return deliver(arguments, arguments.json ? emit::wrapsJson(row, wraps)
                                             : emit::wrapsTable(opened->project, row, wraps));
}

}  // namespace

void addWraps(CLI::App& app, Action& action) {
    auto arguments = std::make_shared<WrapsArguments>();
    CLI::App* verb =
        app.add_subcommand("wraps", "Print every width at which the line count of a text changes");
    addFiles(*verb, *arguments);
    addVariant(*verb, *arguments);
    addTrial(*verb, *arguments);
    addEngine(*verb, *arguments);
    verb->add_flag("--json", arguments->json,
                   "Print JSON instead of a table. In JSON, the first card and the first part have the "
                   "number 0.");
    setHelpEnd(*verb,
               "Wrap point: a viewport width at which the line count of a text changes. Tenter searches the "
               "project's range of viewport widths.",
               {"wraps row.tenter.json", "wraps row.tenter.json --engine gecko --json"},
               {exitDone(), exitWrongInput()});
    verb->callback([&action, arguments] { action = [arguments] { return runWraps(*arguments); }; });
}

}  // namespace tenter::command
