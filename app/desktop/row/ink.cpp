#include "row/ink.h"

#include <cmath>

#include "controls/inks.h"

namespace tenter::desktop::row {

namespace {

// WCAG 2.2, definition of relative luminance.
double luminance(const QColor& colour) {
    const auto linear = [](double channel) {
        return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

}  // namespace

double contrast(const QColor& one, const QColor& other) {
    const double a = luminance(one);
    const double b = luminance(other);
    return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

QColor mixed(const QColor& under, const QColor& over, double share) {
    const auto channel = [share](float from, float to) {
        return static_cast<float>(from + (to - from) * share);
    };
    return QColor::fromRgbF(channel(under.redF(), over.redF()), channel(under.greenF(), over.greenF()),
                            channel(under.blueF(), over.blueF()));
}

QColor legible(const QColor& colour, const QColor& ground, const QColor& towards, double ratio) {
    QColor result = colour;
    for (int step = 1; step <= 20 && contrast(result, ground) < ratio; ++step)
        result = mixed(colour, towards, step / 20.0);
    return result;
}

Ink Ink::of(const QPalette& palette) {
    Ink ink;
    ink.ground = palette.color(QPalette::Base);
    ink.text = palette.color(QPalette::Text);
    ink.desk = mixed(palette.color(QPalette::Window), ink.text, 0.08);
    ink.quiet = legible(mixed(ink.ground, ink.text, 0.6), ink.ground, ink.text);
    ink.line = mixed(ink.ground, ink.text, 0.45);
    ink.faint = mixed(ink.ground, ink.text, 0.12);
    // Who has chosen black and white gets no greys for what must be read.
    if (controls::isBlackAndWhite(palette)) {
        ink.quiet = ink.line = ink.text;
        ink.faint = mixed(ink.ground, ink.text, 0.5);
    }
    ink.accent = legible(palette.color(QPalette::Highlight), ink.ground, ink.text, 3);
    ink.accentText = legible(ink.accent, ink.ground, ink.text);
    const QColor light = Qt::white;
    const QColor dark = Qt::black;
    ink.onAccent = contrast(light, ink.accent) >= 4.5 ? light : dark;
    return ink;
}

}  // namespace tenter::desktop::row
