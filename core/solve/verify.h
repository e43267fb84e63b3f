// The wishes that a row violates when it is laid out, independent of the solver's own constraints.
#pragma once

#include <vector>

#include "layout/layout.h"
#include "solve/wish.h"

namespace tenter::solve {

/// By wish, the viewport widths from `least` to `most` (CSS px) at which `row` violates it; unordered, and
/// intervals may overlap. Lines, measure and words are read from the sweep, sizes from the emitted ramps.
/// Wishes that couple sizes (ratio, growth, zoom …) are not tested: sizes on the solver's grid satisfy them
/// exactly.
std::vector<std::vector<sweep::Interval>> violatedWidths(const project::Project& project,
                                                         const layout::PreparedRow& row,
                                                         const std::vector<Wish>& wishes,
                                                         const std::vector<bool>& ignoredCards, double least,
                                                         double most);

/// The same for wishes for the same size in every variant: where the sizes of `one` and `other`, rows of two
/// variants, differ by more than the rounding of emitted numbers.
std::vector<std::vector<sweep::Interval>> unequalWidths(const layout::PreparedRow& one,
                                                        const layout::PreparedRow& other,
                                                        const std::vector<Wish>& wishes, double least,
                                                        double most);

}  // namespace tenter::solve
