// Viewport widths as arguments say them.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "project/problem.h"

namespace tenter::command {

/// What the arguments --widths and --step say; empty: left out.
struct WidthArguments {
    std::string widths;
    std::string step;
};

/// The widths in CSS px: a range `320-1920` in steps, or a list `320,859,860`; fractions are allowed. With
/// no --widths, the range from `least` to `most`. Empty with a problem if they are wrong, beyond 1 to 10000
/// px, or more than 100 000.
std::optional<std::vector<double>> readWidths(const WidthArguments& said, double least, double most,
                                              project::Problems& problems);

}  // namespace tenter::command
