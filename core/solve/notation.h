// Wishes in one word, for the command line: `heading.lines=2`, `body.measure=35-75`, `grid=0.5px`.
#pragma once

#include <string>

#include "project/problem.h"
#include "project/project.h"

namespace tenter::solve {

/// Adds the wish that `text` states to `wishes`. False if it is invalid; then `problems` says why, with
/// `text` as the file.
///
///     ROLE.KEY=VALUE        at every width; ROLE.KEY=VALUE@981-, @-980 or @600-980 at some widths, CSS px
///     KEY                   one of `wishKeys()` (registry.h), such as lines=2 or measure=35-75
///
///     aim=nearest|largest|calmest   grid=0.5px   reserve=20%   slack=1%   narrow-slack=2%   without=1,3
///
/// `without` counts cards from 1.
bool addWish(const std::string& text, const project::Project& project, project::Wishes& wishes,
             project::Problems& problems);

}  // namespace tenter::solve
