#include <cstdlib>
#include <memory>
#include <optional>

#include "draw/picture_source.h"
#include "help.h"
#include "opened.h"
#include "outcome.h"
#include "sheet/build.h"
#include "sheet/date.h"
#include "sheet/html.h"
#include "sheet/pdf.h"
#include "verbs.h"

namespace tenter::command {

namespace {

struct SheetArguments : Arguments {
    std::string date;
    std::string paper{"a4"};
    std::string language{"en"};
    bool pdf = false;
};

int runSheet(const SheetArguments& arguments) {
    if (!useLanguage(arguments.language)) return wrongInput;
    const std::unique_ptr<Opened> opened = openProject(arguments);
    if (!opened) return wrongInput;
    if (arguments.paper != "a4" && arguments.paper != "letter")
        return refuse("--paper", "The paper must be a4 or letter; it is \"" + arguments.paper + "\".", "");
    const std::optional<std::string> date = sheet::dateFor(arguments.date, std::getenv("SOURCE_DATE_EPOCH"));
    if (!date)
        return refuse("--date", "The date must look like 2026-11-29; it is \"" + arguments.date + "\".", "");
    sheet::SheetOptions options;
    if (!arguments.variant.empty()) options.variants = {opened->variant};
    options.date = *date;
    options.profile = opened->profile;
    const sheet::Sheet content = sheet::buildSheet(opened->project, opened->store, options);
    draw::PictureSource pictures(opened->folder);
    const std::string written =
        arguments.pdf ? sheet::pdfSheet(content, arguments.paper == "letter" ? sheet::letter : sheet::a4,
                                        pictures, opened->store)
                      : sheet::htmlSheet(content, pictures, opened->store);
    printMissingPictures(arguments, pictures.missing());
    if (written.empty())
        return refuse(arguments.project, "The spec sheet could not be made: there is not enough memory.",
                      "Free some memory, or use --variant.");
    return deliver(arguments, written);
}

}  // namespace

void addSheet(CLI::App& app, Action& action) {
    auto arguments = std::make_shared<SheetArguments>();
    CLI::App* verb =
        app.add_subcommand("sheet", "Print the spec sheet of the row as one HTML file or as PDF");
    addFiles(*verb, *arguments);
    verb->add_option("--variant", arguments->variant,
                     "Class of the only variant in the sheet, without the dot. Default: all variants.")
        ->type_name("CLASS");
    addEngine(*verb, *arguments);
    CLI::Option* const pdf =
        verb->add_flag("--pdf", arguments->pdf, "Print a tagged PDF file. Default: HTML.");
    verb->add_option("--paper", arguments->paper, "Paper of the PDF: a4 or letter. Default: a4.")
        ->needs(pdf)
        ->type_name("PAPER");
    verb->add_option("--date", arguments->date,
                     "Date on the sheet, such as 2026-11-29. Default: that of the environment variable "
                     "SOURCE_DATE_EPOCH, or today.")
        ->type_name("DATE");
    addLanguage(*verb, arguments->language);
    setHelpEnd(*verb,
               "The sheet shows the row at its key widths, font size and measure as plots, tables of type, "
               "columns, spacing, measure and picture slots, the findings with their sources, and the fonts. "
               "It needs no other file and no network.",
               {"sheet row.tenter.json --out sheet.html",
                "sheet row.tenter.json --pdf --paper letter --out sheet.pdf"},
               {exitDone(), exitWrongInput()});
    verb->callback([&action, arguments] { action = [arguments] { return runSheet(*arguments); }; });
}

}  // namespace tenter::command
