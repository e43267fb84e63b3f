// The objective "stay near the current sizes" of the linear program.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "solve/model.h"

namespace tenter::solve {

// Objective weights. All were found by experiment on rows with deliberately wrong sizes; no source.
/// Objective weight of the main role at a band end. The other roles share the remainder equally.
inline constexpr double mainRoleShare = 0.75;
/// Weight of scaling a whole band end, relative to the weight of its sizes.
inline constexpr double bandEndWeight = 0.5;
/// Weight of scaling a whole variant, relative to the weight of its sizes.
inline constexpr double variantWeight = 0.28;
/// Weight of scaling the two ends of a band differently, relative to the weight of changing a size.
inline constexpr double slopeWeight = 0.3;
/// The same for the two sides of a breakpoint.
inline constexpr double stepWeight = 0.15;
/// Weight of the main role's largest change, relative to the weight of the whole variant.
inline constexpr double largestChangeWeight = 0.2;

/// A weighted sum of absolute deviations. Each size counts as a factor of its current size. The factors of
/// all roles at one band end should be equal, and so should those of all band ends of a variant. So if a few
/// sizes must change, only they change; if most sizes at a band end must, the whole band end is scaled; if
/// most band ends must, the whole variant is. This keeps the proportions between roles and between widths.
/// The main role has most of the weight: the others follow it.
class NearnessObjective {
public:
    /// Adds the objective to `program`. `weight` is its value when every size at a band end doubles.
    NearnessObjective(LinearProgram& program, const Model& model, double weight);

    // Refinements of an optimal solution. Each changes the objective of `program`, which must then be
    // minimised again; false if it changed nothing.

    /// If a variant had to grow by more than a sixth, its sizes were too small to be a guide: its main role
    /// should then start at `size` (CSS px) or more.
    bool raiseSmallRows(LinearProgram& program, double size) const;
    /// Penalises large steps of the main role at breakpoints and large growth over a band, where its sizes
    /// had to change. If the two ends of a band had to change in opposite directions, its slope was no guide:
    /// the band should then start at `size` (CSS px) and grow little.
    bool penaliseSteps(LinearProgram& program, double size) const;

private:
    /// Neighbouring sizes of the main role: the ends of a band, or the two sides of a breakpoint.
    struct Neighbours {
        BandEnd below, above;
        double weight = 0;
    };
    struct Scale {
        std::size_t variable = 0;  ///< factor of the current sizes
        double weight = 0;
    };
    struct VariantScale {
        std::size_t variable = 0;  ///< factor of the current sizes
        double weight = 0;
        double smallestSize = infinity;  ///< current, of the main role, CSS px
        std::size_t fromTarget = 0;      ///< deviation of the factor
    };
    void addScales(LinearProgram& program, const Model& model, double weight);
    void addNeighbours(LinearProgram& program, const Model& model, double weight);
    void addLargestChange(LinearProgram& program, const Model& model) const;

    std::map<std::string, double> shares_;  // of the weight of a band end, by role
    std::map<std::size_t, VariantScale> variants_;
    std::vector<Neighbours> neighbours_;
};

}  // namespace tenter::solve
