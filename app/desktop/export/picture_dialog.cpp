#include "export/picture_dialog.h"

#include <QFileInfo>
#include <QRegularExpression>
#include <memory>

#include "draw/row_picture.h"
#include "text/paragraph_store.h"

namespace tenter::desktop::exporting {

namespace {

/// The forms in the order of the segments: the pixel ratio of PNG, or 0 for SVG.
constexpr double ratios[] = {1, 2, 0};

/// What a picture is made of, for another thread.
struct View {
    project::Project project;
    std::filesystem::path folder;
    std::size_t variant = 0;
    double width = 0;
    const text::BreakProfile* profile = nullptr;
    double ratio = 1;
};

FileContent pictureOf(const View& view) {
    text::Fonts fonts;
    fonts.use(view.project.fonts, view.folder);
    text::ParagraphStore store(fonts);
    const double ratio = view.ratio > 0 ? view.ratio : 1;
    const layout::PreparedRow prepared(view.project, view.variant, store,
                                       text::atRatio(*view.profile, ratio));
    const layout::Layout layout = layout::layOutDrawn(prepared, view.width);
    const draw::LaidOutRow row{view.project, prepared, layout};
    draw::PictureSource pictures(view.folder);
    FileContent out;
    std::string bytes = view.ratio > 0 ? draw::pngPicture(row, ratio, pictures, store, out.problems)
                                       : draw::svgPicture(row, pictures, store);
    for (const std::string& file : pictures.missing())
        out.notes << QObject::tr(
                         "The picture file “%1” cannot be read; an empty place with its name is shown "
                         "instead.")
                         .arg(QString::fromStdString(file));
    if (bytes.empty()) return out;
    out.text = std::move(bytes);
    out.about = QObject::tr("%1 × %2 px")
                    .arg(std::lround(layout.width * ratio))
                    .arg(std::lround(layout.pageHeight * ratio));
    return out;
}

}  // namespace

PictureDialog::PictureDialog(Session& session, QWidget* parent)
    : ExportDialog(
          session,
          {"picture", QObject::tr("Export picture of this view"), QObject::tr("Write picture"),
           QObject::tr(
               "Writes the row at the current viewport width as a picture, as a browser would draw it."),
           QObject::tr("Pixels"), Destination::Kind::File, QObject::tr("Pictures (*.png *.svg)")},
          parent),
      form_(new controls::Segments(this)) {
    form_->setTexts({QObject::tr("PNG, 1×"), QObject::tr("PNG, 2×"), QObject::tr("SVG")},
                    {QObject::tr("One pixel per CSS px"),
                     QObject::tr("Two pixels per CSS px, for sharp screens and print"),
                     QObject::tr("Vector, with text as outlines")});
    options()->addRow(QObject::tr("Form"), form_);
    connect(form_, &controls::Segments::chosen, this, [this] {
        setEnding();
        replan();
    });
}

bool PictureDialog::isSvg() const {
    return ratios[std::max(0, form_->current())] == 0;
}

void PictureDialog::setEnding() {
    const QFileInfo file(destination().path());
    const QString ending = isSvg() ? "svg" : "png";
    if (file.suffix().toLower() != ending && !file.fileName().isEmpty())
        destination().setPath(file.path() + "/" + file.completeBaseName() + "." + ending);
}

QString PictureDialog::usualDestination() const {
    const QString width = QString::number(session().layouts.width(), 'g', 8);
    return projectFolder() + "/" + projectName() + "-" + width + "px" + (isSvg() ? ".svg" : ".png");
}

// A name that was proposed for another width gives way to one for this width, in the same folder.
QString PictureDialog::destinationAfter(const QString& last) const {
    static const QRegularExpression end("-[0-9.]+px\\.(png|svg)$");
    const QFileInfo file(last);
    const bool isProposed = file.fileName().remove(end) == projectName() && file.fileName().contains(end);
    return isProposed ? file.path() + "/" + QFileInfo(usualDestination()).fileName() : last;
}

void PictureDialog::restore(const Choices& choices) {
    form_->setCurrent(std::clamp(choices.value("form", 0).toInt(), 0, 2));
    setEnding();
}

void PictureDialog::remember(const Choices& choices) const {
    choices.set("form", form_->current());
}

ContentMaker PictureDialog::content() const {
    const LayoutCache& layouts = session().layouts;
    auto view = std::make_shared<const View>(View{layouts.project(), session().document.folder(),
                                                  layouts.variant(), layouts.width(), &layouts.profile(),
                                                  ratios[std::max(0, form_->current())]});
    return [view] { return pictureOf(*view); };
}

Planner PictureDialog::planner() const {
    return filePlanner(destination().path(), content());
}

Writer PictureDialog::writer() const {
    return fileWriter(destination().path(), content());
}

}  // namespace tenter::desktop::exporting
