#include "panels/setting_row.h"

#include <QGridLayout>

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
                       const std::string& subject, const std::string& setting, QWidget* parent)
    : QWidget(parent),
      context_(context),
      editor_(editor),
      binding_(new Binding(context, *editor, subject, setting, title)),
      title_(new QLabel(title, this)),
      pixels_(new QLabel(this)),
      reset_(resetButton(this)),
      nearer_(new QToolButton(this)) {
    title_->setBuddy(editor);
    if (auto* number = qobject_cast<controls::NumberEditor*>(editor))
        new controls::Scrub(title_, &number->field());
    title_->setFixedWidth(titleWidth);
    pixels_->setFixedWidth(pixelsWidth);
    pixels_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    pixels_->setForegroundRole(QPalette::PlaceholderText);
    nearer_->setAutoRaise(true);
    nearer_->setIcon(controls::glyph(controls::Glyph::Reach));
    nearer_->setIconSize({12, 12});
    nearer_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    nearer_->setForegroundRole(QPalette::PlaceholderText);
    nearer_->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
    nearer_->hide();
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(markRoom, 0, 0, 0);
    grid->setHorizontalSpacing(4);
    grid->setVerticalSpacing(4);
    grid->setColumnStretch(1, 1);
    grid->addWidget(title_, 0, 0);
    const auto* number = qobject_cast<controls::NumberEditor*>(editor_);
    const bool isLength = number && !number->field().kind().units.isEmpty();
    pixels_->setVisible(isLength);
    grid->addWidget(editor_, 0, 1, 1, isLength ? 1 : 2);
    if (isLength) grid->addWidget(pixels_, 0, 2);
    grid->addWidget(reset_, 0, 3);
    grid->addWidget(nearer_, 2, 0, 1, 4, Qt::AlignLeft);
    connect(binding_, &Binding::refreshed, this, &SettingRow::showOrigin);
    connect(reset_, &QToolButton::clicked, binding_, &Binding::reset);
    connect(nearer_, &QToolButton::clicked, binding_, &Binding::reachHiding);
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
    const Held& held = binding_->held();
    reset_->setVisible(held.setHere);
    editor_->setResettable(held.setHere);
    reset_->setAccessibleName("Reset " + binding_->name());
    nearer_->setVisible(held.hiddenBy.has_value());
    if (held.hiddenBy) {
        nearer_->setText("Set nearer: " + scopeTitle(context_.viewing, *held.hiddenBy));
        nearer_->setToolTip(binding_->story());
        nearer_->setAccessibleDescription(binding_->story());
    }
    title_->setToolTip(binding_->story());
    title_->setForegroundRole(held.setHere ? QPalette::WindowText : QPalette::PlaceholderText);
    refreshPixels();
    update();
}

void SettingRow::paintEvent(QPaintEvent*) {
    if (!binding_->held().setHere) return;
    paintSetHere(this, title_->geometry().center().y());
}

}  // namespace tenter::desktop::panels
