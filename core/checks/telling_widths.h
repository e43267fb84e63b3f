// The few widths that show a row whole.
#pragma once

#include <string>
#include <vector>

#include "checks/finding.h"
#include "project/project.h"

namespace tenter::checks {

struct TellingWidth {
    double width = 0;  ///< of the viewport, CSS px
    std::string why;   ///< `last width of 1 column`
};

/// The ends of the range, both sides of each breakpoint within it, and where the first of `findings` is
/// worst; rising, each width once, with all its reasons.
std::vector<TellingWidth> tellingWidths(const project::Project& project, std::size_t variant,
                                        const std::vector<Finding>& findings = {});

}  // namespace tenter::checks
