#include "panels/setting_row.h"

#include <QGridLayout>
#include <QPainter>

#include "controls/glyphs.h"
#include "controls/inks.h"
#include "document/wording.h"

namespace tenter::desktop::panels {

namespace {

constexpr int titleWidth = 96;
constexpr int pixelsWidth = 54;
constexpr int buttonSide = 20;
constexpr int markRoom = 12;  // left of the title, for the dot that says "set here"

}  // namespace

SettingRow::SettingRow(Context& context, const QString& title, controls::Editor* editor, const std::string& subject,
                       const std::string& setting, QWidget* parent)
    : QWidget(parent),
      editor_(editor),
      binding_(new Binding(context, *editor, subject, setting, title)),
      title_(new QLabel(title, this)),
      pixels_(new QLabel(this)),
      origin_(new QToolButton(this)) {
    title_->setBuddy(editor);
    title_->setFixedWidth(titleWidth);
    pixels_->setFixedWidth(pixelsWidth);
    pixels_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    pixels_->setForegroundRole(QPalette::PlaceholderText);
    origin_->setFixedSize(buttonSide, buttonSide);
    origin_->setIconSize({14, 14});
    origin_->setAutoRaise(true);
    QSizePolicy keep = origin_->sizePolicy();
    keep.setRetainSizeWhenHidden(true);
    origin_->setSizePolicy(keep);
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(markRoom, 0, 0, 0);
    grid->setHorizontalSpacing(4);
    grid->setVerticalSpacing(4);
    grid->setColumnStretch(1, 1);
    grid->addWidget(title_, 0, 0);
    grid->addWidget(editor_, 0, 1);
    grid->addWidget(pixels_, 0, 2);
    grid->addWidget(origin_, 0, 3);
    connect(binding_, &Binding::refreshed, this, &SettingRow::showOrigin);
    connect(origin_, &QToolButton::clicked, this, [this] {
        if (binding_->held().setHere)
            binding_->reset();
        else
            binding_->reachHiding();
    });
}

void SettingRow::setTall() {
    auto* grid = static_cast<QGridLayout*>(layout());
    for (QWidget* widget : {static_cast<QWidget*>(editor_), static_cast<QWidget*>(pixels_)}) grid->removeWidget(widget);
    pixels_->hide();
    grid->addWidget(editor_, 1, 0, 1, 4);
    title_->setMinimumHeight(buttonSide);
}

void SettingRow::refreshPixels() {
    const auto px = binding_->pixels();
    pixels_->setText(px ? pixels(*px, 1) : QString());
}

void SettingRow::showOrigin() {
    const Held& held = binding_->held();
    origin_->setVisible(held.setHere || held.hiddenBy);
    if (held.setHere) {
        origin_->setIcon(controls::glyph(controls::Glyph::Reset));
        origin_->setToolTip("Reset to what it inherits");
        origin_->setAccessibleName("Reset " + binding_->name());
    } else if (held.hiddenBy) {
        origin_->setIcon(controls::glyph(controls::Glyph::Reach));
        origin_->setToolTip(binding_->story() + " Go there.");
        origin_->setAccessibleName("Go to where " + binding_->name() + " is set nearer");
    }
    title_->setToolTip(binding_->story());
    title_->setForegroundRole(held.setHere ? QPalette::WindowText : QPalette::PlaceholderText);
    refreshPixels();
    update();
}

void SettingRow::paintEvent(QPaintEvent*) {
    const Held& held = binding_->held();
    if (!held.setHere && !held.hiddenBy) return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QPointF centre(4, title_->geometry().center().y() + 0.5);
    if (held.setHere) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(palette().color(QPalette::Highlight));
        painter.drawEllipse(centre, 3, 3);
    } else {
        painter.setPen(QPen(controls::quiet(palette()), 1.2));
        painter.drawEllipse(centre, 2.6, 2.6);
    }
}

}  // namespace tenter::desktop::panels
