#include "emit/geometry.h"

#include <CLI/Validators.hpp>
#include <memory>

#include "opened.h"
#include "outcome.h"
#include "verbs.h"
#include "widths.h"

namespace tenter::command {

namespace {

struct GeometryArguments : Arguments {
    WidthArguments widths;
    double ratio = 1;
};

int runGeometry(const GeometryArguments& arguments) {
    const std::unique_ptr<Opened> opened = openProject(arguments);
    if (!opened) return wrongInput;
    project::Problems problems;
    const auto widths =
        readWidths(arguments.widths, opened->project.leastWidth, opened->project.mostWidth, problems);
    tell(problems);
    if (!widths) return wrongInput;
    const layout::PreparedRow row(opened->project, opened->variant, opened->store,
                                  text::atRatio(*opened->profile, arguments.ratio));
    const emit::GeometryHead head{arguments.project, opened->project.variants[opened->variant].className,
                                  std::string(opened->profile->name())};
    return deliver(arguments, [&](const Sink& sink) { emit::writeGeometry(row, head, *widths, sink); });
}

}  // namespace

void addGeometry(CLI::App& app, Action& action) {
    auto arguments = std::make_shared<GeometryArguments>();
    CLI::App* verb = app.add_subcommand("geometry", "Print the row's boxes and lines at each width, as JSON");
    addFiles(*verb, *arguments);
    addVariant(*verb, *arguments);
    addTrial(*verb, *arguments);
    addEngine(*verb, *arguments);
    verb->add_option(
            "--widths", arguments->widths.widths,
            "Page widths in px: a range (320-1920) or a list (320,859,860); the project's range if left out")
        ->type_name("WIDTHS");
    verb->add_option("--step", arguments->widths.step, "Step of the range in px (1 if left out)")
        ->type_name("PX");
    verb->add_option(
            "--ratio", arguments->ratio,
            "Device px to a CSS px, 0.25 to 8, to which engines round metrics of faces (1 if left out)")
        ->check(CLI::Range(0.25, 8.0))
        ->type_name("RATIO");
    verb->callback([&action, arguments] { action = [arguments] { return runGeometry(*arguments); }; });
}

}  // namespace tenter::command
