// Lengths and fonts that grow with the text size of the person's system.
#pragma once

#include <QApplication>
#include <QFont>
#include <QFontInfo>
#include <algorithm>
#include <cmath>

namespace tenter::desktop::controls {

/// A length that is `px` where the system's text size is the usual one, 12 px, and more where it is larger.
inline int scaled(int px) {
    constexpr double usual = 12;
    return static_cast<int>(
        std::lround(px * std::max(1.0, QFontInfo(QApplication::font()).pixelSize() / usual)));
}

/// `font` for secondary text: 11 px where `font` has 12 px.
inline QFont smallFont(QFont font) {
    constexpr double share = 11.0 / 12;
    if (font.pointSizeF() > 0)
        font.setPointSizeF(font.pointSizeF() * share);
    else
        font.setPixelSize(static_cast<int>(std::lround(font.pixelSize() * share)));
    return font;
}

}  // namespace tenter::desktop::controls
