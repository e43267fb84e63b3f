// The ramp nearest to given sizes.
#pragma once

#include <optional>

#include "css/piecewise.h"
#include "units/ramp.h"

namespace tenter::intake {

/// A ramp and how well it fits. Ramp: a font size that changes in a straight line between two widths and
/// is constant outside them.
struct NearestRamp {
    units::Ramp ramp;
    double largestError = 0;  ///< largest difference from the sizes, CSS px
    double errorAt = 0;       ///< width of that difference, CSS px
};

/// How far rounding may move a ramp, CSS px: `end` its sizes at both ends, `between` any size.
struct RoundingLimits {
    double end = 0.005;
    double between = 0.005;
};

/// The ramp that fits `sizes` (CSS px by width). It is exact if they are flat, straight, or straight between
/// flat ends: its points are then the kinks, or the ends of the widths where there are no kinks. Otherwise it
/// is the nearest ramp that has the same sizes at both ends. Widths and sizes have the fewest decimals that
/// `limits` allow. Empty if a size is outside the range of a ramp.
std::optional<NearestRamp> nearestRamp(const css::PiecewiseLinear& sizes, const RoundingLimits& limits = {});

}  // namespace tenter::intake
