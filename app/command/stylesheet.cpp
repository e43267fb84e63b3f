#include "emit/stylesheet.h"

#include <memory>

#include "help.h"
#include "opened.h"
#include "outcome.h"
#include "sheet_form.h"
#include "verbs.h"

namespace tenter::command {

namespace {

struct StylesheetArguments : Arguments {
    bool allVariants = false;
    std::string markup;
    FormArguments form;
};

int runStylesheet(const StylesheetArguments& arguments) {
    if (!arguments.markup.empty() && arguments.markup != "own" && arguments.markup != "given")
        return refuse("--markup", "The markup must be own or given; it is \"" + arguments.markup + "\".", "");
    if (!formIsKnown(arguments.form)) return wrongInput;
    const std::unique_ptr<Opened> opened = openProject(arguments);
    if (!opened) return wrongInput;
    const bool given =
        arguments.markup.empty() ? opened->project.row().given.has_value() : arguments.markup == "given";
    if (given && arguments.form.layer)
        return refuse("--layer", "The row was imported: rules of its theme would override those in a layer.",
                      "Leave out --layer, or use --markup own.");
    emit::StylesheetOptions options;
    options.variants = {opened->variant};
    if (arguments.allVariants) options.variants = project::everyVariant(opened->project);
    applyForm(arguments.form, arguments.project, *opened, options);
    if (arguments.form.lateFonts) {
        const emit::LateFonts late = emit::lateFonts(opened->project, options.variants, opened->store);
        reportLateFonts(late);
        opened->project = late.project;
        options.fontRules = emit::lateFontRules(late, options.form.comments, options.form.minified);
    }
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
    addForm(*verb, arguments->form);
    setHelpEnd(
        *verb,
        "Band: a range of viewport widths between two breakpoints, with its own columns, spacing and sizes.",
        {"stylesheet row.tenter.json --out row.css",
         "stylesheet row.tenter.json --all-variants --unit px --properties --layer"},
        {exitDone(), exitWrongInput()});
    verb->callback([&action, arguments] { action = [arguments] { return runStylesheet(*arguments); }; });
}

}  // namespace tenter::command
