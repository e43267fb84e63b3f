#include "export/pictures_dialog.h"

#include <QClipboard>
#include <QDir>
#include <QFileInfo>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <algorithm>
#include <utility>

#include "document/wording.h"
#include "emit/address.h"
#include "emit/page.h"
#include "pictures/listing.h"

namespace tenter::desktop::exporting {

using tenter::pictures::CutFile;
using tenter::pictures::CutOptions;
using tenter::pictures::CutPicture;
using tenter::pictures::CutPlan;
using tenter::pictures::CutProgress;
using tenter::pictures::CutResult;
using tenter::pictures::Format;
using tenter::pictures::PixelSize;
using tenter::pictures::WrittenFile;

namespace {

constexpr Format offered[] = {Format::Jpeg, Format::Png, Format::WebP, Format::Avif};

QString text(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

QString pixelSize(const PixelSize& size) {
    return QObject::tr("%1 × %2\u00A0px").arg(size.width).arg(size.height);
}

QString sentence(const tenter::project::Problem& problem) {
    return text(problem.sentence());
}

/// What the person should know about the pictures of a plan.
QStringList notesOf(const CutPlan& plan, bool hasAudience) {
    QStringList notes;
    for (const tenter::project::Problem& problem : plan.problems)
        notes << sentence(problem);
    for (const CutPicture& picture : plan.pictures) {
        for (const std::string& note : picture.notes)
            notes << text(picture.source) + ": " + text(note);
        if (picture.isTooSmall)
            notes
                << QObject::tr(
                       "%1 has too few pixels for screens with 2 device pixels per CSS px. Use a file of at "
                       "least %2.")
                       .arg(text(picture.source), pixelSize(picture.upload));
    }
    if (!hasAudience && plan.fileCount() > 0)
        notes << QObject::tr(
            "Every viewport width counts the same. Import an audience for widths that suit your visitors.");
    return notes;
}

}  // namespace

struct PicturesDialog::Request {
    tenter::project::Project project;
    std::filesystem::path projectFolder;
    std::filesystem::path folder;
    const text::BreakProfile* profile;
    CutOptions options;

    [[nodiscard]] CutPlan plan(const std::stop_token& stop) const {
        text::Fonts fonts;
        fonts.use(project.fonts, projectFolder);
        text::ParagraphStore store(fonts);
        return tenter::pictures::planCuts(project, projectFolder, store, *profile, options, stop);
    }
};

PicturesDialog::PicturesDialog(Session& session, QWidget* parent)
    : ExportDialog(
          session,
          {"pictures",
           QObject::tr("Pictures"),
           QObject::tr("Write pictures"),
           QObject::tr(
               "Cuts each picture to the sizes that the row needs at all viewport widths, and gives the "
               "markup that lets browsers load the right one. Your own pictures do not change."),
           QObject::tr("Pixels"),
           Destination::Kind::Folder,
           {}},
          parent),
      variants_(new controls::Segments(this)),
      candidates_(new QComboBox(this)),
      quality_(new QComboBox(this)),
      address_(new QLineEdit(this)),
      copy_(new QPushButton(QObject::tr("Copy &markup"), this)) {
    variants_->setTexts({QObject::tr("This variant"), QObject::tr("All variants")},
                        {QObject::tr("Files for the variant that the window shows"),
                         QObject::tr("Files that serve all variants")});
    variants_->setAccessibleName(QObject::tr("Variants"));
    for (int count = 1; count <= tenter::pictures::mostCandidates; ++count)
        candidates_->addItem(QString::number(count), count);
    candidates_->setAccessibleName(QObject::tr("Files for each picture and format"));
    candidates_->setToolTip(QObject::tr(
        "With more files, browsers load fewer pixels than they do not show. Four are enough for most rows."));
    quality_->addItem(QObject::tr("Usual for each format"), 0);
    for (int quality = 95; quality >= 30; quality -= 5)
        quality_->addItem(QString::number(quality), quality);
    for (QComboBox* box : {candidates_, quality_}) {
        box->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
        box->setMinimumWidth(216);
        connect(box, &QComboBox::currentIndexChanged, this, &PicturesDialog::replan);
    }
    quality_->setAccessibleName(QObject::tr("Quality"));
    quality_->setToolTip(QObject::tr(
        "Of 100; not used for PNG. Usual: 80 for JPEG, 78 for WebP, 58 for AVIF. A lower quality gives "
        "smaller files."));
    address_->setPlaceholderText(QObject::tr("Path from the project"));
    address_->setAccessibleName(QObject::tr("Address on the site"));
    address_->setToolTip(QObject::tr("Address of the folder in the copied markup, such as /media/."));
    options()->addRow(QObject::tr("&Variants"), variants_);
    options()->addRow(QObject::tr("Formats"), buildFormats());
    options()->addRow(QObject::tr("Files for &each"), candidates_);
    options()->addRow(QObject::tr("&Quality"), quality_);
    options()->addRow(QObject::tr("&Address on the site"), address_);
    addResultButton(copy_);
    connect(variants_, &controls::Segments::chosen, this, &PicturesDialog::replan);
    connect(copy_, &QPushButton::clicked, this, &PicturesDialog::copyMarkup);
}

QWidget* PicturesDialog::buildFormats() {
    auto* row = new QWidget(this);
    auto* box = new QHBoxLayout(row);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(16);
    for (const Format format : offered) {
        auto* check = new QCheckBox(QString::fromUtf8(formatTitle(format).data()), row);
        connect(check, &QCheckBox::toggled, this, &PicturesDialog::replan);
        box->addWidget(check);
        formats_.push_back(check);
    }
    box->addStretch(1);
    return row;
}

QString PicturesDialog::usualDestination() const {
    return QDir(projectFolder()).filePath(projectName() + "-pictures");
}

void PicturesDialog::restore(const Choices& choices) {
    const QStringList names = choices.value("formats", QStringList{"jpeg", "webp"}).toStringList();
    for (std::size_t i = 0; i < formats_.size(); ++i) {
        const QSignalBlocker blocker(formats_[i]);
        formats_[i]->setChecked(names.contains(QString::fromUtf8(formatName(offered[i]).data())));
    }
    const QSignalBlocker candidates(candidates_);
    const QSignalBlocker quality(quality_);
    const int count = choices.value("candidates", tenter::pictures::usualCandidates).toInt();
    candidates_->setCurrentIndex(std::max(0, candidates_->findData(count)));
    quality_->setCurrentIndex(std::max(0, quality_->findData(choices.value("quality", 0).toInt())));
    address_->setText(choices.value("address", QString()).toString());
    const bool hasSeveral = session().document.project().row().variants.size() > 1;
    variants_->setVisible(hasSeveral);
    options()->labelForField(variants_)->setVisible(hasSeveral);
    variants_->setCurrent(hasSeveral && choices.value("allVariants", false).toBool() ? 1 : 0);
}

void PicturesDialog::remember(const Choices& choices) const {
    QStringList names;
    for (const Format format : cutOptions().formats)
        names << QString::fromUtf8(formatName(format).data());
    choices.set("formats", names);
    choices.set("candidates", candidates_->currentData());
    choices.set("quality", quality_->currentData());
    choices.set("address", address_->text());
    choices.set("allVariants", variants_->current() == 1);
}

CutOptions PicturesDialog::cutOptions() const {
    CutOptions cut;
    cut.variants = {session().view.variant()};
    if (variants_->current() == 1) cut.variants = project::everyVariant(session().document.project());
    cut.formats.clear();
    for (std::size_t i = 0; i < formats_.size(); ++i)
        if (formats_[i]->isChecked()) cut.formats.push_back(offered[i]);
    cut.candidates = candidates_->currentData().toInt();
    if (const int quality = quality_->currentData().toInt(); quality > 0) cut.quality = quality;
    cut.visits = session().checks.audience().visits;
    return cut;
}

std::shared_ptr<const PicturesDialog::Request> PicturesDialog::request() const {
    return std::make_shared<const Request>(Request{session().document.project(), session().document.folder(),
                                                   destination().path().toStdString(),
                                                   &session().view.profile(), cutOptions()});
}

Planner PicturesDialog::planner() const {
    return [request = request()](const std::stop_token& stop) {
        Plan out;
        if (request->options.formats.empty()) {
            out.problem = QObject::tr("Choose at least one format.");
            return out;
        }
        const CutPlan plan = request->plan(stop);
        const std::vector<bool> isThere = tenter::pictures::upToDate(plan, request->folder);
        for (const CutPicture& picture : plan.pictures)
            for (const CutFile& file : picture.files) {
                const std::filesystem::path path = request->folder / file.name;
                std::error_code error;
                QString state = std::filesystem::exists(path, error) ? QObject::tr("will be replaced", "file")
                                                                     : QObject::tr("new", "file");
                auto bytes = static_cast<qint64>(file.estimatedBytes);
                if (isThere[out.files.size()]) {
                    state = QObject::tr("up to date", "file");
                    bytes = static_cast<qint64>(std::filesystem::file_size(path, error));
                }
                out.files.push_back({text(file.name), pixelSize(file.size), bytes, state});
            }
        out.notes = notesOf(plan, !request->options.visits.empty());
        if (out.files.empty() && !plan.isCancelled)
            out.problem = out.notes.isEmpty()
                              ? QObject::tr("The row has no pictures. Add some in the Pictures panel.")
                              : QObject::tr("No picture of the row can be cut.");
        return out;
    };
}

Writer PicturesDialog::writer() const {
    return [request = request()](const std::stop_token& stop, const Report& report) {
        Outcome out;
        const CutPlan plan = request->plan(stop);
        const CutResult result = tenter::pictures::writeCuts(
            plan, request->project, request->folder, stop, [&](const CutProgress& progress) {
                report(
                    {static_cast<int>(progress.done), static_cast<int>(progress.total), text(progress.name)});
            });
        for (const WrittenFile& file : result.files)
            out.files.push_back(
                {text(file.name), pixelSize(file.size), static_cast<qint64>(file.bytes),
                 file.isKept ? QObject::tr("was up to date", "file") : QObject::tr("written", "file")});
        out.isStopped = result.isStopped || plan.isCancelled;
        for (const tenter::project::Problem& problem : result.problems)
            out.notes << text(problem.line());
        if (!result.isComplete && !out.isStopped && !out.notes.isEmpty()) out.failure = out.notes.takeFirst();
        return out;
    };
}

QString PicturesDialog::markup() const {
    const auto listing = tenter::pictures::listingIn(destination().path().toStdString());
    if (!listing) return {};
    const project::Project& project = session().document.project();
    std::string address = address_->text().trimmed().toStdString();
    if (address.empty())
        address =
            tenter::emit::folderAddress(destination().path().toStdString(), session().document.folder());
    else if (!address.ends_with('/'))
        address += '/';
    const tenter::emit::CutPictures cut{&*listing, address};
    const std::size_t variant = session().view.variant();
    if (!project.row().given) return text(tenter::emit::markup(project, variant, cut));
    return text(tenter::emit::pictureElements(project, variant, cut));
}

void PicturesDialog::copyMarkup() {
    QGuiApplication::clipboard()->setText(markup());
}

}  // namespace tenter::desktop::exporting
