// Everything that is wrong, or could be better, with a row at any width.
#pragma once

#include <vector>

#include "checks/finding.h"
#include "checks/options.h"
#include "project/project.h"
#include "text/paragraph.h"

namespace tenter::checks {

/// A finding of a check that the project has silenced, and why.
struct Silenced {
    Finding finding;
    std::string reason;
};

struct Checked {
    std::vector<Finding> findings;   ///< errors first, then by share
    std::vector<Silenced> silenced;  ///< in the same order
};

/// Everything that checks find in variant `variant`. Takes two sweeps and little more.
Checked checkAll(const project::Project& project, std::size_t variant, text::ParagraphStore& store,
                 const Options& options = {});

/// What of it is not silenced: the findings of variant `variant`, errors first, then by share.
std::vector<Finding> check(const project::Project& project, std::size_t variant, text::ParagraphStore& store,
                           const Options& options = {});

}  // namespace tenter::checks
