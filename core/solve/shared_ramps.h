// Roles with the same size in every variant: the bands that must share one ramp.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "project/project.h"
#include "solve/ramps.h"
#include "solve/wish.h"

namespace tenter::solve {

/// Bands of several variants that overlap, each with the next. One straight line over all of them gives the
/// same size everywhere. (Ramps that bend inside a band could do so too; they are not considered.)
struct BandGroup {
    struct Member {
        std::size_t variant = 0, band = 0;
    };
    std::vector<Member> members;
    sweep::Interval widths;          ///< viewport widths of all of them, CSS px
    bool breakpointsDiffer = false;  ///< some variant has a breakpoint inside `widths`
};

/// The groups that `wishes` require for `role`. Empty if it need not have the same size in every variant.
std::vector<BandGroup> bandGroups(const project::Project& project, const std::vector<Wish>& wishes,
                                  const std::string& role);

/// Ends for `RampSet::split`: a group's widths for its members, else the band's own.
RampSet::Ends groupEnds(const project::Project& project, const std::vector<BandGroup>& groups,
                        std::size_t variant);

/// The variants to solve: every one if a wish requires the same size in all of them, else `variants`.
std::vector<std::size_t> variantsToSolve(const project::Project& project,
                                         const project::Wishes& projectWishes,
                                         const std::vector<std::size_t>& variants);

/// Moves the role's size to the style if every band of every variant has the same ramp.
void moveSizeToStyle(project::Project& project, const std::string& role);

}  // namespace tenter::solve
