// Dimension lines as in technical drawings: a line between two slashes, with a value.
#pragma once

#include <QColor>
#include <QPainter>

namespace tenter::desktop::row {

struct DimensionLook {
    QColor line;
    QColor text;
    QColor ground;  ///< background of the value
};

/// Draws a horizontal or vertical dimension line from `a` to `b`. The value is drawn beside a line that is
/// too short for it.
void paintDimension(QPainter& painter, const QPointF& a, const QPointF& b, const QString& value,
                    const DimensionLook& look);
/// Hatches the area inside `outer` and outside `inner`.
void paintHatching(QPainter& painter, const QRectF& outer, const QRectF& inner, const QColor& colour);
/// Draws a value with its background, centred on `centre`.
void paintValue(QPainter& painter, const QPointF& centre, const QString& value, const DimensionLook& look);

}  // namespace tenter::desktop::row
