// Leeway: the range in which a breakpoint, gap, padding or row width can change while all wishes stay
// satisfied.
#pragma once

#include "solve/solve.h"

namespace tenter::solve {

/// The setting that `leewayOf` varies, in one band of a variant. `Breakpoint` is where that band ends.
enum class LeewaySetting { Breakpoint, ColumnGap, CardPadding, RowWidth };

/// Values for which every wish on lines, measure, size and words holds at every width.
struct LeewayRange {
    double from = 0, to = 0;
    /// True if a wish is violated beyond that end. False if no values beyond it were tested.
    bool limitedBelow = false, limitedAbove = false;
    std::vector<Wish> violatedBelow, violatedAbove;  ///< beyond the ends
    /// The current value, or, if it violates a wish or is close to doing so, a value further inside.
    double suggested = 0;
};

/// Values are in the setting's current unit; a breakpoint is in CSS px.
struct Leeway {
    double current = 0;
    units::Unit unit = units::Unit::Px;
    std::vector<Wish> violated;        ///< by the current value
    std::optional<LeewayRange> range;  ///< the one that contains the current value, or else the nearest
    bool isCancelled = false;          ///< `Options::cancellation` stopped the work; nothing else is set
};

/// The leeway of `setting` in band `band` of the variant, with sizes unchanged. Empty if the band has no such
/// value: the last band has no end, and a row width may be a keyword. Padding is that of the card, left and
/// right together.
std::optional<Leeway> leewayOf(const project::Project& project, std::size_t variant, std::size_t band,
                               LeewaySetting setting, text::ParagraphStore& store,
                               const Options& options = {});

/// The project with the setting changed to `value`, in `unit`, in that band only; a breakpoint is the end of
/// that band.
project::Project withValue(const project::Project& project, std::size_t variant, std::size_t band,
                           LeewaySetting setting, double value, units::Unit unit);

/// `Breakpoint at 900 px (2 to 3 columns): from 812 to 934 px (now 900 px).`, then what other values violate.
std::string describe(const project::Project& project, std::size_t variant, std::size_t band,
                     LeewaySetting setting, const Leeway& leeway);

}  // namespace tenter::solve
