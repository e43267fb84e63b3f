// Wishes on one line, for the command line: `heading.lines=2`, `body.measure=35-75`, `grid=0.5px`.
#pragma once

#include <string>

#include "project/problem.h"
#include "project/project.h"

namespace tenter::solve {

/// Adds to `wishes` what `text` says; false with a problem, whose file is `text`, if it says nothing sound.
///
///     ROLE.KEY=VALUE        at every width; ROLE.KEY=VALUE@981- or @-980 or @600-980 at some
///     lines=2               at most so many lines
///     measure=35-75         characters to a line: from, to, or one of them (35-, -75)
///     size=15-20            CSS px, likewise; size=locked: as it is
///     ratio=body*1.25       times another role's size; ratio=body*1.25- at least
///     growth=0.8            px for 100 px of width, at most
///     column=with           never against its column; column=free
///     zoom=300%             by which type can be had twice as large
///     breakpoints=same      or proportional, or free
///     variants=same         the same size in every variant; variants=free
///
///     aim=nearest|largest|calmest   grid=0.5px   reserve=20%   slack=1%   narrow-slack=2%   without=1,3
///
/// Cards of `without` are counted from 1, as people count.
bool addWish(const std::string& text, const project::Project& project, project::Wishes& wishes,
             project::Problems& problems);

}  // namespace tenter::solve
