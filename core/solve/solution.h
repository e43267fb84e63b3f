// The optimal sizes that a model allows.
#pragma once

#include <optional>
#include <vector>

#include "project/wishes.h"
#include "solve/model.h"

namespace tenter::solve {

/// True if some sizes satisfy every wish except those that are true in `removed` (by wish; empty for none).
bool isFeasible(const Model& model, const RampSet& ramps, const std::vector<bool>& removed = {});

/// Optimal sizes.
struct Solution {
    std::vector<double> sizes;  ///< of the ramps' ends, by variable, CSS px
    std::vector<bool> binding;  ///< by constraint: the objective would improve without it
};

/// The sizes, multiples of `step` (CSS px), that satisfy every constraint and are optimal for `aim`. Locked
/// roles keep their sizes. Empty if there is no feasible size on the grid.
std::optional<Solution> optimalSizes(const Model& model, const RampSet& ramps, project::Aim aim,
                                     const std::vector<Wish>& wishes, double step);

/// For an infeasible model, by wish: the constraint that contributes most to the infeasibility, or null.
/// (It has the largest dual value when the largest violation is minimised.)
std::vector<const ConstraintRow*> violatedConstraints(const Model& model, const RampSet& ramps,
                                                      const std::vector<bool>& removed);

}  // namespace tenter::solve
