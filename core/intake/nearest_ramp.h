// From a size at each width to a ramp.
#pragma once

#include <optional>

#include "css/piecewise.h"
#include "units/ramp.h"

namespace tenter::intake {

struct NearestRamp {
    units::Ramp ramp;
    double departs = 0;    ///< CSS px, at most, over the widths of the sizes
    double departsAt = 0;  ///< the width where it does
};

/// The ramp that is `sizes` (CSS px at each width) if they are flat, straight, or straight between flat ends:
/// its points are the kinks, or the ends of the widths where there are none. Otherwise the nearest ramp
/// through the sizes at both ends. Widths and sizes are rounded where that moves no size by more than 0.005
/// px. Empty if a size is none that a ramp may have.
std::optional<NearestRamp> nearestRamp(const css::PiecewiseLinear& sizes);

}  // namespace tenter::intake
