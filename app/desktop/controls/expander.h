// Marks buttons that open and close what is below them.
#pragma once

#include <QAbstractButton>

namespace tenter::desktop::controls {

/// Makes screen readers read `button` as one that is expanded while it is checked, and collapsed otherwise.
inline void markAsExpander(QAbstractButton& button) {
    button.setCheckable(true);
    button.setProperty("tenterExpander", true);
}

/// True for a button that was marked.
[[nodiscard]] inline bool isExpander(const QWidget& widget) {
    return widget.property("tenterExpander").toBool();
}

}  // namespace tenter::desktop::controls
