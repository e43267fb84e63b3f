// The colours of everything drawn around the row and over it, derived from the palette, with one accent
// colour.
#pragma once

#include <QColor>
#include <QPalette>

namespace tenter::desktop::row {

/// WCAG 2.2 contrast ratio of two opaque colours, 1 to 21.
double contrast(const QColor& one, const QColor& other);
/// A mixture of two opaque colours with a share (0 to 1) of `over`.
QColor mixed(const QColor& under, const QColor& over, double share);
/// `colour`, mixed with `towards` as far as needed for a contrast of at least `ratio` with `ground`.
QColor legible(const QColor& colour, const QColor& ground, const QColor& towards, double ratio = 4.5);

struct Ink {
    QColor ground;  ///< background of lanes, plots and hover figures
    QColor desk;    ///< area around the page
    QColor text;
    QColor quiet;       ///< secondary text; contrast AA on `ground`
    QColor line;        ///< rules, axes, brackets
    QColor faint;       ///< grid lines
    QColor accent;      ///< lines, handles, focus rings; contrast at least 3:1 on `ground`
    QColor accentText;  ///< text in the accent colour; contrast AA on `ground`
    QColor onAccent;    ///< text on the accent colour; contrast AA
    static Ink of(const QPalette& palette);
};

}  // namespace tenter::desktop::row
