#include <memory>
#include <optional>

#include "draw/row_picture.h"
#include "help.h"
#include "layout/layout.h"
#include "opened.h"
#include "outcome.h"
#include "verbs.h"

namespace tenter::command {

namespace {

struct RowPictureArguments : Arguments {
    std::optional<double> width;
    double ratio = 1;
    bool svg = false;
};

int runPicture(const RowPictureArguments& arguments) {
    const std::unique_ptr<Opened> opened = openProject(arguments);
    if (!opened) return wrongInput;
    const double ratio = arguments.svg ? 1 : arguments.ratio;
    const layout::PreparedRow prepared(opened->project, opened->variant, opened->store,
                                       text::atRatio(*opened->profile, ratio));
    const layout::Layout layout =
        layout::layOutDrawn(prepared, arguments.width.value_or(opened->project.mostWidth));
    const draw::LaidOutRow row{opened->project, prepared, layout};
    draw::PictureSource pictures(opened->folder);
    project::Problems problems;
    const std::string picture = arguments.svg
                                    ? draw::svgPicture(row, pictures, opened->store)
                                    : draw::pngPicture(row, ratio, pictures, opened->store, problems);
    for (project::Problem& problem : problems)
        if (problem.file.empty()) problem.file = "--width";
    printProblems(problems);
    printMissingPictures(arguments, pictures.missing());
    return picture.empty() ? wrongInput : deliver(arguments, picture);
}

}  // namespace

void addPicture(CLI::App& app, Action& action) {
    auto arguments = std::make_shared<RowPictureArguments>();
    CLI::App* verb =
        app.add_subcommand("picture", "Print the row at one viewport width as a PNG or SVG picture");
    addFiles(*verb, *arguments);
    addVariant(*verb, *arguments);
    addTrial(*verb, *arguments);
    addEngine(*verb, *arguments);
    verb->add_option(
            "--width", arguments->width,
            "Viewport width in px, from 1 to 10000, with or without decimals. Default: the project's "
            "widest viewport.")
        ->check(numberFrom(1, 10000))
        ->type_name("PX");
    CLI::Option* const ratio =
        verb->add_option("--ratio", arguments->ratio,
                         "Pixel ratio of a PNG picture: px of the picture per CSS px, from 0.25 to 8. "
                         "Default: 1.")
            ->check(numberFrom(0.25, 8))
            ->type_name("RATIO");
    verb->add_flag("--svg", arguments->svg,
                   "Print SVG with text as outlines and pictures inside. Default: PNG.")
        ->excludes(ratio);
    setHelpEnd(*verb,
               "The picture shows the whole page from its top, as a browser would draw it. A picture file "
               "that cannot be read is shown as an empty place with its name.",
               {"picture row.tenter.json --width 860 --out row.png",
                "picture row.tenter.json --width 1440 --svg --out row.svg"},
               {exitDone(), exitWrongInput()});
    verb->callback([&action, arguments] { action = [arguments] { return runPicture(*arguments); }; });
}

}  // namespace tenter::command
