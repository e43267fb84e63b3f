// Boxes: backgrounds, borders, rounded corners.
#pragma once

#include <QPainter>
#include <QPainterPath>

#include "row/canvas.h"

namespace tenter::desktop::row {

/// The outline of a box with rounded corners.
QPainterPath rounded(const QRectF& rect, const Corners& corners);
/// Fills a box that stands on whole px; nothing for a transparent colour.
void fillBox(QPainter& painter, const QRect& rect, const Corners& corners, const QColor& colour);
/// Draws a picture of the box's size into it. The box stands on whole px.
void fillBox(QPainter& painter, const QRect& rect, const Corners& corners, const QImage& picture);
/// A solid border of `width` device px inside `rect`'s edge; nothing for no width or a transparent colour.
void strokeBox(QPainter& painter, const QRect& rect, const Corners& corners, int width, const QColor& colour);

}  // namespace tenter::desktop::row
