#include "emit/stylesheet.h"

#include <memory>

#include "emit/follow.h"
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

/// True if every word is one that is known; else that has been told.
bool wordsAreKnown(const StylesheetArguments& arguments) {
    if (!arguments.markup.empty() && arguments.markup != "own" && arguments.markup != "given") {
        refuse("--markup", "\"" + arguments.markup + "\" is no kind of markup", "use own or given");
    } else if (!arguments.unit.empty() && arguments.unit != "rem" && arguments.unit != "px") {
        refuse("--unit", "\"" + arguments.unit + "\" is no unit for font sizes", "use rem or px");
    } else if (!arguments.follow.empty() && arguments.follow != "viewport" && arguments.follow != "card") {
        refuse("--follow", "\"" + arguments.follow + "\" is nothing sizes can follow",
               "use viewport or card");
    } else {
        return true;
    }
    return false;
}

int runStylesheet(const StylesheetArguments& arguments) {
    if (!wordsAreKnown(arguments)) return wrongInput;
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
        tell(problems);
    }
    const bool given =
        arguments.markup.empty() ? opened->project.given.has_value() : arguments.markup == "given";
    if (!given) return deliver(arguments, emit::stylesheet(opened->project, options));
    project::Problems problems;
    const std::optional<std::string> sheet = emit::givenStylesheet(opened->project, options, problems);
    for (project::Problem& problem : problems)
        problem.file = arguments.project;
    tell(problems);
    return sheet ? deliver(arguments, *sheet) : wrongInput;
}

}  // namespace

void addStylesheet(CLI::App& app, Action& action) {
    auto arguments = std::make_shared<StylesheetArguments>();
    CLI::App* verb = app.add_subcommand("stylesheet", "Print the stylesheet that is handed over");
    addFiles(*verb, *arguments);
    CLI::Option* one = addVariant(*verb, *arguments);
    verb->add_flag("--all-variants", arguments->allVariants,
                   "Every variant in one stylesheet, which says once what they share")
        ->excludes(one);
    verb->add_option(
            "--markup", arguments->markup,
            "For which markup: our own, or the one a page prints already (given, if the project has it)")
        ->type_name("KIND");
    verb->add_option("--unit", arguments->unit,
                     "Unit of font sizes: rem or px (as the project says if left out)")
        ->type_name("UNIT");
    verb->add_option(
            "--follow", arguments->follow,
            "Let font sizes follow the width of the viewport or of the card. Sizes that follow the other are "
            "converted band by band: at both ends of a band they stay as they are")
        ->type_name("WHAT");
    verb->callback([&action, arguments] { action = [arguments] { return runStylesheet(*arguments); }; });
}

}  // namespace tenter::command
