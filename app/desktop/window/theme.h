// The light and the dark palette.
#pragma once

#include <QPalette>
#include <QString>

#include "window/system_colours.h"

namespace tenter::desktop::window {

/// Sets the style and the palette of the application. `wanted`: `light`, `dark`, `contrast-light`,
/// `contrast-dark`, or empty for what the system has, also when it changes.
void useTheme(const QString& wanted);

/// The palette of Tenter for what the desktop says; where it does not, for its palette, `system`.
QPalette paletteFor(const SystemColours& colours, const QPalette& system);

/// The palettes. Contrast on window and base: text and secondary text at least 4.5 : 1, lines of controls at
/// least 3 : 1. WCAG 2.2 SC 1.4.3, 1.4.11.
QPalette lightPalette();
QPalette darkPalette();
/// Black and white only, for people who have chosen high contrast in their system. Text, secondary text and
/// lines of controls: 21 : 1.
QPalette contrastLightPalette();
QPalette contrastDarkPalette();

}  // namespace tenter::desktop::window
