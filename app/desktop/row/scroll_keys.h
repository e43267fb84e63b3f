// Scrolling by keys.
#pragma once

#include <QAbstractScrollArea>

namespace tenter::desktop::row {

/// Page Up and Page Down scroll by a page, Home and End to the top and the bottom. False for any other key.
bool scrollByKey(QAbstractScrollArea& area, int key);

}  // namespace tenter::desktop::row
