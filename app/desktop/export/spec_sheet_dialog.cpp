#include "export/spec_sheet_dialog.h"

#include <QDir>
#include <QFileInfo>
#include <algorithm>
#include <memory>

#include "export/written_file.h"
#include "project/file.h"
#include "sheet/build.h"
#include "sheet/date.h"
#include "sheet/html.h"
#include "sheet/pdf.h"

namespace tenter::desktop::exporting {

namespace {

/// What a sheet is made of, for another thread.
struct Order {
    project::Project project;
    std::filesystem::path folder;
    std::vector<std::size_t> variants;
    const text::BreakProfile* profile = nullptr;
    int form = 0;  // 0: HTML; 1: PDF on A4; 2: PDF on Letter
    QString path;
};

Outcome write(const Order& order, const std::stop_token& stop, const Report& report) {
    const QString name = QFileInfo(order.path).fileName();
    const auto isStopped = [&] { return stop.stop_requested(); };
    Outcome outcome;
    report({0, 3, QObject::tr("Checking the row")});
    text::Fonts fonts;
    fonts.use(order.project.fonts, order.folder);
    text::ParagraphStore store(fonts);
    sheet::SheetOptions options;
    options.variants = order.variants;
    options.profile = order.profile;
    options.date = sheet::dateFor("", qEnvironmentVariableIsSet("SOURCE_DATE_EPOCH")
                                          ? qgetenv("SOURCE_DATE_EPOCH").constData()
                                          : nullptr)
                       .value_or("");
    options.isStopped = isStopped;
    const sheet::Sheet content = sheet::buildSheet(order.project, store, options);
    report({1, 3, QObject::tr("Setting %1").arg(name)});
    draw::PictureSource pictures(order.folder);
    std::string bytes;
    if (!isStopped())
        bytes = order.form == 0 ? sheet::htmlSheet(content, pictures, store)
                                : sheet::pdfSheet(content, order.form == 2 ? sheet::letter : sheet::a4,
                                                  pictures, store, isStopped);
    outcome.isStopped = isStopped();
    if (outcome.isStopped) return outcome;
    for (const std::string& file : pictures.missing())
        outcome.notes << QObject::tr(
                             "The picture file “%1” cannot be read; an empty place with its name is "
                             "shown instead.")
                             .arg(QString::fromStdString(file));
    if (bytes.empty()) {
        outcome.failure = QObject::tr("There is not enough memory for the spec sheet. Choose one variant.");
        return outcome;
    }
    report({2, 3, QObject::tr("Writing %1").arg(name)});
    project::Problems problems;
    QDir().mkpath(QFileInfo(order.path).path());
    if (!project::replaceFile(order.path.toStdString(), bytes, problems)) {
        outcome.failure = sentencesOf(problems).join(' ');
        return outcome;
    }
    outcome.files.push_back({name, order.form == 0 ? "HTML" : "PDF", static_cast<qint64>(bytes.size()),
                             QObject::tr("written", "file")});
    return outcome;
}

}  // namespace

SpecSheetDialog::SpecSheetDialog(Session& session, QWidget* parent)
    : ExportDialog(
          session,
          {"spec-sheet", QObject::tr("Export spec sheet"), QObject::tr("Write spec sheet"),
           QObject::tr("Writes the row at its key widths, its sizes, spacing and picture slots, and the "
                       "findings, for the client and for whoever maintains the row."),
           QObject::tr("Content"), Destination::Kind::File, QObject::tr("Spec sheets (*.html *.pdf)")},
          parent),
      variant_(new VariantChoice(true, this)),
      form_(new controls::Segments(this)) {
    form_->setTexts({QObject::tr("HTML"), QObject::tr("PDF, A4"), QObject::tr("PDF, Letter")},
                    {QObject::tr("One file that needs no other file"),
                     QObject::tr("Tagged PDF, 210 × 297 mm"), QObject::tr("Tagged PDF, 8.5 × 11 in")});
    options()->addRow(QObject::tr("&Variant"), variant_);
    options()->addRow(QObject::tr("Form"), form_);
    connect(variant_, &QComboBox::activated, this, &SpecSheetDialog::replan);
    connect(form_, &controls::Segments::chosen, this, [this] {
        setEnding();
        replan();
    });
}

void SpecSheetDialog::setEnding() {
    const QFileInfo file(destination().path());
    const QString ending = isPdf() ? "pdf" : "html";
    if (file.suffix().toLower() != ending && !file.fileName().isEmpty())
        destination().setPath(file.path() + "/" + file.completeBaseName() + "." + ending);
}

QString SpecSheetDialog::usualDestination() const {
    return projectFolder() + "/" + projectName() + "-sheet" + (isPdf() ? ".pdf" : ".html");
}

void SpecSheetDialog::restore(const Choices& choices) {
    variant_->restore(choices, session());
    form_->setCurrent(std::clamp(choices.value("form", 1).toInt(), 0, 2));
    setEnding();
}

void SpecSheetDialog::remember(const Choices& choices) const {
    variant_->remember(choices);
    choices.set("form", form_->current());
}

Planner SpecSheetDialog::planner() const {
    return [path = destination().path(), isPdf = isPdf()](const std::stop_token&) {
        Plan plan;
        plan.files.push_back(
            {QFileInfo(path).fileName(), isPdf ? "PDF" : "HTML", -1,
             QFileInfo::exists(path) ? QObject::tr("replaced", "file") : QObject::tr("new", "file")});
        return plan;
    };
}

Writer SpecSheetDialog::writer() const {
    const auto order = std::make_shared<const Order>(
        Order{session().document.project(), session().document.folder(), variant_->variants(),
              &session().layouts.profile(), std::max(0, form_->current()), destination().path()});
    return [order](const std::stop_token& stop, const Report& report) { return write(*order, stop, report); };
}

}  // namespace tenter::desktop::exporting
