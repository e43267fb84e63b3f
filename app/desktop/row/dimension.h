// A dimension line as draughtsmen draw it: a line between two slashes, with its value on it.
#pragma once

#include <QColor>
#include <QPainter>

namespace tenter::desktop::row {

struct DimensionLook {
    QColor line;
    QColor text;
    QColor ground;  ///< behind the value
};

/// From `a` to `b`, level or upright. The value stands beside the line if there is no room on it.
void paintDimension(QPainter& painter, const QPointF& a, const QPointF& b, const QString& value,
                    const DimensionLook& look);
/// Hatching inside `outer` and outside `inner`.
void paintHatching(QPainter& painter, const QRectF& outer, const QRectF& inner, const QColor& colour);
/// A value on a patch of ground, centred on `centre`.
void paintValue(QPainter& painter, const QPointF& centre, const QString& value, const DimensionLook& look);

}  // namespace tenter::desktop::row
