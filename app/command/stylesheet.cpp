#include "emit/stylesheet.h"

#include <memory>

#include "emit/follow.h"
#include "help.h"
#include "opened.h"
#include "outcome.h"
#include "verbs.h"

namespace tenter::command {

namespace {

struct StylesheetArguments : Arguments {
    bool allVariants = false;
    std::string markup;
    std::string unit;
    std::string follow;
};

/// True if --markup, --unit and --follow have values that exist. If not, a message has been printed.
bool optionsAreKnown(const StylesheetArguments& arguments) {
    if (!arguments.markup.empty() && arguments.markup != "own" && arguments.markup != "given") {
        refuse("--markup", "The markup must be own or given; it is \"" + arguments.markup + "\".", "");
    } else if (!arguments.unit.empty() && arguments.unit != "rem" && arguments.unit != "px") {
        refuse("--unit", "The unit must be rem or px; it is \"" + arguments.unit + "\".", "");
    } else if (!arguments.follow.empty() && arguments.follow != "viewport" && arguments.follow != "card") {
        refuse("--follow", "The width must be viewport or card; it is \"" + arguments.follow + "\".", "");
    } else {
        return true;
    }
    return false;
}

int runStylesheet(const StylesheetArguments& arguments) {
    if (!optionsAreKnown(arguments)) return wrongInput;
    const std::unique_ptr<Opened> opened = openProject(arguments);
    if (!opened) return wrongInput;
    emit::StylesheetOptions options;
    options.variants = {opened->variant};
    if (arguments.allVariants) options.variants = project::everyVariant(opened->project);
    options.unit = opened->project.unit;
    if (!arguments.unit.empty()) options.unit = arguments.unit == "px" ? units::Unit::Px : units::Unit::Rem;
    if (!arguments.follow.empty()) {
        const auto target = arguments.follow == "card" ? project::Follow::Card : project::Follow::Viewport;
        project::Problems problems;
        opened->project = emit::following(opened->project, target, options.variants, opened->store,
                                          *opened->profile, problems);
        for (project::Problem& problem : problems)
            problem.file = arguments.project;
        printProblems(problems);
    }
    const bool given =
        arguments.markup.empty() ? opened->project.row().given.has_value() : arguments.markup == "given";
    if (!given) return deliver(arguments, emit::stylesheet(opened->project, options));
    project::Problems problems;
    const std::optional<std::string> sheet = emit::givenStylesheet(opened->project, options, problems);
    for (project::Problem& problem : problems)
        problem.file = arguments.project;
    printProblems(problems);
    return sheet ? deliver(arguments, *sheet) : wrongInput;
}

}  // namespace

void addStylesheet(CLI::App& app, Action& action) {
    auto arguments = std::make_shared<StylesheetArguments>();
    CLI::App* verb = app.add_subcommand(
        "stylesheet", "Print the CSS of the row, scoped to its class, to paste into a site");
    addFiles(*verb, *arguments);
    CLI::Option* one = addVariant(*verb, *arguments);
    verb->add_flag("--all-variants", arguments->allVariants,
                   "Print all variants in one stylesheet; rules that they share are printed once. Cannot be "
                   "used with "
                   "--variant.")
        ->excludes(one);
    verb->add_option("--markup", arguments->markup,
                     "Markup that the CSS is for: own (the markup that Tenter prints) or given (the markup "
                     "of the imported "
                     "page). Default: given if the project has an imported row, else own.")
        ->type_name("KIND");
    verb->add_option("--unit", arguments->unit,
                     "Unit of font sizes: rem or px. Default: the project's setting.")
        ->type_name("UNIT");
    verb->add_option(
            "--follow", arguments->follow,
            "Width that font sizes follow: viewport (CSS unit vw) or card (cqi). Ramps that follow the other "
            "width are converted band by band. Their sizes at both ends of a band do not change. Default: as "
            "in the "
            "project.")
        ->type_name("WIDTH");
    setHelpEnd(
        *verb,
        "Band: a range of viewport widths between two breakpoints, with its own columns, spacing and sizes.",
        {"stylesheet row.tenter.json --out row.css", "stylesheet row.tenter.json --all-variants --unit px"},
        {exitDone(), exitWrongInput()});
    verb->callback([&action, arguments] { action = [arguments] { return runStylesheet(*arguments); }; });
}

}  // namespace tenter::command
