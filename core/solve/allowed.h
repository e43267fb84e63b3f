// The sizes that the wishes allow one role at each width, for plots.
#pragma once

#include "solve/solve.h"
#include "sweep/curves.h"

namespace tenter::solve {

/// Upper and lower bounds of a size over the project's range of viewport widths, CSS px. Between two curves
/// there is no bound.
struct Allowed {
    std::vector<sweep::Curve> most;
    std::vector<sweep::Curve> least;
    bool isCancelled = false;  ///< `Options::cancellation` stopped the work; there are no curves
};

/// The bounds that the wishes on lines, measure, words and size set for `role` in variant `variant`, under
/// the line-breaking rules that `options` names. If the role must have the same size in every variant, the
/// bounds of all variants apply. Wishes that couple sizes (ratio, zoom, growth …) are not included.
Allowed allowedSizes(const project::Project& project, std::size_t variant, const std::string& role,
                     text::ParagraphStore& store, const Options& options = {});

}  // namespace tenter::solve
