#include "window/theme.h"

#include <QApplication>
#include <QGuiApplication>

#include "controls/inks.h"
#include "row/ink.h"
#include "window/style.h"
#include "window/system_colours.h"

namespace tenter::desktop::window {

namespace {

struct Colours {
    QRgb window, base, text, quiet, disabled, button, edge, hair, accent, onAccent, tip, tipText;
};

QPalette made(const Colours& c) {
    QPalette palette;
    const auto set = [&](QPalette::ColorRole role, QRgb colour) { palette.setColor(role, QColor(colour)); };
    set(QPalette::Window, c.window);
    set(QPalette::Base, c.base);
    set(QPalette::AlternateBase, c.window);
    set(QPalette::WindowText, c.text);
    set(QPalette::Text, c.text);
    set(QPalette::ButtonText, c.text);
    set(QPalette::BrightText, c.onAccent);
    set(QPalette::PlaceholderText, c.quiet);
    set(QPalette::Button, c.button);
    set(QPalette::Light, c.base);
    set(QPalette::Midlight, c.hair);
    set(QPalette::Mid, c.edge);
    set(QPalette::Dark, c.quiet);
    set(QPalette::Shadow, c.text);
    set(QPalette::Highlight, c.accent);
    set(QPalette::HighlightedText, c.onAccent);
    set(QPalette::Link, c.accent);
    set(QPalette::LinkVisited, c.accent);
    set(QPalette::ToolTipBase, c.tip);
    set(QPalette::ToolTipText, c.tipText);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        palette.setColor(QPalette::Disabled, role, QColor(c.disabled));
    palette.setColor(QPalette::Disabled, QPalette::Highlight, QColor(c.edge));
    return palette;
}

/// True for black and white: 21 : 1, with some tolerance.
bool hasHighContrast(const QPalette& palette) {
    constexpr double least = 20;
    return row::contrast(palette.color(QPalette::Window), palette.color(QPalette::WindowText)) >= least;
}

/// The palette of the desktop, where Qt knows it.
const QPalette& systemPalette() {
    // Once: later it is that of this program.
    static const QPalette palette = QGuiApplication::palette();
    return palette;
}

void followSystem() {
    QApplication::setPalette(paletteFor(systemColours(sessionBus()), systemPalette()));
}

}  // namespace

QPalette lightPalette() {
    return made({0xfff1f2f1, 0xffffffff, 0xff17201f, 0xff56605f, 0xff979e9d, 0xffe4e7e6, 0xff86908e,
                 0xffd3d8d6, 0xff0a6973, 0xffffffff, 0xff17201f, 0xfff5f6f5});
}

QPalette darkPalette() {
    return made({0xff1d2221, 0xff151918, 0xffe8ecea, 0xff9fa9a6, 0xff616967, 0xff2b3230, 0xff6c7774,
                 0xff343c3a, 0xff62c3cb, 0xff0c1a1b, 0xffe8ecea, 0xff1d2221});
}

QPalette contrastLightPalette() {
    return made({0xffffffff, 0xffffffff, 0xff000000, 0xff000000, 0xff595959, 0xffe0e0e0, 0xff000000,
                 0xff000000, 0xff0000b4, 0xffffffff, 0xff000000, 0xffffffff});
}

QPalette contrastDarkPalette() {
    return made({0xff000000, 0xff000000, 0xffffffff, 0xffffffff, 0xffa6a6a6, 0xff333333, 0xffffffff,
                 0xffffffff, 0xffffff00, 0xff000000, 0xffffffff, 0xff000000});
}

QPalette paletteFor(const SystemColours& colours, const QPalette& system) {
    const bool dark = colours.dark.value_or(controls::isDark(system));
    if (colours.highContrast.value_or(false) || hasHighContrast(system))
        return dark ? contrastDarkPalette() : contrastLightPalette();
    return dark ? darkPalette() : lightPalette();
}

void useTheme(const QString& wanted) {
    // Before the style is set, which has a palette of its own.
    systemPalette();
    QApplication::setStyle(new Style);
    if (wanted.isEmpty()) {
        followSystem();
        new ColourWatch(sessionBus(), followSystem, qApp);
        return;
    }
    QApplication::setPalette(
        paletteFor({wanted.endsWith("dark"), wanted.startsWith("contrast")}, lightPalette()));
}

}  // namespace tenter::desktop::window
