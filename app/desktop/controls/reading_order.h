// Tab order as people read: line after line, along each line from its start.
#pragma once

#include <QWidget>

namespace tenter::desktop::controls {

/// Moves the focus to the widget in `root` that is read after the one that has it, or before it; from the
/// last or first, to the next widget outside `root`. Call it from `focusNextPrevChild`. Unlike the order of
/// `QWidget::setTabOrder`, it follows whatever is shown, added or moved. Returns false if no widget can take
/// the focus.
bool moveFocusAsRead(QWidget& root, bool next);

/// Within `widget`, the focus follows `QWidget::setTabOrder`, as for fields around a drawing.
void keepOwnOrder(QWidget& widget);

}  // namespace tenter::desktop::controls
