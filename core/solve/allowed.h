// The sizes of type that wishes allow at each width, for plots: the region a ramp may not leave.
#pragma once

#include "solve/solve.h"
#include "sweep/curves.h"

namespace tenter::solve {

/// Over the project's range of viewport widths, in CSS px. Each curve is a run of widths; between runs
/// nothing bounds the size.
struct Allowed {
    std::vector<sweep::Curve> most;
    std::vector<sweep::Curve> least;
};

/// What lines, measure, words and figures wished of role `role` allow in variant `variant`, under every break
/// profile that `options` names; where it is to be the same in every variant, in any of them. What couples
/// sizes (ratios, zoom, growth) is not in it.
Allowed allowedSizes(const project::Project& project, std::size_t variant, const std::string& role,
                     text::ParagraphStore& store, const Options& options = {});

}  // namespace tenter::solve
