// Ranges of viewport widths within which everything that limits a role's size is linear in the width.
#pragma once

#include <vector>

#include "layout/layout.h"
#include "solve/ramps.h"
#include "sweep/pieces.h"
#include "units/linear.h"

namespace tenter::solve {

/// Viewport widths above `from`, up to `to` (CSS px, within one interval). Linear members have their origin
/// at `from`. Lengths in em are kept apart because they depend on the size that is solved for: at size s, CSS
/// px, the available inline size is `available − emEdges · s`, and letter spacing is `letter + emLetter · s`.
struct LinearRange {
    double from = 0;
    double to = 0;
    std::size_t band = 0;
    units::Linear available;      ///< inline size for text, CSS px, without edges in em
    units::Linear mostAvailable;  ///< the largest it can be: engines may round a border in em down
    units::Linear column;         ///< content width of the card, CSS px
    units::Linear followed;       ///< the width that the role's ramp is a function of, CSS px
    units::Linear letter, word;   ///< letter and word spacing, CSS px, without their part in em
    double emEdges = 0;           ///< margins, paddings and borders of both sides that are set in em
    double leastEmEdges = 0;      ///< the same for `mostAvailable`
    double emLetter = 0, emWord = 0;

    [[nodiscard]] double at(const units::Linear& line, double width) const { return line.at(width - from); }
    friend bool operator==(const LinearRange&, const LinearRange&) = default;
};

/// The linear ranges of role `role` (an index into the roles of the row) of a variant, from `least` to
/// `most`. They are also cut at the ends of the role's ramps and at `cuts` (viewport widths, CSS px).
std::vector<LinearRange> linearRanges(const layout::LinearSizes& lines, std::size_t variant,
                                      std::uint32_t role, const RampSet& ramps, double least, double most,
                                      const std::vector<double>& cuts);

}  // namespace tenter::solve
