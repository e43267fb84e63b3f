// Painting of boxes: backgrounds, borders, rounded corners.
#pragma once

#include <QPainter>
#include <QPainterPath>

#include "row/canvas.h"

namespace tenter::desktop::row {

/// The outline of a box with rounded corners.
QPainterPath rounded(const QRectF& rect, const Corners& corners);
/// Fills a box on whole device px; draws nothing for a transparent colour.
void fillBox(QPainter& painter, const QRect& rect, const Corners& corners, const QColor& colour);
/// Draws a picture into a box of the same size, on whole device px.
void fillBox(QPainter& painter, const QRect& rect, const Corners& corners, const QImage& picture);
/// Draws a solid border of `width` device px inside the edge of `rect`; nothing for width 0 or a transparent
/// colour.
void strokeBox(QPainter& painter, const QRect& rect, const Corners& corners, int width, const QColor& colour);

}  // namespace tenter::desktop::row
