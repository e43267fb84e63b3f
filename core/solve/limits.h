// What copy and boxes allow: the largest and least size of type for one wish, as straight lines over widths.
#pragma once

#include <vector>

#include "solve/demands.h"
#include "solve/narrowest.h"

namespace tenter::solve {

/// A variant under one break profile, its geometry known for each role that is looked at.
struct Sight {
    std::size_t variant = 0;
    const layout::PreparedRow* row = nullptr;
    std::vector<std::vector<Stretch>>
        roles;  ///< by role, as `row->roles()` counts them; empty: not looked at
};

/// Which copy a limit is due to.
struct Witness {
    std::size_t card = 0, part = 0;
    LineShape line;     ///< the line or word that decides
    bool copy = false;  ///< false: no copy decides, a figure was wished
};

/// A size that may not be exceeded (a cap) or fallen short of, CSS px.
struct Bound {
    double size = 0;
    Witness by;
};

/// Over the widths past `widths.from`, up to `widths.to`, the bound runs straight from `start` to `end`.
struct Limit {
    bool cap = true;
    std::size_t stretch = 0;  ///< which of the role's
    sweep::Interval widths;
    Bound start, end;
};

/// The limits that `demand`, one of lines, measure, size or words, sets its role, sorted by width. At each
/// width all of them hold. Lines are to have a share of `slack` free (`narrowSlack` under 500 px) and room
/// for `reserve` more copy.
struct Margins {
    double slack = 0;
    double narrowSlack = 0;
    double reserve = 0;
};
std::vector<Limit> limitsOf(const Sight& sight, std::uint32_t role, const Demand& demand,
                            const Margins& margins, const std::vector<bool>& without,
                            const Shortened* shortened = nullptr, const Witness* shortenedAt = nullptr);

/// CSS px of viewport width under which `narrowSlack` holds.
inline constexpr double narrowWidths = 500;

}  // namespace tenter::solve
