// Options of checks: break profile, audience, the project without its text test.
#pragma once

#include <memory>

#include "checks/audience.h"
#include "project/project.h"
#include "text/profile.h"

namespace tenter::checks {

struct Options {
    const text::BreakProfile* profile = nullptr;  ///< null: all profiles, compared
    Audience audience;                            ///< empty: shares are of the range of widths
    /// The project without the text test (project/trial.h) that changed its copy; null if there is none.
    /// Findings name parts by its copy, and checks of words leave out changed copy.
    std::shared_ptr<const project::Project> untried = nullptr;
};

}  // namespace tenter::checks
