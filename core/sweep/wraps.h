// Wrap points: the viewport widths at which a part's number of lines changes, in closed form.
#pragma once

#include <cstdint>
#include <vector>

#include "sweep/pieces.h"

namespace tenter::sweep {

/// At `width` (CSS px) part `part` of card `card` has `below` lines just under it and `above` just over it. A
/// band holds b₍ᵢ₋₁₎ < W ≤ bᵢ, so at a breakpoint `below` holds at the breakpoint itself and `above` just
/// past it.
struct WrapPoint {
    double width = 0;
    std::size_t card = 0;
    std::size_t part = 0;
    std::uint32_t below = 0;
    std::uint32_t above = 0;
    friend bool operator==(const WrapPoint&, const WrapPoint&) = default;
};

/// A part's slack is under the share at every width between these.
struct TightFit {
    Interval widths;
    std::size_t card = 0;
    std::size_t part = 0;
    friend bool operator==(const TightFit&, const TightFit&) = default;
};

/// The wrap points of one part's pieces, rising.
std::vector<WrapPoint> wrapsOf(const PartPieces& pieces, std::size_t card, std::size_t part);

/// The row's wrap points from `least` to `most` (CSS px), by width, then card, then part.
std::vector<WrapPoint> wrapPoints(const layout::PreparedRow& row, double least, double most);

/// Puts wrap points in that order.
void sortWraps(std::vector<WrapPoint>& wraps);

}  // namespace tenter::sweep
