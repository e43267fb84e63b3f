// The viewport widths of --widths and --step.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "project/problem.h"

namespace tenter::command {

/// The arguments --widths and --step as given; empty: not given.
struct WidthArguments {
    std::string widths;
    std::string step;
};

/// The widths in CSS px: a range such as `320-1920` in steps, or a list such as `320,859,860`; fractions are
/// allowed. Without --widths, the range from `least` to `most`. Empty, with a problem, if they are not valid,
/// outside 1 to 10000 px, or more than 100000.
std::optional<std::vector<double>> readWidths(const WidthArguments& arguments, double least, double most,
                                              project::Problems& problems);

}  // namespace tenter::command
