// Converts ramps over the viewport width to ramps over the card width, and back.
#pragma once

#include <string>
#include <vector>

#include "layout/layout.h"
#include "project/problem.h"
#include "project/project.h"

namespace tenter::emit {

/// The project with every ramp of the variants with the indices `variants` following `target`. The sizes at
/// both ends of each band do not change. `problems` lists the sizes that change in between, because the card
/// width is not linear in the viewport width, and the ramps that cannot be converted, because the card width
/// does not change.
project::Project following(const project::Project& project, project::Follow target,
                           const std::vector<std::size_t>& variants, text::ParagraphStore& store,
                           const text::BreakProfile& profile, project::Problems& problems);

}  // namespace tenter::emit
