// The order in which widths are compared: first coarsely over the whole range, then in smaller steps.
#pragma once

#include <vector>

namespace tenter::desktop::compare {

/// Every whole width from `least` to `most` (CSS px), each once: first the ends and both sides of each
/// breakpoint, then steps of 64 px, 32 px and so on down to 1 px.
std::vector<double> widthOrder(double least, double most, const std::vector<double>& breakpoints);

}  // namespace tenter::desktop::compare
