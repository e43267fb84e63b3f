#include "export/page_folder_dialog.h"

#include <QDir>
#include <QFileInfo>
#include <cmath>
#include <functional>
#include <memory>

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
    bool cutPictures = true;
    SheetChoice sheet;
};

/// The content of the folder, with what it refers to.
struct Made {
    std::optional<emit::PageFolder> folder;
    project::Problems problems;
    std::unique_ptr<project::Project> project;  ///< `cuts` refer to it
    std::unique_ptr<emit::FolderCuts> cuts;
};

/// `write` writes the cut pictures; false: nothing more is made.
Made madeFor(const Request& request, const std::stop_token& stop,
             const std::function<bool(emit::FolderCuts&, project::Problems&)>& write = {}) {
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
    out.project = std::make_unique<project::Project>(
        followingChoice(request.project, {request.variant}, request.sheet, store, out.problems));
    if (request.cutPictures) {
        out.cuts = std::make_unique<emit::FolderCuts>(*out.project, request.folder, request.variant, store,
                                                      text::defaultProfile(), stop);
        options.cuts = out.cuts.get();
        if (write && !write(*out.cuts, out.problems)) return out;
    }
    out.folder = emit::pageFolder(*out.project, request.folder, options, store, out.problems);
    return out;
}

QString kindOf(const std::string& name) {
    if (name == "index.html") return QObject::tr("page");
    if (name == "row.css") return QObject::tr("stylesheet of the row");
    if (name == "page.css") return QObject::tr("page around the row");
    if (name == "fonts.css") return QObject::tr("rules of the fonts");
    return name.starts_with("fonts/") ? QObject::tr("font") : QObject::tr("picture");
}

/// The size that a cut file will have, bytes; 0 if `name` is none.
double estimateOf(const emit::FolderCuts& cuts, const std::string& name) {
    for (const tenter::pictures::CutPicture& picture : cuts.plan().pictures)
        for (const tenter::pictures::CutFile& file : picture.files)
            if (name == "pictures/" + file.name) return file.estimatedBytes;
    return 0;
}

std::vector<ExportFile> filesOf(const Made& made, const QString& state) {
    std::vector<ExportFile> files;
    for (const project::FolderFile& file : made.folder->files) {
        auto bytes = static_cast<qint64>(file.size());
        if (bytes == 0 && made.cuts) bytes = std::llround(estimateOf(*made.cuts, file.name));
        files.push_back({QString::fromStdString(file.name), kindOf(file.name), bytes, state});
    }
    return files;
}

/// What people should know about single pictures.
QStringList pictureNotes(const Made& made) {
    QStringList notes;
    if (!made.cuts) return notes;
    for (const tenter::pictures::CutPicture& picture : made.cuts->plan().pictures)
        for (const std::string& note : picture.notes)
            notes << QString("%1: %2").arg(QString::fromStdString(picture.source),
                                           QString::fromStdString(note));
    return notes;
}

QStringList fontNotes(const emit::PageFolder& folder) {
    QStringList notes;
    bool shipped = false;
    for (const emit::ShippedFont& font : folder.fonts) {
        shipped = shipped || !font.file.empty();
        const QString note =
            QObject::tr("Without the font %1: it %2.")
                .arg(QString::fromStdString(font.family), QString::fromStdString(font.reason));
        if (!font.reason.empty() && !notes.contains(note)) notes << note;
    }
    if (shipped)
        notes << QObject::tr(
            "Fonts are included if their files allow it. Check their licences before you publish them.");
    return notes;
}

}  // namespace

PageFolderDialog::PageFolderDialog(Session& session, QWidget* parent)
    : ExportDialog(
          session,
          {"folder",
           QObject::tr("Export page folder"),
           QObject::tr("Write folder"),
           QObject::tr(
               "Writes the row as a page with its stylesheet, pictures and fonts. The page opens from disk "
               "and requests nothing else."),
           QObject::tr("Content"),
           Destination::Kind::Folder,
           {}},
          parent),
      variant_(new VariantChoice(false, this)),
      pictures_(new QComboBox(this)),
      fonts_(new QCheckBox(QObject::tr("Include &fonts that allow it"), this)) {
    options()->addRow(QObject::tr("&Variant"), variant_);
    pictures_->addItem(QObject::tr("Cut to their slots"), "cut");
    pictures_->addItem(QObject::tr("Copied as they are"), "whole");
    pictures_->setObjectName("pictures");
    pictures_->setAccessibleName(QObject::tr("Pictures"));
    pictures_->setToolTip(QObject::tr(
        "Cut: up to four files of each picture, for screens with 1, 2 and 3 device pixels per CSS px. None "
        "is "
        "enlarged."));
    options()->addRow(QObject::tr("&Pictures"), pictures_);
    options()->addRow(QObject::tr("Fonts"), fonts_);
    sheet_ = new SheetChoices(*options(), this);
    connect(variant_, &QComboBox::activated, this, &PageFolderDialog::replan);
    connect(pictures_, &QComboBox::activated, this, &PageFolderDialog::replan);
    connect(fonts_, &QCheckBox::clicked, this, &PageFolderDialog::replan);
    connect(sheet_, &SheetChoices::changed, this, &PageFolderDialog::replan);
}

QString PageFolderDialog::usualDestination() const {
    return projectFolder() + "/" + projectName() + "-page";
}

void PageFolderDialog::restore(const Choices& choices) {
    variant_->restore(choices, session());
    pictures_->setCurrentIndex(std::max(0, pictures_->findData(choices.value("pictures", "cut"))));
    fonts_->setChecked(choices.value("fonts", true).toBool());
    sheet_->restore(choices, session().document.project());
}

void PageFolderDialog::remember(const Choices& choices) const {
    variant_->remember(choices);
    choices.set("pictures", pictures_->currentData());
    choices.set("fonts", fonts_->isChecked());
    sheet_->remember(choices);
}

Planner PageFolderDialog::planner() const {
    return [request =
                Request{session().document.project(), session().document.folder(),
                        variant_->variants().front(), fonts_->isChecked(), cutsPictures(), sheet_->value()},
            path = destination().path()](const std::stop_token& stop) {
        Plan plan;
        plan.isEstimate = request.cutPictures;
        project::Problems refused;
        if (!project::canReplaceFolder(path.toStdString(), refused)) {
            plan.problem = sentencesOf(refused).join(' ');
            return plan;
        }
        const Made made = madeFor(request, stop);
        if (!made.folder) {
            plan.problem = sentencesOf(made.problems).join(' ');
            return plan;
        }
        plan.files = filesOf(
            made, QFileInfo::exists(path) ? QObject::tr("replaced", "file") : QObject::tr("new", "file"));
        plan.notes = sentencesOf(made.problems) + pictureNotes(made) + fontNotes(*made.folder);
        return plan;
    };
}

Writer PageFolderDialog::writer() const {
    return [request =
                Request{session().document.project(), session().document.folder(),
                        variant_->variants().front(), fonts_->isChecked(), cutsPictures(), sheet_->value()},
            path = destination().path()](const std::stop_token& stop, const Report& report) {
        Outcome outcome;
        QDir().mkpath(QFileInfo(path).path());
        project::Problems refused;
        if (!project::canReplaceFolder(path.toStdString(), refused)) {
            outcome.failure = sentencesOf(refused).join(' ');
            return outcome;
        }
        const Made made = madeFor(request, stop, [&](emit::FolderCuts& cuts, project::Problems& problems) {
            return cuts.write(path.toStdString(), problems, stop,
                              [&](const tenter::pictures::CutProgress& progress) {
                                  report({static_cast<int>(progress.done), static_cast<int>(progress.total),
                                          QString::fromStdString("pictures/" + progress.name)});
                              });
        });
        if (!made.folder) {
            outcome.failure = sentencesOf(made.problems).join(' ');
            outcome.isStopped = stop.stop_requested();
            return outcome;
        }
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
        outcome.files = filesOf(made, QObject::tr("written", "file"));
        outcome.notes = sentencesOf(made.problems) + pictureNotes(made) + fontNotes(*made.folder);
        return outcome;
    };
}

bool PageFolderDialog::cutsPictures() const {
    return pictures_->currentData() == "cut";
}

}  // namespace tenter::desktop::exporting
