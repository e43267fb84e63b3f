// What checks are told besides the project: break profile, audience.
#pragma once

#include "checks/audience.h"
#include "text/profile.h"

namespace tenter::checks {

struct Options {
    const text::BreakProfile* profile = nullptr;  ///< null: all, and what only one has is said
    Audience audience;                            ///< empty: shares are of the range of widths
};

}  // namespace tenter::checks
