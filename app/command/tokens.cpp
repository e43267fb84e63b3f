#include "emit/tokens.h"

#include <memory>

#include "help.h"
#include "opened.h"
#include "outcome.h"
#include "verbs.h"

namespace tenter::command {

namespace {

struct TokensArguments : Arguments {
    std::string unit = "px";
};

int runTokens(const TokensArguments& arguments) {
    if (arguments.unit != "px" && arguments.unit != "rem")
        return refuse("--unit", "The unit must be px or rem; it is \"" + arguments.unit + "\".", "");
    const std::unique_ptr<Opened> opened = openProject(arguments);
    if (!opened) return wrongInput;
    emit::TokenOptions options;
    options.unit = arguments.unit == "rem" ? units::Unit::Rem : units::Unit::Px;
    options.variants = arguments.variant.empty() ? project::everyVariant(opened->project)
                                                 : std::vector<std::size_t>{opened->variant};
    return deliver(arguments, emit::tokens(opened->project, options));
}

}  // namespace

void addTokens(CLI::App& app, Action& action) {
    auto arguments = std::make_shared<TokensArguments>();
    CLI::App* verb = app.add_subcommand("tokens", "Print sizes, spacing and colours as design tokens, JSON");
    addFiles(*verb, *arguments);
    verb->add_option("--variant", arguments->variant,
                     "Class of the variant, without the dot. Default: all variants.")
        ->type_name("CLASS");
    verb->add_option("--unit", arguments->unit,
                     "Unit of dimensions: px, or rem (multiples of 16\u00A0px, as the format defines it). "
                     "Default: px.")
        ->type_name("UNIT");
    setHelpEnd(
        *verb,
        "The format is Design Tokens Format Module 2025.10. Groups: the row, its variants, their bands, "
        "then row, card, picture and text; tokens have the names of CSS properties. Of a ramp, both "
        "ends are tokens. Lengths in em are dimensions at both ends of the ramp; percentages are "
        "numbers.\n"
        "Band: a range of viewport widths between two breakpoints, with its own columns, spacing and "
        "sizes.\n"
        "Ramp: a font size that changes in a straight line between two widths and is constant outside "
        "them.",
        {"tokens row.tenter.json --out row.tokens.json",
         "tokens row.tenter.json --variant walks-trio --unit rem"},
        {exitDone(), exitWrongInput()});
    verb->callback([&action, arguments] { action = [arguments] { return runTokens(*arguments); }; });
}

}  // namespace tenter::command
