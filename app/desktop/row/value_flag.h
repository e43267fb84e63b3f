// A value beside what it measures, in a box of its own over the row.
#pragma once

#include <QPainter>

#include "row/ink.h"

namespace tenter::desktop::row {

/// Draws `text` centred on `place`, moved as far as needed to be inside `view`.
void paintFlag(QPainter& painter, const QRectF& place, const QString& text, const QRectF& view,
               const Ink& ink);

}  // namespace tenter::desktop::row
