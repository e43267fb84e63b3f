// Wrap points: the viewport widths at which the line count of a text changes, in closed form.
#pragma once

#include <cstdint>
#include <vector>

#include "sweep/pieces.h"

namespace tenter::sweep {

/// A wrap point at `width` (CSS px): the part at `place` has `below` lines just below it and `above`
/// lines just above. Band i holds the widths b₍ᵢ₋₁₎ < W ≤ bᵢ, so at a breakpoint `below` is the count at the
/// breakpoint itself.
struct WrapPoint {
    double width = 0;
    project::PartRef place;
    std::uint32_t below = 0;
    std::uint32_t above = 0;
    friend bool operator==(const WrapPoint&, const WrapPoint&) = default;
};

/// A range of widths at which a part has less slack than asked.
struct TightFit {
    Interval widths;
    project::PartRef place;
    friend bool operator==(const TightFit&, const TightFit&) = default;
};

/// The wrap points of one part's pieces, rising.
std::vector<WrapPoint> wrapsOf(const PartPieces& pieces, project::PartRef place);

/// The row's wrap points from `least` to `most` (CSS px), by width, then card, then part.
std::vector<WrapPoint> wrapPoints(const layout::PreparedRow& row, double least, double most);

/// Sorts by width, then card, then part.
void sortWraps(std::vector<WrapPoint>& wraps);

}  // namespace tenter::sweep
