// Sizes that follow the width of the card: one ramp per role for every column count.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "project/problem.h"
#include "project/project.h"
#include "text/paragraph_store.h"

namespace tenter::solve {

/// A role's new ramp, and the width at which its size changes most.
struct CardRamp {
    std::string role;
    units::Ramp ramp;              ///< over the card's content width, CSS px
    double before = 0, after = 0;  ///< sizes at that width, CSS px
    double width = 0;              ///< viewport, CSS px
    std::size_t variant = 0;
};

struct CardScale {
    project::Project project;
    std::vector<CardRamp> roles;
};

/// `project` with one ramp per role, set in the style, that follows the card in every variant and band. It is
/// the least-squares fit to the current sizes over all viewport widths of all variants. Empty, with
/// `problems`, if cards cannot be containers.
std::optional<CardScale> toCardScale(const project::Project& project, text::ParagraphStore& store,
                                     project::Problems& problems);

/// The new ramps and the largest change of each, one sentence or two per role, then what browsers need.
std::vector<std::string> describe(const project::Project& project, const CardScale& scale);

}  // namespace tenter::solve
