#include <algorithm>
#include <memory>

#include "emit/class_names.h"
#include "emit/page.h"
#include "help.h"
#include "opened.h"
#include "outcome.h"
#include "picture_address.h"
#include "verbs.h"

namespace tenter::command {

namespace {

struct MarkupArguments : Arguments {
    bool classes = false;
    std::string pictures;
    std::string address;
};

/// The elements and their classes in two columns.
std::string classTable(const project::Project& project, std::size_t variant) {
    const std::vector<emit::ClassName> names = emit::classNames(project, variant);
    std::size_t widest = 0;
    for (const emit::ClassName& one : names)
        widest = std::max(widest, one.element.size());
    std::string out;
    for (const emit::ClassName& one : names)
        out += one.element + std::string(widest + 2 - one.element.size(), ' ') + one.name + "\n";
    return out;
}

/// Prints which pictures the listing has no files for.
void reportUncut(const Opened& opened, const pictures::Listing& listing, const Arguments& arguments) {
    for (const project::PartRef& place : emit::uncutPictures(opened.project, opened.variant, listing))
        printProblem({arguments.project,
                      "/cards/" + std::to_string(place.card) + "/parts/" + std::to_string(place.part),
                      "The folder has no cut files of this picture for this variant; the markup has the "
                      "picture itself.",
                      "Cut the pictures again."});
}

int runMarkup(const MarkupArguments& arguments) {
    const std::unique_ptr<Opened> opened = openProject(arguments);
    if (!opened) return wrongInput;
    if (opened->project.row().given)
        return refuse(arguments.project, "The row was imported, so its markup is on its page.",
                      "Print the page with tenter-cli page, or remove \"given\" from the project.");
    if (arguments.classes) return deliver(arguments, classTable(opened->project, opened->variant));
    if (arguments.pictures.empty()) return deliver(arguments, emit::markup(opened->project, opened->variant));
    const std::optional<pictures::Listing> listing = pictures::listingIn(arguments.pictures);
    if (!listing)
        return refuse(
            arguments.pictures,
            "The folder has no " + std::string(pictures::listingName) + ", the listing of cut pictures.",
            "Cut the pictures with tenter-cli pictures first.");
    reportUncut(*opened, *listing, arguments);
    const emit::CutPictures cut{&*listing, pictureAddress(arguments, arguments.pictures, arguments.address)};
    return deliver(arguments, emit::markup(opened->project, opened->variant, cut));
}

}  // namespace

void addMarkup(CLI::App& app, Action& action) {
    auto arguments = std::make_shared<MarkupArguments>();
    CLI::App* verb = app.add_subcommand("markup", "Print the HTML of the row for the stylesheet");
    addFiles(*verb, *arguments);
    addVariant(*verb, *arguments);
    verb->add_flag("--classes", arguments->classes,
                   "Print which class each kind of element needs, for a page that has its own markup.");
    verb->add_option("--pictures", arguments->pictures,
                     "Folder into which tenter-cli pictures has cut the pictures: the HTML offers its files "
                     "to browsers with srcset and sizes. Default: each picture's own file.")
        ->type_name("FOLDER");
    addPictureAddress(*verb, arguments->address);
    setHelpEnd(*verb, "The HTML has the classes, alternative texts and heading levels of the project.",
               {"markup row.tenter.json --out row.html", "markup row.tenter.json --classes"},
               {exitDone(), exitWrongInput()});
    verb->callback([&action, arguments] { action = [arguments] { return runMarkup(*arguments); }; });
}

}  // namespace tenter::command
