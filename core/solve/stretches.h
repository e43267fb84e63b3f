// Widths on which all that a role's type is judged by is a straight line, whatever its size.
#pragma once

#include <vector>

#include "layout/layout.h"
#include "solve/ramps.h"
#include "sweep/pieces.h"
#include "units/linear.h"

namespace tenter::solve {

/// Viewport widths past `from`, up to `to` (CSS px, of one band); lines start at `from`. What follows the
/// size by ems stands apart: at size s a line has `room − emEdges · s`, and each letter unit adds `letter +
/// emLetter · s`.
struct Stretch {
    double from = 0;
    double to = 0;
    std::size_t band = 0;
    units::Linear room;          ///< CSS px
    units::Linear mostRoom;      ///< the same at most: engines may make a border in ems narrower
    units::Linear column;        ///< the card's content width, CSS px
    units::Linear follows;       ///< the width that the role's ramp is a function of, CSS px
    units::Linear letter, word;  ///< spacings, CSS px
    double emEdges = 0, leastEmEdges = 0, emLetter = 0, emWord = 0;

    [[nodiscard]] double at(const units::Linear& line, double width) const { return line.at(width - from); }
};

/// The stretches of role `role` (an index into `row.roles()`) of variant `variant` from `least` to `most`,
/// cut at the ends of its ramps and at `cuts` besides (viewport widths, CSS px).
std::vector<Stretch> stretchesOf(const layout::PreparedRow& row, std::size_t variant, std::uint32_t role,
                                 const RampsSought& ramps, double least, double most,
                                 const std::vector<double>& cuts);

}  // namespace tenter::solve
