// Key widths: the few viewport widths that show how a row behaves.
#pragma once

#include <string>
#include <vector>

#include "checks/finding.h"
#include "project/project.h"

namespace tenter::checks {

struct KeyWidth {
    double width = 0;  ///< of the viewport, CSS px
    std::string why;   ///< `last width of 1 column`
};

/// The ends of the range, both sides of each breakpoint in it, and the worst width of the first finding.
/// Rising; each width once, with all its reasons.
std::vector<KeyWidth> keyWidths(const project::Project& project, std::size_t variant,
                                const std::vector<Finding>& findings = {});

}  // namespace tenter::checks
