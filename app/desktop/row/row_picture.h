// Several widths of the row in one picture, for documentation and for computers without a display.
#pragma once

#include <QImage>
#include <vector>

#include "session/layout_cache.h"

namespace tenter::desktop::row {

/// Six key widths of a variant, CSS px, in ascending order: the ends of the range, both sides of the
/// breakpoints, and widths between them.
std::vector<double> keyWidths(const project::Project& project, std::size_t variant);

/// The row at each of `widths` (CSS px) side by side at half size, each below a caption with width and column
/// count. Waits until all pictures are decoded.
QImage rowPicture(const LayoutCache& layouts, const Document& document, const std::vector<double>& widths);

}  // namespace tenter::desktop::row
