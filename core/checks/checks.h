// Everything that is wrong, or could be better, with a row at any width.
#pragma once

#include <vector>

#include "checks/finding.h"
#include "checks/options.h"
#include "project/project.h"
#include "text/paragraph.h"

namespace tenter::checks {

/// The findings of variant `variant`, errors first, then by share. Takes two sweeps and little more.
std::vector<Finding> check(const project::Project& project, std::size_t variant, text::ParagraphStore& store,
                           const Options& options = {});

}  // namespace tenter::checks
