#include "export/sheet_choices.h"

#include <QGridLayout>

#include "document/wording.h"

namespace tenter::desktop::exporting {

SheetChoices::SheetChoices(QFormLayout& form, QWidget* parent)
    : QObject(parent),
      unit_(new controls::Segments(parent)),
      follow_(new controls::Segments(parent)),
      boxes_(new QWidget(parent)) {
    unit_->setTexts({"rem", "px"}, {QObject::tr("Font sizes in rem"), QObject::tr("Font sizes in px")});
    follow_->setTexts({QObject::tr("As set"), QObject::tr("Viewport width"), QObject::tr("Card width")},
                      {QObject::tr("Font sizes follow the width that the project sets"),
                       QObject::tr("Font sizes follow the viewport width, in vw"),
                       QObject::tr("Font sizes follow the card width, in cqi")});
    // Two to a line, because the list of files needs the room below. The form must not squeeze them, which a
    // dialog with wrapped texts does without the constraint.
    auto* grid = new QGridLayout(boxes_);
    grid->setSizeConstraint(QLayout::SetMinimumSize);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(16);
    grid->setVerticalSpacing(4);
    boxes_->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    properties_ = box(QObject::tr("Custom &properties on the row"),
                      QObject::tr("Values are custom properties on the row; media queries set only these."));
    layer_ =
        box(QObject::tr("Cascade &layer"),
            QObject::tr(
                "All rules are in a layer with the name of the row. Rules of a theme that are in no layer "
                "override them."));
    comments_ =
        box(QObject::tr("Co&mments"), QObject::tr("Comments say what each band and each font size is for."));
    minified_ =
        box(QObject::tr("Mi&nified"), QObject::tr("No comments, line breaks or spaces that change nothing."));
    late_ =
        box(QObject::tr("Fallback fonts for &late web fonts"),
            QObject::tr(
                "Installed fonts with the widths and heights of the web fonts, for the time until these have "
                "loaded."));
    form.addRow(QObject::tr("Size unit"), unit_);
    form.addRow(QObject::tr("Sizes grow with"), follow_);
    form.addRow(QObject::tr("Form"), boxes_);
    for (controls::Segments* segments : {unit_, follow_})
        connect(segments, &controls::Segments::chosen, this, [this] { Q_EMIT changed(); });
}

QCheckBox* SheetChoices::box(const QString& text, const QString& explanation) {
    auto* made = new QCheckBox(text, boxes_);
    made->setToolTip(toolTipText(explanation));
    auto* grid = static_cast<QGridLayout*>(boxes_->layout());
    const int count = grid->count();
    grid->addWidget(made, count / 2, count % 2);
    connect(made, &QCheckBox::clicked, this, [this] {
        comments_->setEnabled(!minified_->isChecked());
        Q_EMIT changed();
    });
    return made;
}

void SheetChoices::restore(const Choices& choices, const project::Project& project) {
    const bool px = project.unit == units::Unit::Px;
    unit_->setCurrent(choices.value("unit", px ? "px" : "rem").toString() == "px" ? 1 : 0);
    follow_->setCurrent(choices.value("follow", 0).toInt());
    properties_->setChecked(choices.value("properties", false).toBool());
    layer_->setChecked(choices.value("layer", false).toBool() && !project.row().given);
    layer_->setEnabled(!project.row().given);
    comments_->setChecked(choices.value("comments", true).toBool());
    minified_->setChecked(choices.value("minified", false).toBool());
    late_->setChecked(choices.value("lateFonts", false).toBool());
    comments_->setEnabled(!minified_->isChecked());
}

void SheetChoices::remember(const Choices& choices) const {
    choices.set("unit", unit_->current() == 1 ? "px" : "rem");
    choices.set("follow", follow_->current());
    choices.set("properties", properties_->isChecked());
    if (layer_->isEnabled()) choices.set("layer", layer_->isChecked());
    choices.set("comments", comments_->isChecked());
    choices.set("minified", minified_->isChecked());
    choices.set("lateFonts", late_->isChecked());
}

SheetChoice SheetChoices::value() const {
    SheetChoice choice;
    choice.unit = unit_->current() == 1 ? units::Unit::Px : units::Unit::Rem;
    if (follow_->current() == 1) choice.follow = project::Follow::Viewport;
    if (follow_->current() == 2) choice.follow = project::Follow::Card;
    choice.form.properties = properties_->isChecked();
    choice.form.layer = layer_->isChecked();
    choice.form.comments = comments_->isChecked();
    choice.form.minified = minified_->isChecked();
    choice.lateFonts = late_->isChecked();
    return choice;
}

}  // namespace tenter::desktop::exporting
