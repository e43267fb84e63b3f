// Bands and page ranges merged into one list.
#pragma once

#include <optional>
#include <vector>

#include "project/project.h"

namespace tenter::project {

/// Viewport widths within one band of a variant and one range of the page, up to and including `upTo` (CSS
/// px).
struct Interval {
    std::optional<double> upTo;  ///< empty: no upper end
    std::size_t band = 0;        ///< index in the variant's bands
    std::size_t range = 0;       ///< index in the page's ranges; their number: beyond them
};

/// The intervals of a variant, rising, at least one. Without page ranges they are its bands.
std::vector<Interval> intervals(const Page& page, const Variant& variant);

}  // namespace tenter::project
