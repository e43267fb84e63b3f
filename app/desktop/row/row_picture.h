// The row at several widths as one picture, for hand-over and for machines without a display.
#pragma once

#include <QImage>
#include <vector>

#include "document/viewing.h"

namespace tenter::desktop::row {

/// Six viewport widths that show the row whole: the range's ends, both sides of its breakpoints, and what
/// lies between. CSS px, rising.
std::vector<double> tellingWidths(const project::Project& project, std::size_t variant);

/// The row at each of `widths` (CSS px) side by side at half size, each under its width and column count.
/// Waits until pictures are decoded. `viewing` is left at the last width.
QImage rowPicture(Viewing& viewing, const std::vector<double>& widths);

}  // namespace tenter::desktop::row
