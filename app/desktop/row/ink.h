// The colours of what is drawn over and around the row: all from the palette, one accent.
#pragma once

#include <QColor>
#include <QPalette>

namespace tenter::desktop::row {

/// WCAG 2.2 contrast ratio of two opaque colours, 1 to 21.
double contrast(const QColor& one, const QColor& other);
/// `share` (0 to 1) of `over` in `under`.
QColor mixed(const QColor& under, const QColor& over, double share);
/// `colour`, moved towards `towards` until its contrast with `ground` is at least `ratio`.
QColor legible(const QColor& colour, const QColor& ground, const QColor& towards, double ratio = 4.5);

struct Ink {
    QColor ground;  ///< behind lanes, plots and boxes of figures
    QColor desk;    ///< around the page
    QColor text;
    QColor quiet;       ///< secondary text: still AA on `ground`
    QColor line;        ///< rules, axes, brackets
    QColor faint;       ///< grid lines
    QColor accent;      ///< at least 3:1 on `ground`: lines, handles, rings
    QColor accentText;  ///< the accent as text: AA on `ground`
    QColor onAccent;    ///< text on the accent: AA
    static Ink of(const QPalette& palette);
};

}  // namespace tenter::desktop::row
