// Colours that a palette has no role for.
#pragma once

#include <QColor>
#include <QPalette>

namespace tenter::desktop::controls {

/// True for light text on dark.
inline bool isDark(const QPalette& palette) {
    return palette.color(QPalette::Window).lightness() < palette.color(QPalette::WindowText).lightness();
}

/// True for a palette of high contrast, whose secondary text is not lighter than its text.
inline bool isBlackAndWhite(const QPalette& palette) {
    return palette.color(QPalette::PlaceholderText) == palette.color(QPalette::WindowText);
}

/// What needs attention: at least 4.5 : 1 on window and base.
inline QColor caution(const QPalette& palette) {
    // Then the sentence alone says that attention is needed.
    if (isBlackAndWhite(palette)) return palette.color(QPalette::WindowText);
    return isDark(palette) ? QColor(0xf2, 0x9a, 0x6b) : QColor(0xa3, 0x3d, 0x0c);
}

/// Secondary text: at least 4.5 : 1 on window and base.
inline QColor quiet(const QPalette& palette) {
    return palette.color(QPalette::PlaceholderText);
}

/// Hairlines between areas.
inline QColor hairline(const QPalette& palette) {
    return palette.color(QPalette::Midlight);
}

}  // namespace tenter::desktop::controls
