// The light and the dark palette.
#pragma once

#include <QPalette>
#include <QString>

namespace tenter::desktop::window {

/// Sets the style and the palette of the application. `wanted`: `light`, `dark`, or empty for the scheme of
/// the system.
void useTheme(const QString& wanted);

/// The palettes. Contrast on window and base: text and secondary text at least 4.5 : 1, lines of controls at
/// least 3 : 1. WCAG 2.2 SC 1.4.3, 1.4.11.
QPalette lightPalette();
QPalette darkPalette();

}  // namespace tenter::desktop::window
