#include "axis/theme_breakpoints.h"

#include <QObject>
#include <cmath>

#include "document/wording.h"

namespace tenter::desktop::axis {

namespace {

constexpr double themeReach = 4;  // px from the pointer to a line
constexpr double themeTop = 4;    // px from the top of the pane to the lines

}  // namespace

bool ThemeBreakpoints::read(const project::Project& project) {
    const project::SharedText theme = project.given ? project.given->theme : project::SharedText();
    if (theme == css_) return false;
    css_ = theme;
    all_ = css::breakpointsOf(css::readSheet(theme));
    return true;
}

QString ThemeBreakpoints::description() const {
    QStringList widths;
    for (const css::Breakpoint& breakpoint : all_)
        widths << pixels(breakpoint.width);
    return widths.isEmpty() ? QString() : QObject::tr("Breakpoints of the theme: %1").arg(widths.join(", "));
}

QString ThemeBreakpoints::toolTipAt(double x) const {
    QStringList lines;
    for (const css::Breakpoint& breakpoint : all_)
        if (std::abs(scale_.x(breakpoint.width) - x) <= themeReach)
            lines << QObject::tr("Breakpoint of the theme at %1: %2")
                         .arg(pixels(breakpoint.width), QString::fromStdString(breakpoint.condition));
    return lines.join('\n');
}

void ThemeBreakpoints::paint(QPainter& painter, const row::Ink& ink, double bottom) const {
    const QString name = QObject::tr("theme");
    const QFontMetrics metrics = painter.fontMetrics();
    double free = 0;
    for (const css::Breakpoint& breakpoint : all_) {
        const double x = std::round(scale_.x(breakpoint.width)) + 0.5;
        if (x < scale_.left() || x > scale_.right() + 1) continue;
        painter.setPen(QPen(ink.line, 1, Qt::DotLine));
        painter.drawLine(QPointF(x, themeTop), QPointF(x, bottom));
        if (x < free) continue;
        painter.setPen(ink.quiet);
        painter.drawText(QPointF(x + 4, themeTop + metrics.ascent() - 2), name);
        free = x + metrics.horizontalAdvance(name) + 8;
    }
}

}  // namespace tenter::desktop::axis
