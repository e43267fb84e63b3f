// Bringing what has just come up in a panel into sight.
#pragma once

#include <QWidget>

namespace tenter::desktop::panels {

/// Scrolls what `box` stands in so that it can be seen, once it has its new height; rather its head, `head`,
/// than its foot.
void bringIntoView(QWidget* box, QWidget* head);

}  // namespace tenter::desktop::panels
