// Wishes that cannot be satisfied together.
#pragma once

#include <functional>

#include "solve/solution.h"
#include "solve/solve.h"

namespace tenter::solve {

/// Finds an irreducible infeasible subset: wishes that `model` cannot satisfy together, but can if any one of
/// them is removed. A subset of two is preferred to a larger one, and wishes that are true in
/// `explicitWishes` (set by the user) to the default ones. By wish, true for those outside the subset.
std::vector<bool> wishesOutsideConflict(const Model& model, const RampSet& ramps,
                                        const std::vector<Wish>& wishes,
                                        const std::vector<bool>& explicitWishes);

/// The smallest change of `wish` that makes the others satisfiable. Its figure is a multiple of a readable
/// step. `isFeasible` is a quick test that ignores the size grid; `hasSizes` includes it.
using WishTest = std::function<bool(const Wish&)>;
Relaxation smallestRelaxation(const Wish& wish, const WishTest& isFeasible, const WishTest& hasSizes);

}  // namespace tenter::solve
