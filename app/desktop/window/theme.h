// Light and dark: palettes of the program's own on a style of its own.
#pragma once

#include <QPalette>
#include <QString>

namespace tenter::desktop::window {

/// Sets style and palette of the application: `light`, `dark`, or empty for what the system shows.
void useTheme(const QString& wanted);

/// Text reaches 4.5 : 1 on window and base, secondary text too; lines of controls reach 3 : 1. WCAG 2.2
/// SC 1.4.3, 1.4.11.
QPalette lightPalette();
QPalette darkPalette();

}  // namespace tenter::desktop::window
