// What checks are told besides the project: break profile, audience.
#pragma once

#include <memory>

#include "checks/audience.h"
#include "project/project.h"
#include "text/profile.h"

namespace tenter::checks {

struct Options {
    const text::BreakProfile* profile = nullptr;  ///< null: all, and what only one has is said
    Audience audience;                            ///< empty: shares are of the range of widths
    /// The project before a trial (project/trial.h) changed its copy; null: nothing is tried. Findings call
    /// parts by its copy, and say nothing of words that are not its own.
    std::shared_ptr<const project::Project> untried = nullptr;
};

}  // namespace tenter::checks
