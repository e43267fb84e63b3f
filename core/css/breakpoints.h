// The widths at which a style sheet changes what it says.
#pragma once

#include <string>
#include <vector>

#include "css/rules.h"

namespace tenter::css {

struct Breakpoint {
    double width = 0;       ///< CSS px
    std::string condition;  ///< the first of the sheet's that changes there, `(max-width: 700px)`
};

/// Of the media conditions that rules of `sheet` stand in; rising, each width once.
std::vector<Breakpoint> breakpointsOf(const Sheet& sheet);

}  // namespace tenter::css
