// With sizes as they are: for which breakpoints, gaps, paddings and row widths the wishes hold.
#pragma once

#include "solve/solve.h"

namespace tenter::solve {

/// What is varied, one at a time, in a band of a variant; a breakpoint is where that band ends.
enum class Varied { Breakpoint, ColumnGap, CardPadding, RowWidth };

/// A run of values for which every wish on lines, measure, size and words holds at every width.
struct Run {
    double from = 0, to = 0;
    /// True if a wish breaks beyond that end; else values were looked at no further.
    bool breaksBelow = false, breaksAbove = false;
    std::vector<Demand> below, above;  ///< what breaks there
    double best = 0;  ///< what is there, unless a wish breaks there or nearly; then a value well within
};

/// Values in the unit the setting has now; a breakpoint in CSS px.
struct Leeway {
    double now = 0;
    units::Unit unit = units::Unit::Px;
    std::vector<Demand> broken;  ///< by what is there
    std::optional<Run> run;      ///< the one that holds what is there, or else the nearest
};

/// Empty if band `band` of the variant has nothing of the kind to vary: the last band ends nowhere, a row's
/// width may be a keyword. Padding is the card's at left and right alike.
std::optional<Leeway> leewayOf(const project::Project& project, std::size_t variant, std::size_t band,
                               Varied varied, text::ParagraphStore& store, const Options& options = {});

/// The project with `value`, in the unit that leeway tells it in, in that band of the variant alone; a
/// breakpoint is the end of that band.
project::Project withValue(const project::Project& project, std::size_t variant, std::size_t band,
                           Varied varied, double value, units::Unit unit);

/// In a sentence: `The band of 3 columns may end anywhere from 812 to 934 px (900 px now).`
std::string sentenceOf(const project::Project& project, std::size_t variant, std::size_t band, Varied varied,
                       const Leeway& leeway);

}  // namespace tenter::solve
