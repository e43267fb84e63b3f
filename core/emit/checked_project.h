// The findings of one project among several, for the formats of pipelines.
#pragma once

#include <string>

#include "checks/checks.h"

namespace tenter::emit {

/// A project that was checked.
struct CheckedProject {
    std::string file;       ///< as named on the command line
    std::string text;       ///< its content, for line numbers; may be empty
    std::string className;  ///< of the variant that was checked
    checks::Checked checked;
};

}  // namespace tenter::emit
