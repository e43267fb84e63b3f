// The best sizes a model allows.
#pragma once

#include <optional>
#include <vector>

#include "project/wishes.h"
#include "solve/model.h"

namespace tenter::solve {

/// Whether sizes can be had that keep every wish but those of `leftOut` (by demand, empty for none).
bool isFeasible(const Model& model, const RampsSought& ramps, const std::vector<bool>& leftOut = {});

/// Sizes that were found.
struct Best {
    std::vector<double> sizes;   ///< the ramps' ends by column, CSS px
    std::vector<bool> deciding;  ///< by row of the model: true if the best would be better without it
};

/// Multiples of `step` (CSS px) that keep every row and come nearest to the aim. Empty if there are none.
/// What is locked is left as it is.
std::optional<Best> bestSizes(const Model& model, const RampsSought& ramps, project::Aim aim,
                              const std::vector<Demand>& demands, double step);

/// Where a model that cannot be kept is furthest from it: for each demand the row that stands in the way
/// most, if any does.
std::vector<const WishRow*> tightestRows(const Model& model, const RampsSought& ramps,
                                         const std::vector<bool>& leftOut);

}  // namespace tenter::solve
