#include "export/page_folder_dialog.h"

#include <QDir>
#include <QFileInfo>

#include "document/wording.h"
#include "emit/page_folder.h"
#include "export/written_file.h"

namespace tenter::desktop::exporting {

namespace {

/// What the dialog asks for.
struct Request {
    project::Project project;
    std::filesystem::path folder;  ///< of the project file
    std::size_t variant = 0;
    bool fonts = true;
    SheetChoice sheet;
};

struct Made {
    std::optional<emit::PageFolder> folder;
    project::Problems problems;
};

Made madeFor(const Request& request) {
    text::Fonts fonts;
    fonts.use(request.project.fonts, request.folder);
    text::ParagraphStore store(fonts);
    Made out;
    emit::PageFolderOptions options;
    options.variant = request.variant;
    options.fonts = request.fonts;
    options.lateFonts = request.sheet.lateFonts;
    options.sheet.unit = request.sheet.unit;
    options.sheet.form = request.sheet.form;
    const project::Project project =
        followingChoice(request.project, {request.variant}, request.sheet, store, out.problems);
    out.folder = emit::pageFolder(project, request.folder, options, store, out.problems);
    return out;
}

QString kindOf(const std::string& name) {
    if (name == "index.html") return "page";
    if (name == "row.css") return "stylesheet of the row";
    if (name == "page.css") return "page around the row";
    if (name == "fonts.css") return "rules of the fonts";
    return name.starts_with("fonts/") ? "font" : "picture";
}

std::vector<ExportFile> filesOf(const emit::PageFolder& folder, const QString& state) {
    std::vector<ExportFile> files;
    for (const project::FolderFile& file : folder.files)
        files.push_back(
            {QString::fromStdString(file.name), kindOf(file.name), static_cast<qint64>(file.size()), state});
    return files;
}

QStringList fontNotes(const emit::PageFolder& folder) {
    QStringList notes;
    bool shipped = false;
    for (const emit::ShippedFont& font : folder.fonts) {
        shipped = shipped || !font.file.empty();
        const QString note =
            QString("Without the font %1: it %2.")
                .arg(QString::fromStdString(font.family), QString::fromStdString(font.reason));
        if (!font.reason.empty() && !notes.contains(note)) notes << note;
    }
    if (shipped)
        notes << "Fonts are included if their files allow it. Check their licences before you publish them.";
    return notes;
}

}  // namespace

PageFolderDialog::PageFolderDialog(Session& session, QWidget* parent)
    : ExportDialog(
          session,
          {"folder",
           "Export page folder",
           "Write folder",
           "Writes the row as a page with its stylesheet, pictures and fonts. The page opens from disk "
           "and requests nothing else.",
           "Content",
           Destination::Kind::Folder,
           {}},
          parent),
      variant_(new VariantChoice(false, this)),
      fonts_(new QCheckBox("Include &fonts that allow it", this)) {
    options()->addRow("&Variant", variant_);
    options()->addRow("Fonts", fonts_);
    sheet_ = new SheetChoices(*options(), this);
    connect(variant_, &QComboBox::activated, this, &PageFolderDialog::replan);
    connect(fonts_, &QCheckBox::clicked, this, &PageFolderDialog::replan);
    connect(sheet_, &SheetChoices::changed, this, &PageFolderDialog::replan);
}

QString PageFolderDialog::usualDestination() const {
    return projectFolder() + "/" + projectName() + "-page";
}

void PageFolderDialog::restore(const Choices& choices) {
    variant_->restore(choices, session());
    fonts_->setChecked(choices.value("fonts", true).toBool());
    sheet_->restore(choices, session().document.project());
}

void PageFolderDialog::remember(const Choices& choices) const {
    variant_->remember(choices);
    choices.set("fonts", fonts_->isChecked());
    sheet_->remember(choices);
}

Planner PageFolderDialog::planner() const {
    return [request = Request{session().document.project(), session().document.folder(),
                              variant_->variants().front(), fonts_->isChecked(), sheet_->value()},
            path = destination().path()](const std::stop_token&) {
        Plan plan;
        plan.isEstimate = false;
        project::Problems refused;
        if (!project::canReplaceFolder(path.toStdString(), refused)) {
            plan.problem = sentencesOf(refused).join(' ');
            return plan;
        }
        const Made made = madeFor(request);
        if (!made.folder) {
            plan.problem = sentencesOf(made.problems).join(' ');
            return plan;
        }
        plan.files = filesOf(*made.folder, QFileInfo::exists(path) ? "replaced" : "new");
        plan.notes = sentencesOf(made.problems) + fontNotes(*made.folder);
        return plan;
    };
}

Writer PageFolderDialog::writer() const {
    return [request = Request{session().document.project(), session().document.folder(),
                              variant_->variants().front(), fonts_->isChecked(), sheet_->value()},
            path = destination().path()](const std::stop_token& stop, const Report& report) {
        Outcome outcome;
        Made made = madeFor(request);
        if (!made.folder) {
            outcome.failure = sentencesOf(made.problems).join(' ');
            return outcome;
        }
        QDir().mkpath(QFileInfo(path).path());
        const int total = static_cast<int>(made.folder->files.size());
        project::Problems problems;
        const bool written =
            project::replaceFolder(path.toStdString(), made.folder->files, problems, [&](std::size_t index) {
                report(
                    {static_cast<int>(index), total, QString::fromStdString(made.folder->files[index].name)});
                return !stop.stop_requested();
            });
        outcome.failure = sentencesOf(problems).join(' ');
        outcome.isStopped = !written && problems.empty();
        if (!written) return outcome;
        outcome.files = filesOf(*made.folder, "written");
        outcome.notes = sentencesOf(made.problems) + fontNotes(*made.folder);
        return outcome;
    };
}

}  // namespace tenter::desktop::exporting
