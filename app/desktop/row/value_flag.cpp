#include "row/value_flag.h"

#include <algorithm>
#include <cmath>

namespace tenter::desktop::row {

namespace {

constexpr double inset = 8;    // px beside the text
constexpr double height = 22;  // px
constexpr double margin = 4;   // px to the edge of the view

}  // namespace

void paintFlag(QPainter& painter, const QRectF& place, const QString& text, const QRectF& view,
               const Ink& ink) {
    const QRectF seen = place.intersected(view).isEmpty() ? place : place.intersected(view);
    const double width = std::ceil(QFontMetricsF(painter.font()).horizontalAdvance(text)) + 2 * inset;
    const auto within = [](double at, double low, double high) { return std::max(low, std::min(at, high)); };
    const QRectF box(std::round(within(seen.center().x() - width / 2, view.left() + margin,
                                       view.right() - width - margin)),
                     std::round(within(seen.center().y() - height / 2, view.top() + margin,
                                       view.bottom() - height - margin)),
                     width, height);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, true);
    painter.setPen(QPen(ink.accent, 1));
    painter.setBrush(ink.ground);
    painter.drawRoundedRect(box.adjusted(0.5, 0.5, -0.5, -0.5), 3, 3);
    painter.setPen(ink.text);
    painter.drawText(box, Qt::AlignCenter, text);
    painter.restore();
}

}  // namespace tenter::desktop::row
