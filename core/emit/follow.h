// Ramps turned from the viewport's width to the card's, and back.
#pragma once

#include <string>
#include <vector>

#include "layout/layout.h"
#include "project/problem.h"
#include "project/project.h"

namespace tenter::emit {

/// The project with every ramp of the variants at `variants` following `target`. Sizes at both ends of each
/// band stay as they were. Where they cannot in between, since the card's width is no straight line of the
/// viewport's, or at all, since it does not change, `problems` says so.
project::Project following(const project::Project& project, project::Follow target,
                           const std::vector<std::size_t>& variants, text::ParagraphStore& store,
                           const text::BreakProfile& profile, project::Problems& problems);

}  // namespace tenter::emit
