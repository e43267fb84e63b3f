// Whether sizes keep the wishes, judged by the row as it is laid out, not by the solver's own rows.
#pragma once

#include <vector>

#include "solve/demands.h"
#include "text/paragraph.h"

namespace tenter::solve {

/// By demand, true where variant `variant` of `project` breaks it at some width of the range under `profile`.
/// Lines, measures and words are read off the sweep, figures off the emitted sizes; what couples sizes is
/// exact in them, within the grid.
std::vector<bool> broken(const project::Project& project, std::size_t variant,
                         const std::vector<Demand>& demands, const std::vector<bool>& without,
                         text::ParagraphStore& store, const text::BreakProfile& profile);

}  // namespace tenter::solve
