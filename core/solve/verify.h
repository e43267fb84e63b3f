// The wishes that a row violates when it is laid out, independent of the solver's own rows.
#pragma once

#include <stop_token>
#include <vector>

#include "layout/layout.h"
#include "solve/wish.h"

namespace tenter::solve {

/// By wish, the viewport widths from `least` to `most` (CSS px) at which `row` violates it; unordered, and
/// intervals may overlap. Lines, measure and words are read from the sweep, sizes from the emitted ramps.
/// Wishes that couple sizes (ratio, growth, zoom …) are not tested: sizes on the solver's grid satisfy them
/// exactly. Throws `Cancelled`.
std::vector<std::vector<sweep::Interval>> violatedWidths(const project::Project& project,
                                                         const layout::PreparedRow& row,
                                                         const std::vector<Wish>& wishes,
                                                         const std::vector<bool>& ignoredCards, double least,
                                                         double most,
                                                         const std::stop_token& cancellation = {});

/// The same for wishes that concern two variants together, such as the same size in every variant: where the
/// rows `one` and `other` of two variants violate them.
std::vector<std::vector<sweep::Interval>> violatedTogether(const layout::PreparedRow& one,
                                                           const layout::PreparedRow& other,
                                                           const std::vector<Wish>& wishes, double least,
                                                           double most);

}  // namespace tenter::solve
