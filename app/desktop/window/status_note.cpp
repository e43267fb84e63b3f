#include "window/status_note.h"

#include <QAccessible>
#include <algorithm>

namespace tenter::desktop::window {

namespace {

constexpr int holdTime = 4000;   // ms
constexpr int readingTime = 60;  // ms for each character
constexpr int fadeTime = 400;    // ms

}  // namespace

StatusNote::StatusNote(QWidget* parent)
    : QLabel(parent), effect_(new QGraphicsOpacityEffect(this)), fade_(effect_, "opacity") {
    setGraphicsEffect(effect_);
    setAccessibleName("Last message");
    fade_.setDuration(fadeTime);
    fade_.setStartValue(1.0);
    fade_.setEndValue(0.0);
    hold_.setSingleShot(true);
    connect(&hold_, &QTimer::timeout, &fade_, [this] { fade_.start(); });
    connect(&fade_, &QPropertyAnimation::finished, this, [this] {
        clear();
        fit();
    });
}

// A message longer than the status bar makes it higher until it fades.
void StatusNote::fit() {
    const bool isLong = fontMetrics().horizontalAdvance(text()) > width();
    setWordWrap(isLong);
    setMinimumHeight(isLong ? heightForWidth(width()) : 0);
}

void StatusNote::showMessage(const QString& text) {
    fade_.stop();
    effect_->setOpacity(1);
    setText(text);
    fit();
    hold_.start(std::max(holdTime, readingTime * static_cast<int>(text.size())));
    QAccessibleEvent event(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&event);
}

}  // namespace tenter::desktop::window
