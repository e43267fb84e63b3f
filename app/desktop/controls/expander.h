// Marks buttons that open and close what is below them.
#pragma once

#include <QAbstractButton>

#include "controls/glyphs.h"

namespace tenter::desktop::controls {

/// Makes screen readers read `button` as one that is expanded while it is checked, and collapsed otherwise.
/// Call it before the button has a text: with the text, a screen reader that runs asks what the button is.
inline void markAsExpander(QAbstractButton& button) {
    button.setProperty("tenterExpander", true);
    button.setCheckable(true);
}

/// True for a button that was marked.
[[nodiscard]] inline bool isExpander(const QWidget& widget) {
    return widget.property("tenterExpander").toBool();
}

/// The sign of a button of `widget` that is marked: down if it is open, otherwise in the direction of
/// reading.
[[nodiscard]] inline QIcon expanderIcon(const QWidget& widget, bool open) {
    const bool mirrored = widget.layoutDirection() == Qt::RightToLeft;
    return glyph(open ? Glyph::Down : mirrored ? Glyph::Left : Glyph::Right);
}

}  // namespace tenter::desktop::controls
