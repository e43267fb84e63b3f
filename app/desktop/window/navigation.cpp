#include "window/navigation.h"

#include <cmath>

namespace tenter::desktop::window {

void Navigation::goToDifference(int direction) {
    if (!axis_.goToDifference(direction))
        note_.showMessage(direction > 0
                              ? QObject::tr("No Chromium/Firefox difference at a wider viewport")
                              : QObject::tr("No Chromium/Firefox difference at a narrower viewport"));
}

void Navigation::goToWrap(int direction) {
    const QString says = axis_.goToWrap(direction);
    note_.showMessage(!says.isEmpty() ? says
                      : direction > 0 ? QObject::tr("No wrap point at a wider viewport")
                                      : QObject::tr("No wrap point at a narrower viewport"));
}

void Navigation::goToFinding(int direction) {
    if (findings_.go(direction)) {
        // The next Tab goes to the remedies of the finding. The width keys work from the list, too.
        findings_.setFocus(Qt::ShortcutFocusReason);
        return;
    }
    if (checks_.findings().empty())
        note_.showMessage(QObject::tr("There are no findings"));
    else
        note_.showMessage(direction > 0 ? QObject::tr("This is the last finding")
                                        : QObject::tr("This is the first finding"));
}

void Navigation::stepWidth(double by) {
    // To whole widths, also from a width between them.
    const double width = view_.width();
    const double from = by > 0 ? std::floor(width) : std::ceil(width);
    view_.setWidth(from + by);
}

bool Navigation::handleWidthKey(const QKeyEvent& event) {
    const auto modifiers = event.modifiers() & ~Qt::KeypadModifier;
    const int direction = event.key() == Qt::Key_Right ? 1 : event.key() == Qt::Key_Left ? -1 : 0;
    if (direction == 0) return false;
    if (modifiers == Qt::NoModifier)
        stepWidth(direction);
    else if (modifiers == Qt::ShiftModifier)
        stepWidth(10 * direction);
    else if (modifiers == Qt::ControlModifier)
        axis_.goToBandEdge(direction);
    else
        return false;
    return true;
}

}  // namespace tenter::desktop::window
