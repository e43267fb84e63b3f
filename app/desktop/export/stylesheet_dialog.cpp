#include "export/stylesheet_dialog.h"

#include <QClipboard>
#include <QGuiApplication>
#include <algorithm>

#include "document/wording.h"

namespace tenter::desktop::exporting {

namespace {

/// `214 lines, minified 2.6 kB`.
QString aboutSheet(const std::string& css, std::size_t minified) {
    const auto lines = std::ranges::count(css, '\n');
    const QString size = QObject::tr("minified %1").arg(bytesTitle(static_cast<qint64>(minified)));
    return lines == 0 ? size : linesTitle(static_cast<std::size_t>(lines)) + ", " + size;
}

/// The stylesheet, measured with fonts of its own, because it may run on any thread.
FileContent contentOf(const project::Project& project, const std::filesystem::path& folder,
                      const std::vector<std::size_t>& variants, const SheetChoice& choice) {
    text::Fonts fonts;
    fonts.use(project.fonts, folder);
    text::ParagraphStore store(fonts);
    FileContent out;
    out.text = stylesheetOf(project, variants, choice, store, out.problems, &out.notes);
    if (!out.text) return out;
    SheetChoice smallest = choice;
    smallest.form.minified = true;
    project::Problems known;
    const auto minified =
        choice.form.minified ? out.text : stylesheetOf(project, variants, smallest, store, known, nullptr);
    out.about = aboutSheet(*out.text, minified ? minified->size() : out.text->size());
    return out;
}

}  // namespace

StylesheetDialog::StylesheetDialog(Session& session, QWidget* parent)
    : ExportDialog(
          session,
          {"stylesheet", QObject::tr("Export stylesheet"), QObject::tr("Write stylesheet"),
           QObject::tr(
               "Writes the CSS of the row to a file, or copies it to paste into a site. Every form lays out "
               "the same row."),
           QObject::tr("Content"), Destination::Kind::File, QObject::tr("CSS (*.css)")},
          parent),
      variant_(new VariantChoice(true, this)),
      copy_(new QPushButton(QObject::tr("&Copy stylesheet"), this)) {
    options()->addRow(QObject::tr("&Variant"), variant_);
    sheet_ = new SheetChoices(*options(), this);
    options()->addRow(QString(), copy_);
    copy_->setAutoDefault(false);
    connect(variant_, &QComboBox::activated, this, &StylesheetDialog::replan);
    connect(sheet_, &SheetChoices::changed, this, &StylesheetDialog::replan);
    connect(copy_, &QPushButton::clicked, this, &StylesheetDialog::copy);
}

QString StylesheetDialog::usualDestination() const {
    return projectFolder() + "/" + projectName() + ".css";
}

void StylesheetDialog::restore(const Choices& choices) {
    variant_->restore(choices, session());
    sheet_->restore(choices, session().document.project());
    copy_->setText(QObject::tr("&Copy stylesheet"));
}

void StylesheetDialog::remember(const Choices& choices) const {
    variant_->remember(choices);
    sheet_->remember(choices);
}

ContentMaker StylesheetDialog::content() const {
    return [project = session().document.project(), folder = session().document.folder(),
            variants = variant_->variants(),
            choice = sheet_->value()] { return contentOf(project, folder, variants, choice); };
}

Planner StylesheetDialog::planner() const {
    return filePlanner(destination().path(), content());
}

Writer StylesheetDialog::writer() const {
    return fileWriter(destination().path(), content());
}

void StylesheetDialog::copy() {
    const FileContent made = content()();
    if (!made.text) return;
    QGuiApplication::clipboard()->setText(QString::fromStdString(*made.text));
    remember(Choices(session().document.file(), "stylesheet"));
    copy_->setText(QObject::tr("Copied: %1").arg(bytesTitle(static_cast<qint64>(made.text->size()))));
}

}  // namespace tenter::desktop::exporting
