// Several widths of the row in one picture, for documentation and for computers without a display.
#pragma once

#include <QImage>
#include <vector>

#include "document/viewing.h"

namespace tenter::desktop::row {

/// Six key widths of a variant, CSS px, in ascending order: the ends of the range, both sides of the
/// breakpoints, and widths between them.
std::vector<double> keyWidths(const project::Project& project, std::size_t variant);

/// The row at each of `widths` (CSS px) side by side at half size, each below a caption with width and column
/// count. Waits until all pictures are decoded. Leaves `viewing` at the last width.
QImage rowPicture(Viewing& viewing, const std::vector<double>& widths);

}  // namespace tenter::desktop::row
