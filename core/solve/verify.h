// Where sizes break the wishes, judged by the row as it is laid out, not by the solver's own rows.
#pragma once

#include <vector>

#include "layout/layout.h"
#include "solve/demands.h"

namespace tenter::solve {

/// By demand, the viewport widths from `least` to `most` (CSS px) at which `row` breaks it, in no order, some
/// perhaps within others. Lines, measures and words are read off the sweep, figures off the emitted sizes.
/// What couples sizes is not looked at: sizes on the solver's grid keep it as they are.
std::vector<std::vector<sweep::Interval>> brokenWidths(const project::Project& project,
                                                       const layout::PreparedRow& row,
                                                       const std::vector<Demand>& demands,
                                                       const std::vector<bool>& without, double least,
                                                       double most);

}  // namespace tenter::solve
