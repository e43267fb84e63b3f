#include "panels/pictures_panel.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QRegularExpression>
#include <algorithm>
#include <variant>

#include "controls/glossary.h"
#include "controls/number_editors.h"
#include "document/place_picture.h"
#include "document/wording.h"
#include "language/language.h"
#include "row/lookup.h"

namespace tenter::desktop::panels {

using controls::TextEditor;
using project::Json;

namespace {

/// The aspect ratio of all slots as text: `3/2`, or `own` for the ratio of each picture.
class RatioEditor : public TextEditor {
public:
    RatioEditor() : TextEditor(wrong) {
        setPlaceholder(QObject::tr("3/2 or own"));
        setToolTip(
            QObject::tr("Width/height of every slot, such as 3/2; own: each picture keeps its own ratio"));
    }
    [[nodiscard]] Json value() const override { return readRatio(text()); }
    void setValue(const Json& value) override {
        if (!value.is_string()) return TextEditor::setValue(value);
        const QString shown = QString::fromStdString(value.get<std::string>());
        TextEditor::setValue(QString(shown).replace('.', language::decimalPoint()).toStdString());
    }

private:
    static QString wrong(const QString& text) {
        return readRatio(text).is_null() ? QObject::tr("enter width/height, such as 3/2, or own") : QString();
    }
    [[nodiscard]] QString text() const {
        return QString::fromStdString(TextEditor::value().get<std::string>());
    }
};

}  // namespace

Json readRatio(const QString& typed) {
    const QString text = typed.trimmed().toLower().replace(',', '.');
    if (text == "own") return "own";
    static const QRegularExpression shape("^(\\d+(?:\\.\\d+)?)\\s*(?:[/:]\\s*(\\d+(?:\\.\\d+)?))?$");
    const auto match = shape.match(text);
    if (!match.hasMatch()) return {};
    const double width = match.captured(1).toDouble();
    const double height = match.captured(2).isEmpty() ? 1 : match.captured(2).toDouble();
    if (width <= 0 || height <= 0 || width > 100000 || height > 100000) return {};
    return (match.captured(1) + '/' + (match.captured(2).isEmpty() ? "1" : match.captured(2))).toStdString();
}

PicturesPanel::PicturesPanel(Context& context, QWidget* parent)
    : Panel(context, parent),
      bar_(new CardBar(context, false)),
      focus_(new FocusPicker),
      file_(new QLabel),
      slot_(new QLabel),
      choose_(new QPushButton(QObject::tr("Choose picture…"))),
      alt_(new TextEditor),
      ratio_(nullptr),
      own_(nullptr),
      upload_(new UploadLine),
      summary_(new QLabel),
      uploads_(new UploadTable),
      job_(new UploadJob(context.session, this)) {
    section({});
    auto* holder = own_ = new QWidget;
    auto* box = new QVBoxLayout(holder);
    box->setContentsMargins(12, 0, 24, 0);
    box->setSpacing(8);
    box->addWidget(upload_);
    box->addWidget(focus_);
    for (QLabel* label : {file_, slot_}) {
        label->setWordWrap(true);
        label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    }
    file_->setAccessibleName(QObject::tr("File"));
    slot_->setAccessibleName(QObject::tr("Slot"));
    slot_->setForegroundRole(QPalette::PlaceholderText);
    slot_->setToolTip(QObject::tr(glossary::slot));
    box->addWidget(file_);
    box->addWidget(slot_);
    box->addWidget(choose_, 0, Qt::AlignLeft);
    auto* altLabel = new QLabel(QObject::tr("Alternative text"));
    altLabel->setBuddy(alt_);
    altLabel->setForegroundRole(QPalette::PlaceholderText);
    alt_->setName(QObject::tr("Alternative text"));
    alt_->setPlaceholder(QObject::tr("empty for a decorative picture"));
    box->addWidget(altLabel);
    box->addWidget(alt_);
    addWidget(holder);
    addFindable(QObject::tr("Picture file"), choose_);
    addFindable(QObject::tr("Alternative text"), alt_);
    addFindable(QObject::tr("Focal point"), focus_);

    section(QObject::tr("Files to upload"));
    explain(QObject::tr(
        "For every picture the file that fills its slot at all viewport widths, in all variants, on screens "
        "with 2 device pixels per CSS px."));
    auto* table = new QWidget;
    auto* tableBox = new QVBoxLayout(table);
    tableBox->setContentsMargins(12, 0, 24, 0);
    summary_->setWordWrap(true);
    tableBox->addWidget(summary_);
    tableBox->addWidget(uploads_);
    addWidget(table);
    addFindable(QObject::tr("Files to upload"), uploads_, {},
                QObject::tr("size of pictures, pixels, resolution, too small"));

    section(QObject::tr("All pictures"));
    ratio_ = new RatioEditor;
    setting(QObject::tr("Aspect ratio"), ratio_, "picture", "ratio");
    setting(QObject::tr("Corner radius"),
            new controls::NumberEditor(controls::lengthKind({"px", "rem", "em"})), "picture", "radius");
    close();

    connect(choose_, &QPushButton::clicked, this, &PicturesPanel::chooseFile);
    const auto putAlt = [this] {
        editPicture(
            QObject::tr("Change alternative text"),
            [this](project::PicturePart& p) { p.alt = alt_->value().get<std::string>(); }, "alt");
    };
    connect(alt_, &controls::Editor::edited, this, putAlt);
    connect(alt_, &controls::Editor::reverted, this, putAlt);
    connect(alt_, &controls::Editor::finished, this, [this] { document().endGesture(); });
    connect(focus_, &FocusPicker::moved, this, [this] {
        editPicture(
            QObject::tr("Move focal point"),
            [this](project::PicturePart& p) {
                p.focusX = focus_->focusX();
                p.focusY = focus_->focusY();
            },
            "focus");
    });
    connect(uploads_, &UploadTable::placeChosen, this,
            [this](const project::PartRef& part) { session().selection.select(Place::of(part), true); });
    connect(job_, &UploadJob::finished, this, &PicturesPanel::showUploads);
    connect(focus_, &FocusPicker::released, this, [this] { document().endGesture(); });
}

std::optional<project::PartRef> PicturesPanel::place() const {
    const auto card = CardBar::cardOf(session());
    if (!card) return std::nullopt;
    const auto& parts = session().shown.untried().row().cards[*card].parts;
    const auto isPicture = [](const project::Part& part) {
        return std::holds_alternative<project::PicturePart>(part);
    };
    const auto selected = session().selection.part();
    if (selected && selected->part < parts.size() && isPicture(parts[selected->part]))
        return project::PartRef{*card, selected->part};
    const auto first = std::ranges::find_if(parts, isPicture);
    if (first == parts.end()) return std::nullopt;
    return project::PartRef{*card, static_cast<std::size_t>(first - parts.begin())};
}

const project::PicturePart* PicturesPanel::picture() const {
    const auto at = place();
    return at ? std::get_if<project::PicturePart>(&session().shown.untried().part(*at)) : nullptr;
}

std::optional<layout::Box> PicturesPanel::slot() const {
    const layout::Layout& layout = session().layouts.layout();
    const auto part = row::indexOf(layout, place());
    return part ? std::optional(layout.parts[*part].box) : std::nullopt;
}

void PicturesPanel::editPicture(const QString& name, const std::function<void(project::PicturePart&)>& change,
                                const QString& gesture) {
    const auto at = place();
    if (!at) return;
    context().edit(
        name, [&](project::Project& project) { change(std::get<project::PicturePart>(project.part(*at))); },
        gesture.isEmpty() ? gesture : QString("picture/%1/%2/%3").arg(gesture).arg(at->card).arg(at->part));
}

void PicturesPanel::chooseFile() {
    const auto card = CardBar::cardOf(session());
    if (!card) return;
    const QString file = QFileDialog::getOpenFileName(
        this, QObject::tr("Choose picture"), QString::fromStdString(document().folder().string()),
        QObject::tr("Pictures (*.png *.jpg *.jpeg *.webp *.avif)"));
    if (file.isEmpty()) return;
    if (const auto done = placePictures(document(), *card, {file}); !done.problem.isEmpty())
        context().showMessage(done.problem);
}

void PicturesPanel::refresh() {
    Panel::refresh();
    bar_->refresh();
    const project::PicturePart* shown = picture();
    choose_->setEnabled(CardBar::cardOf(session()).has_value());
    alt_->setEnabled(shown);
    focus_->setEnabled(shown);
    alt_->setValue(shown ? Json(shown->alt) : Json());
    showSlot();
    job_->refresh();
    showUploads();
}

void PicturesPanel::showUploads() {
    upload_->showUpload(job_->project(), job_->find(place()));
    uploads_->showUploads(job_->project(), job_->uploads(), place());
    const auto small = std::ranges::count_if(job_->uploads(), &pictures::PictureUpload::isTooSmall);
    const auto all = job_->uploads().size();
    const auto unknown = std::ranges::count_if(
        job_->uploads(), [](const pictures::PictureUpload& one) { return one.file.width <= 0; });
    summary_->setVisible(all > 0);
    QString text = small == 0 ? QObject::tr("No picture is too small.")
                              : QObject::tr("%1 of %2 pictures are too small.").arg(small).arg(all);
    if (unknown > 0)
        text =
            QObject::tr("The sizes of %1 of %2 pictures are not known.").arg(unknown).arg(all) + ' ' + text;
    summary_->setText(text);
}

void PicturesPanel::refreshPixels() {
    Panel::refreshPixels();
    showSlot();
}

void PicturesPanel::showSlot() {
    const project::PicturePart* shown = picture();
    if (!shown) {
        focus_->preview({}, 0.5, 0.5, 1);
        file_->setText(CardBar::cardOf(session()) ? QObject::tr("This card has no picture.")
                                                  : QObject::tr("The row has no cards."));
        slot_->clear();
        return;
    }
    const auto path = document().folder() / shown->file;
    const std::optional<layout::Box> slot = this->slot();
    const double ratio = slot && slot->height > 0 ? slot->width / slot->height : 1;
    focus_->preview(QString::fromStdString(path.string()), shown->focusX, shown->focusY, ratio);
    file_->setText(QString::fromStdString(shown->file) + "\n" +
                   QObject::tr("%1 × %2 image pixels").arg(figure(shown->width), figure(shown->height)));
    slot_->clear();
    if (!slot) return;
    // With object-fit cover, the height of the slot may need more pixels than its width does.
    const double needed = std::max(slot->width, slot->height * shown->width / std::max(1.0, shown->height));
    QString text =
        QObject::tr("Slot at this width: %1 × %2").arg(figure(slot->width, 1), pixels(slot->height, 1));
    if (needed > 0)
        text += '\n' + QObject::tr("Image pixels per CSS px: %1").arg(figure(shown->width / needed, 2));
    slot_->setText(text);
}

}  // namespace tenter::desktop::panels
