// The order in which widths are compared: soon everywhere, then between.
#pragma once

#include <vector>

namespace tenter::desktop::compare {

/// Every whole width from `least` to `most` (CSS px) once: the ends and both sides of each breakpoint first,
/// then ever closer ones.
std::vector<double> widthOrder(double least, double most, const std::vector<double>& breakpoints);

}  // namespace tenter::desktop::compare
