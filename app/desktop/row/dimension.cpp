#include "row/dimension.h"

#include <QPainterPath>
#include <cmath>

namespace tenter::desktop::row {

void paintValue(QPainter& painter, const QPointF& centre, const QString& value, const DimensionLook& look) {
    const QFontMetricsF metrics(painter.font());
    const QSizeF size(metrics.horizontalAdvance(value) + 4, metrics.ascent() + 1);
    const QRectF place(std::round(centre.x() - size.width() / 2), std::round(centre.y() - size.height() / 2),
                       size.width(), size.height());
    painter.fillRect(place, look.ground);
    painter.setPen(look.text);
    painter.drawText(QPointF(place.left() + 2, place.top() + metrics.ascent() - 1), value);
}

void paintDimension(QPainter& painter, const QPointF& a, const QPointF& b, const QString& value,
                    const DimensionLook& look) {
    const double length = std::hypot(b.x() - a.x(), b.y() - a.y());
    if (length < 2) return;
    painter.setRenderHint(QPainter::Antialiasing, true);
    painter.setPen(QPen(look.line, 1));
    painter.drawLine(a, b);
    const double slash = std::min(3.0, length / 3);
    for (const QPointF& end : {a, b})
        painter.drawLine(end + QPointF(-slash, slash), end + QPointF(slash, -slash));
    const QFontMetricsF metrics(painter.font());
    const double width = metrics.horizontalAdvance(value);
    const QPointF middle = (a + b) / 2;
    if (a.y() == b.y()) {
        const bool fits = length > width + 14;
        paintValue(painter, fits ? middle : middle + QPointF(0, metrics.ascent()), value, look);
    } else {
        const bool fits = length > metrics.ascent() + 8;
        paintValue(painter, fits ? middle : middle + QPointF(width / 2 + 9, 0), value, look);
    }
}

void paintHatching(QPainter& painter, const QRectF& outer, const QRectF& inner, const QColor& colour) {
    if (outer == inner || outer.isEmpty()) return;
    QPainterPath area;
    area.addRect(outer);
    if (!inner.isEmpty()) area.addRect(inner);
    area.setFillRule(Qt::OddEvenFill);
    painter.save();
    painter.setClipPath(area, Qt::IntersectClip);
    painter.setRenderHint(QPainter::Antialiasing, true);
    painter.setPen(QPen(colour, 1));
    constexpr double step = 6;
    const QRectF shown = painter.clipBoundingRect();
    const auto first = static_cast<int>(std::floor((shown.left() - shown.height()) / step));
    const auto last = static_cast<int>(std::ceil(shown.right() / step));
    for (int line = first; line < last; ++line)
        painter.drawLine(QPointF(line * step, shown.bottom()),
                         QPointF(line * step + shown.height(), shown.top()));
    painter.restore();
}

}  // namespace tenter::desktop::row
