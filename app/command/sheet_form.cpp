#include "sheet_form.h"

#include "emit/follow.h"
#include "outcome.h"

namespace tenter::command {

void addForm(CLI::App& verb, FormArguments& arguments) {
    verb.add_option("--unit", arguments.unit,
                    "Unit of font sizes: rem or px. Default: the project's setting.")
        ->type_name("UNIT");
    verb.add_option(
            "--follow", arguments.follow,
            "Width that font sizes follow: viewport (CSS unit vw) or card (cqi). Ramps that follow the other "
            "width are converted band by band. Their sizes at both ends of a band do not change. Default: as "
            "in the project.")
        ->type_name("WIDTH");
    verb.add_flag("--properties", arguments.properties,
                  "Write values as custom properties on the row; media queries then set only these.");
    verb.add_flag("--layer", arguments.layer,
                  "Put all rules into a cascade layer with the name of the row. Only for Tenter's markup: "
                  "rules of a theme that are in no layer override them.");
    verb.add_flag("--no-comments", arguments.noComments, "Leave out the comments.");
    verb.add_flag("--minified", arguments.minified,
                  "Leave out comments, line breaks and spaces that change nothing.");
    verb.add_flag(
        "--late-fonts", arguments.lateFonts,
        "Add fallback fonts for the time until web fonts have loaded: installed fonts with the widths "
        "and heights of the web fonts. Standard error says how much less lines move.");
}

bool formIsKnown(const FormArguments& arguments) {
    if (!arguments.unit.empty() && arguments.unit != "rem" && arguments.unit != "px") {
        refuse("--unit", "The unit must be rem or px; it is \"" + arguments.unit + "\".", "");
    } else if (!arguments.follow.empty() && arguments.follow != "viewport" && arguments.follow != "card") {
        refuse("--follow", "The width must be viewport or card; it is \"" + arguments.follow + "\".", "");
    } else {
        return true;
    }
    return false;
}

void applyForm(const FormArguments& arguments, const std::string& file, Opened& opened,
               emit::StylesheetOptions& options) {
    options.unit = opened.project.unit;
    if (!arguments.unit.empty()) options.unit = arguments.unit == "px" ? units::Unit::Px : units::Unit::Rem;
    options.form = {.properties = arguments.properties,
                    .layer = arguments.layer,
                    .comments = !arguments.noComments,
                    .minified = arguments.minified};
    if (arguments.follow.empty()) return;
    const auto target = arguments.follow == "card" ? project::Follow::Card : project::Follow::Viewport;
    project::Problems problems;
    opened.project =
        emit::following(opened.project, target, options.variants, opened.store, *opened.profile, problems);
    for (project::Problem& problem : problems)
        problem.file = file;
    printProblems(problems);
}

void reportLateFonts(const emit::LateFonts& late) {
    for (const std::string& sentence : emit::lateFontSentences(late))
        printNote(sentence);
}

}  // namespace tenter::command
