// The breakpoints of a stylesheet.
#pragma once

#include <string>
#include <vector>

#include "css/rules.h"

namespace tenter::css {

/// A viewport width at which a media condition of a stylesheet changes.
struct Breakpoint {
    double width = 0;  ///< CSS px
    std::string
        condition;  ///< the first condition of the sheet that changes there, such as `(max-width: 700px)`
};

/// The breakpoints of the media conditions of `sheet` that contain rules: ascending, each width once.
std::vector<Breakpoint> breakpointsOf(const Sheet& sheet);

}  // namespace tenter::css
