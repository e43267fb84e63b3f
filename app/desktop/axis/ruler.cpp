#include "axis/ruler.h"

#include <QPaintEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "document/wording.h"
#include "row/ink.h"

namespace tenter::desktop::axis {

namespace {

// The smallest of 1, 2, 5, 10, 20 … that is at least `width`.
double roundStep(double width) {
    double power = 1;
    while (true) {
        for (const double times : {1.0, 2.0, 5.0})
            if (times * power >= width) return times * power;
        power *= 10;
    }
}

}  // namespace

std::vector<Tick> ticks(const WidthScale& scale, double room) {
    std::vector<Tick> found;
    // With equal room for each band, every band has its own scale.
    std::vector<double> stops{scale.firstShown()};
    if (scale.equalRoom())
        for (const double breakpoint : scale.breakpoints())
            if (breakpoint > scale.firstShown() && breakpoint < scale.lastShown())
                stops.push_back(breakpoint);
    stops.push_back(scale.lastShown());
    for (std::size_t i = 0; i + 1 < stops.size(); ++i) {
        const double pixels = scale.x(stops[i + 1]) - scale.x(stops[i]);
        if (pixels <= 0) continue;
        const double each = (stops[i + 1] - stops[i]) / pixels;
        const double numbered = roundStep(each * room);
        const double step = std::max(1.0, numbered / (numbered / 5 / each >= 7 ? 5 : 2));
        const double first = std::ceil(stops[i] / step);
        for (double n = first; n * step <= stops[i + 1]; ++n) {
            const double width = n * step;
            found.push_back({width, std::abs(std::remainder(width, numbered)) < step / 10});
        }
    }
    return found;
}

Ruler::Ruler(const WidthScale& scale, QWidget* parent) : QWidget(parent), scale_(scale) {
    setAttribute(Qt::WA_TransparentForMouseEvents);
}

void Ruler::paintEvent(QPaintEvent* event) {
    const row::Ink ink = row::Ink::of(palette());
    QPainter painter(this);
    const double floor = height() - 0.5;
    painter.setPen(ink.line);
    painter.drawLine(QPointF(scale_.left(), floor), QPointF(scale_.right(), floor));
    double free = -1e9;
    for (const Tick& tick : ticks(scale_, 64)) {
        const double x = std::round(scale_.x(tick.width)) + 0.5;
        if (x < event->rect().left() - 40 || x > event->rect().right() + 40) continue;
        painter.setPen(ink.line);
        painter.drawLine(QPointF(x, floor - (tick.numbered ? 6 : 3)), QPointF(x, floor));
        const QString number = figure(tick.width, 0);
        const double room = fontMetrics().horizontalAdvance(number);
        if (!tick.numbered || x - room / 2 < free) continue;
        painter.setPen(ink.quiet);
        painter.drawText(QPointF(x - room / 2, height() - 8), number);
        free = x + room / 2 + 8;
    }
}

}  // namespace tenter::desktop::axis
