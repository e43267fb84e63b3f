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

/// The ramp that fits `sizes` (CSS px by width). It is exact if they are flat, straight, or straight between
/// flat ends: its points are then the kinks, or the ends of the widths where there are no kinks. Otherwise it
/// is the nearest ramp that has the same sizes at both ends. Widths and sizes are rounded if that changes no
/// size by more than `negligible` CSS px. Empty if a size is outside the range of a ramp.
std::optional<NearestRamp> nearestRamp(const css::PiecewiseLinear& sizes, double negligible = 0.005);

}  // namespace tenter::intake
