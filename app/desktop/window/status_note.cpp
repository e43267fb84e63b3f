#include "window/status_note.h"

#include <QAccessible>

namespace tenter::desktop::window {

namespace {

constexpr int holdTime = 4000;  // ms
constexpr int fadeTime = 400;   // ms

}  // namespace

StatusNote::StatusNote(QWidget* parent)
    : QLabel(parent), effect_(new QGraphicsOpacityEffect(this)), fade_(effect_, "opacity") {
    setGraphicsEffect(effect_);
    setAccessibleName("Last message");
    fade_.setDuration(fadeTime);
    fade_.setStartValue(1.0);
    fade_.setEndValue(0.0);
    hold_.setSingleShot(true);
    hold_.setInterval(holdTime);
    connect(&hold_, &QTimer::timeout, &fade_, [this] { fade_.start(); });
    connect(&fade_, &QPropertyAnimation::finished, this, &QLabel::clear);
}

void StatusNote::showMessage(const QString& text) {
    fade_.stop();
    effect_->setOpacity(1);
    setText(text);
    hold_.start();
    QAccessibleEvent event(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&event);
}

}  // namespace tenter::desktop::window
