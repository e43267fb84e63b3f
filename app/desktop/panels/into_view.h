// Scrolling to what has just appeared in a panel.
#pragma once

#include <QWidget>

namespace tenter::desktop::panels {

/// Scrolls the areas around `box` so that it is visible, once it has its new height. If it is too high, its
/// widget `head` is visible.
void bringIntoView(QWidget* box, QWidget* head);

}  // namespace tenter::desktop::panels
