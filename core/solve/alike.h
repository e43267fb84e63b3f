// Type of the same size in every variant: which bands then need one ramp between them.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "project/project.h"
#include "solve/demands.h"
#include "solve/ramps.h"

namespace tenter::solve {

/// Bands that overlap, each with the next: type of the same size in all of them is one straight line, which
/// needs no more than one ramp. There may be more ways where ramps bend within a band; they are not sought.
struct AlikeBands {
    struct Band {
        std::size_t variant = 0, band = 0;
    };
    std::vector<Band> bands;
    sweep::Interval widths;  ///< viewport widths of all of them, CSS px
    bool unlike = false;     ///< true if some variant has a breakpoint within them
};

/// What `demands` ask of `role`: empty if it need not be the same in every variant.
std::vector<AlikeBands> alikeBands(const project::Project& project, const std::vector<Demand>& demands,
                                   const std::string& role);

/// Ends for `RampsSought::split`: viewport widths that bands alike share, else the band's own.
RampsSought::Ends alikeEnds(const project::Project& project, const std::vector<AlikeBands>& alike,
                            std::size_t variant);

/// Every variant if one of the project's wishes is for the same size in all, else `variants`.
std::vector<std::size_t> solvedTogether(const project::Project& project, const project::Wishes& wishes,
                                        const std::vector<std::size_t>& variants);

/// A role's size said once, in the style, if it is one ramp in every band of every variant.
void sayOnce(project::Project& project, const std::string& role);

}  // namespace tenter::solve
