#include "panels/setting_row.h"

#include <QGridLayout>

#include "controls/choice_editors.h"
#include "controls/glyphs.h"
#include "controls/number_editors.h"
#include "controls/scrub.h"
#include "document/wording.h"
#include "panels/row_parts.h"

namespace tenter::desktop::panels {

namespace {

constexpr int pixelsWidth = 54;

}  // namespace

SettingRow::SettingRow(Context& context, const QString& title, controls::Editor* editor,
                       const std::string& subject, const std::string& setting, QWidget* parent,
                       const QString& name)
    : QWidget(parent),
      context_(context),
      editor_(editor),
      binding_(new Binding(context, *editor, subject, setting, name.isEmpty() ? title : name)),
      title_(new QLabel(title, this)),
      pixels_(new QLabel(this)),
      reset_(resetButton(this)),
      overridden_(new QToolButton(this)) {
    title_->setBuddy(editor);
    if (auto* number = qobject_cast<controls::NumberEditor*>(editor))
        new controls::Scrub(title_, &number->field());
    title_->setFixedWidth(titleWidth);
    pixels_->setFixedWidth(pixelsWidth);
    pixels_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    pixels_->setForegroundRole(QPalette::PlaceholderText);
    overridden_->setAutoRaise(true);
    overridden_->setIcon(controls::glyph(controls::Glyph::Reach));
    overridden_->setIconSize({12, 12});
    overridden_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    overridden_->setForegroundRole(QPalette::PlaceholderText);
    overridden_->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
    overridden_->hide();
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(markRoom, 0, 0, 0);
    grid->setHorizontalSpacing(4);
    grid->setVerticalSpacing(4);
    grid->setColumnStretch(1, 1);
    const bool isCheck = qobject_cast<controls::CheckEditor*>(editor_) != nullptr;
    title_->setVisible(!isCheck);
    if (!isCheck) grid->addWidget(title_, 0, 0);
    const auto* number = qobject_cast<controls::NumberEditor*>(editor_);
    const bool isLength = number && !number->field().kind().units.isEmpty();
    pixels_->setVisible(isLength);
    if (isCheck)
        grid->addWidget(editor_, 0, 0, 1, 3);
    else
        grid->addWidget(editor_, 0, 1, 1, isLength ? 1 : 2);
    if (isLength) grid->addWidget(pixels_, 0, 2);
    grid->addWidget(reset_, 0, 3);
    grid->addWidget(overridden_, 2, 0, 1, 4, Qt::AlignLeft);
    connect(binding_, &Binding::refreshed, this, &SettingRow::showOrigin);
    connect(reset_, &QToolButton::clicked, binding_, &Binding::reset);
    connect(overridden_, &QToolButton::clicked, binding_, &Binding::editOverridingLayer);
}

void SettingRow::setTall() {
    auto* grid = static_cast<QGridLayout*>(layout());
    grid->removeWidget(editor_);
    grid->addWidget(editor_, 1, 0, 1, 4);
    title_->setMinimumHeight(buttonSide);
}

void SettingRow::refreshPixels() {
    const auto px = binding_->pixels();
    pixels_->setText(px ? pixels(*px, 1) : QString());
}

void SettingRow::showOrigin() {
    const SettingValue& held = binding_->held();
    reset_->setVisible(held.setHere);
    editor_->setResettable(held.setHere);
    reset_->setAccessibleName("Reset " + binding_->name());
    overridden_->setVisible(held.overriddenBy.has_value());
    if (held.overriddenBy) {
        overridden_->setText(*held.overriddenBy == project::CascadeLayer::Band
                                 ? "Overridden in this band"
                                 : "Overridden in this variant");
        overridden_->setToolTip(binding_->description() + " Click to edit that value.");
        overridden_->setAccessibleDescription(binding_->description());
    }
    QString tip = binding_->description();
    if (!explanation_.isEmpty()) tip.prepend(explanation_ + '\n');
    (title_->isHidden() ? static_cast<QWidget*>(editor_) : title_)->setToolTip(tip);
    title_->setForegroundRole(held.setHere ? QPalette::WindowText : QPalette::PlaceholderText);
    refreshPixels();
    update();
}

void SettingRow::paintEvent(QPaintEvent*) {
    if (!binding_->held().setHere) return;
    const QWidget* first = title_->isHidden() ? static_cast<const QWidget*>(editor_) : title_;
    paintSetHere(this, first->geometry().center().y());
}

}  // namespace tenter::desktop::panels
