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
///     lines=2               at most 2 lines
///     measure=35-75         characters per line: from, to, or one of them (35-, -75)
///     size=15-20            CSS px, likewise; size=locked keeps the current sizes
///     ratio=body*1.25       1.25 times the size of another role; ratio=body*1.25- at least that
///     growth=0.8            at most 0.8 px per 100 px of width
///     column=with           no growth where the column narrows; column=free
///     zoom=300%             browser zoom at which the text is twice as large
///     breakpoints=same      the same size on both sides; or proportional, or free
///     variants=same         the same size in every variant; variants=free
///
///     aim=nearest|largest|calmest   grid=0.5px   reserve=20%   slack=1%   narrow-slack=2%   without=1,3
///
/// `without` counts cards from 1.
bool addWish(const std::string& text, const project::Project& project, project::Wishes& wishes,
             project::Problems& problems);

}  // namespace tenter::solve
