// Wishes that cannot be kept together.
#pragma once

#include <functional>

#include "solve/best.h"
#include "solve/solve.h"

namespace tenter::solve {

/// The smallest set of demands that `model` cannot keep: without any one of them it could keep the others,
/// and no two in place of three or more are found. Where there is a choice, those that are `said` come before
/// the usual ones. By demand, true for those outside the set.
std::vector<bool> outsideConflict(const Model& model, const RampsSought& ramps,
                                  const std::vector<Demand>& demands, const std::vector<bool>& said);

/// The least loosening of `wished` with which the others can be kept: by `canKeep`, quickly, and then by
/// `hasSizes`, which knows the grid too. To a figure that reads well.
using Judged = std::function<bool(const Demand&)>;
Loosening leastLoosening(const Demand& wished, const Judged& canKeep, const Judged& hasSizes);

}  // namespace tenter::solve
