#include <memory>

#include "emit/page_folder.h"
#include "help.h"
#include "opened.h"
#include "outcome.h"
#include "sheet_form.h"
#include "verbs.h"

namespace tenter::command {

namespace {

struct FolderArguments : Arguments {
    std::string into;
    bool noFonts = false;
    bool wholePictures = false;
    FormArguments form;
};

int runFolder(const FolderArguments& arguments) {
    if (!formIsKnown(arguments.form)) return wrongInput;
    const std::unique_ptr<Opened> opened = openProject(arguments);
    if (!opened) return wrongInput;
    if (opened->project.row().given && arguments.form.layer)
        return refuse("--layer", "The row was imported: rules of its theme would override those in a layer.",
                      "Leave out --layer.");
    emit::PageFolderOptions options;
    options.variant = opened->variant;
    options.fonts = !arguments.noFonts;
    options.lateFonts = arguments.form.lateFonts;
    options.sheet.variants = {opened->variant};
    applyForm(arguments.form, arguments.project, *opened, options.sheet);
    if (options.lateFonts)
        reportLateFonts(emit::lateFonts(opened->project, options.sheet.variants, opened->store));
    project::Problems problems;
    std::optional<emit::FolderCuts> cuts;
    if (!arguments.wholePictures) {
        cuts.emplace(opened->project, opened->folder, opened->variant, opened->store, *opened->profile);
        options.cuts = &*cuts;
        for (const pictures::CutPicture& picture : cuts->plan().pictures)
            for (const std::string& note : picture.notes)
                printNote(picture.source + ": " + note);
    }
    std::optional<emit::PageFolder> folder;
    if (project::canReplaceFolder(arguments.into, problems) &&
        (!cuts || cuts->write(arguments.into, problems)))
        folder = emit::pageFolder(opened->project, opened->folder, options, opened->store, problems);
    const bool written = folder && project::replaceFolder(arguments.into, folder->files, problems);
    for (project::Problem& problem : problems)
        if (problem.file.empty()) problem.file = arguments.project;
    printProblems(problems);
    return written ? deliver(arguments, emit::folderList(*folder)) : wrongInput;
}

}  // namespace

void addFolder(CLI::App& app, Action& action) {
    auto arguments = std::make_shared<FolderArguments>();
    CLI::App* verb =
        app.add_subcommand("folder", "Write the row as a folder: page, stylesheet, pictures and fonts");
    addFiles(*verb, *arguments);
    verb->add_option("--into", arguments->into,
                     "Folder to write. It is made, or replaced if Tenter wrote everything in it. If writing "
                     "fails, nothing is changed. Default: none; it must be given.")
        ->required()
        ->type_name("FOLDER");
    addVariant(*verb, *arguments);
    verb->add_flag("--no-fonts", arguments->noFonts,
                   "Leave out all fonts. Without it, fonts are included if their files allow it.");
    verb->add_flag("--whole-pictures", arguments->wholePictures,
                   "Copy the picture files as they are. Without it, each picture is cut to its slot in up to "
                   "four widths, for screens with 1, 2 and 3 device pixels per CSS px; none is enlarged.");
    addForm(*verb, arguments->form);
    setHelpEnd(
        *verb,
        "Prints the files that were written, and which fonts were left out and why. The page opens from "
        "disk and requests nothing else.",
        {"folder row.tenter.json --into site",
         "folder row.tenter.json --into plain --no-fonts --no-comments"},
        {exitDone(), exitWrongInput()});
    verb->callback([&action, arguments] { action = [arguments] { return runFolder(*arguments); }; });
}

}  // namespace tenter::command
