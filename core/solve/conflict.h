// Wishes that cannot be kept together.
#pragma once

#include <functional>

#include "solve/best.h"
#include "solve/solve.h"

namespace tenter::solve {

/// The smallest set of demands that `model` cannot keep: without any one of them it could keep the others.
/// By demand, true for those outside the set.
std::vector<bool> outsideConflict(const Model& model, const RampsSought& ramps,
                                  const std::vector<Demand>& demands);

/// The least loosening of demand `index` with which all of `demands` can be kept: by `canKeep`, quickly, and
/// then by `hasSizes`, which knows the grid too. To a figure that reads well.
Loosening leastLoosening(const std::vector<Demand>& demands, std::size_t index,
                         const std::function<bool(const std::vector<Demand>&)>& canKeep,
                         const std::function<bool(const std::vector<Demand>&)>& hasSizes);

}  // namespace tenter::solve
