// Whole viewport widths beside breakpoints.
#pragma once

#include <cmath>

namespace tenter::units {

/// The first whole viewport width above a breakpoint, both in CSS px. A breakpoint belongs to the range below
/// it, so the range above it starts here for people who count in whole px.
inline double firstWholeWidthAbove(double breakpoint) {
    return std::floor(breakpoint) + 1;
}

}  // namespace tenter::units
