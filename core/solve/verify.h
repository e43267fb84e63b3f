// Where sizes break the wishes, judged by the row as it is laid out, not by the solver's own rows.
#pragma once

#include <vector>

#include "layout/layout.h"
#include "solve/demands.h"

namespace tenter::solve {

/// By demand, the viewport widths from `least` to `most` (CSS px) at which `row` breaks it, in no order, some
/// perhaps within others. Lines, measures and words are read off the sweep, figures off the emitted sizes.
/// What couples sizes within a row is not looked at: sizes on the solver's grid keep it as they are.
std::vector<std::vector<sweep::Interval>> brokenWidths(const project::Project& project,
                                                       const layout::PreparedRow& row,
                                                       const std::vector<Demand>& demands,
                                                       const std::vector<bool>& without, double least,
                                                       double most);

/// The same for sizes that are to be the same in every variant: where `one` and `other`, rows of two
/// variants, differ by more than rounding to emitted numbers explains.
std::vector<std::vector<sweep::Interval>> unequalWidths(const layout::PreparedRow& one,
                                                        const layout::PreparedRow& other,
                                                        const std::vector<Demand>& demands, double least,
                                                        double most);

}  // namespace tenter::solve
