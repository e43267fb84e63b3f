#include "axis/theme_breakpoints.h"

#include <QObject>
#include <cmath>
#include <map>

#include "document/wording.h"

namespace tenter::desktop::axis {

namespace {

constexpr double themeReach = 4;  // px from the pointer to a line
constexpr double themeTop = 4;    // px from the top of the pane to the lines

}  // namespace

bool ThemeBreakpoints::read(const project::Project& project) {
    std::vector<double> ends;
    for (const project::PageRange& range : project.page.ranges)
        if (range.upTo) ends.push_back(*range.upTo);
    const project::SharedText theme =
        project.row().given ? project.row().given->theme : project::SharedText();
    if (theme == css_ && ends == pageRangeEnds_) return false;
    pageRangeEnds_ = std::move(ends);
    if (theme != css_) all_ = css::breakpointsOf(css::readSheet(theme));
    css_ = theme;
    return true;
}

QString ThemeBreakpoints::description() const {
    QStringList sentences;
    QStringList widths;
    for (const css::Breakpoint& breakpoint : all_)
        widths << pixels(breakpoint.width);
    if (!widths.isEmpty()) sentences << QObject::tr("Breakpoints of the theme: %1").arg(widths.join(", "));
    widths.clear();
    for (const double end : pageRangeEnds_)
        widths << pixels(end);
    if (!widths.isEmpty()) sentences << QObject::tr("Ends of page ranges: %1").arg(widths.join(", "));
    return sentences.join(". ");
}

QString ThemeBreakpoints::toolTipAt(double x) const {
    QStringList lines;
    for (const css::Breakpoint& breakpoint : all_)
        if (std::abs(scale_.x(breakpoint.width) - x) <= themeReach)
            lines << QObject::tr("Breakpoint of the theme at %1: %2")
                         .arg(pixels(breakpoint.width), QString::fromStdString(breakpoint.condition));
    for (const double end : pageRangeEnds_)
        if (std::abs(scale_.x(end) - x) <= themeReach)
            lines << QObject::tr("End of a page range: the page changes above %1").arg(pixels(end));
    return lines.join('\n');
}

void ThemeBreakpoints::paint(QPainter& painter, const row::Ink& ink, double bottom) const {
    std::map<double, QString> names;  // by width; a page range often ends at a breakpoint of the theme
    for (const double end : pageRangeEnds_)
        names[end] = QObject::tr("page");
    for (const css::Breakpoint& breakpoint : all_)
        names[breakpoint.width] = QObject::tr("theme");
    const QFontMetrics metrics = painter.fontMetrics();
    double free = 0;
    for (const auto& [width, name] : names) {
        const double x = std::round(scale_.x(width)) + 0.5;
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
