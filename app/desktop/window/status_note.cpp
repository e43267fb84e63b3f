#include "window/status_note.h"

#include <QAccessible>
#include <algorithm>

namespace tenter::desktop::window {

namespace {

constexpr int holdTime = 4000;   // ms
constexpr int readingTime = 60;  // ms for each character

}  // namespace

StatusNote::StatusNote(QWidget* parent) : QLabel(parent) {
    setAccessibleName(QObject::tr("Last message"));
    hold_.setSingleShot(true);
    connect(&hold_, &QTimer::timeout, this, [this] {
        clear();
        fit();
    });
}

// A message longer than the status bar makes it higher until it goes.
void StatusNote::fit() {
    const bool isLong = fontMetrics().horizontalAdvance(text()) > width();
    setWordWrap(isLong);
    setMinimumHeight(isLong ? heightForWidth(width()) : 0);
}

void StatusNote::showMessage(const QString& text) {
    setText(text);
    fit();
    hold_.start(std::max(holdTime, readingTime * static_cast<int>(text.size())));
    QAccessibleEvent event(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&event);
}

}  // namespace tenter::desktop::window
