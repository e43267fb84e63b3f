#include "emit/geometry.h"

#include <memory>

#include "help.h"
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
    printProblems(problems);
    if (!widths) return wrongInput;
    const layout::PreparedRow row(opened->project, opened->variant, opened->store,
                                  text::atRatio(*opened->profile, arguments.ratio));
    const emit::GeometryHead head{arguments.project,
                                  opened->project.row().variants[opened->variant].className,
                                  std::string(opened->profile->name())};
    return deliver(arguments, [&](const Sink& sink) { emit::writeGeometry(row, head, *widths, sink); });
}

}  // namespace

void addGeometry(CLI::App& app, Action& action) {
    auto arguments = std::make_shared<GeometryArguments>();
    CLI::App* verb =
        app.add_subcommand("geometry", "Print the box and the lines of each part at each width, as JSON");
    addFiles(*verb, *arguments);
    addVariant(*verb, *arguments);
    addTrial(*verb, *arguments);
    addEngine(*verb, *arguments);
    verb->add_option(
            "--widths", arguments->widths.widths,
            "Viewport widths in px, each from 1 to 10000: a range such as 320-1920 or a list such as "
            "320,859,860. Default: the project's range.")
        ->type_name("WIDTHS");
    verb->add_option("--step", arguments->widths.step,
                     "Distance in px between the widths of a range; above 0, with or without decimals. The "
                     "range can have at most 100000 widths. Default: 1.")
        ->type_name("PX");
    verb->add_option("--ratio", arguments->ratio,
                     "Pixel ratio: device pixels per CSS px, from 0.25 to 8. Browsers round the metrics of "
                     "fonts to device "
                     "pixels. Default: 1.")
        ->check(numberFrom(0.25, 8))
        ->type_name("RATIO");
    setHelpEnd(*verb,
               "Boxes are border boxes in CSS px from the top left corner of the page. Slack: the smallest "
               "change of the text width, as a share of that width, that moves a line break; below "
               "0.25\u00A0% another browser may break the line differently. Measure: the number of "
               "characters on a line.",
               {"geometry row.tenter.json --widths 320,860,1440",
                "geometry row.tenter.json --step 10 --engine gecko --out geometry.json"},
               {exitDone(), exitWrongInput()});
    verb->callback([&action, arguments] { action = [arguments] { return runGeometry(*arguments); }; });
}

}  // namespace tenter::command
