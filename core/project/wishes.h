// Wishes: conditions on font sizes at every width. Checks report where they do not hold; `solve` finds ramps
// that satisfy them.
#pragma once

#include <algorithm>
#include <limits>
#include <optional>
#include <string>
#include <vector>

#include "project/members.h"
#include "units/length.h"

namespace tenter::project {

struct Project;  // project.h

/// The objective of solving. Calmest: the smallest change over the widths.
enum class Aim { Nearest, Largest, Calmest };
/// The size on both sides of a breakpoint: any, the same, or the same share of the column width.
enum class AtBreakpoints { Free, Same, Proportional };

/// The measure of a text with fewer lines is not checked.
inline constexpr int measuredLines = 3;

/// The wishes for one role at viewport widths above `from`, up to `upTo` (CSS px; unset: no limit). Where two
/// entries for a role set the same member, the later one holds.
struct RoleWishes {
    std::string role;
    std::optional<double> from, upTo;
    std::optional<int> lines;                         ///< at most, or as many as forced line breaks make
    std::optional<double> leastMeasure, mostMeasure;  ///< characters per line
    std::optional<double> leastSize, mostSize;        ///< CSS px
    std::optional<bool> locked;                       ///< ramps must not change
    std::optional<std::string> ratioTo;               ///< the role whose size the next two multiply
    std::optional<double> ratio, leastRatio;          ///< exactly; at least
    std::optional<double> growth;                     ///< at most, CSS px per 100 px of viewport width
    std::optional<bool>
        withColumn;              ///< type must not grow where its column narrows, or shrink where it widens
    std::optional<double> zoom;  ///< zoom factor at which text must be able to reach twice its size
    std::optional<AtBreakpoints> breakpoints;
    std::optional<bool> sameInVariants;  ///< at each width every variant has the same size
    FileKeys fileKeys = {};
    template <class V>
    static void members(V&& v) {
        v("role", &RoleWishes::role);
        v("from", &RoleWishes::from);
        v("upTo", &RoleWishes::upTo);
        v("lines", &RoleWishes::lines);
        v("leastMeasure", &RoleWishes::leastMeasure);
        v("mostMeasure", &RoleWishes::mostMeasure);
        v("leastSize", &RoleWishes::leastSize);
        v("mostSize", &RoleWishes::mostSize);
        v("locked", &RoleWishes::locked);
        v("ratioTo", &RoleWishes::ratioTo);
        v("ratio", &RoleWishes::ratio);
        v("leastRatio", &RoleWishes::leastRatio);
        v("growth", &RoleWishes::growth);
        v("withColumn", &RoleWishes::withColumn);
        v("zoom", &RoleWishes::zoom);
        v("breakpoints", &RoleWishes::breakpoints);
        v("sameInVariants", &RoleWishes::sameInVariants);
    }
    friend bool operator==(const RoleWishes&, const RoleWishes&) = default;
};

/// All wishes of a project.
struct Wishes {
    std::optional<Aim> aim;
    std::optional<units::Length> grid;  ///< sizes are multiples of it, px or rem; 0: no grid
    std::optional<double> reserve;      ///< share by which text must be able to grow without another line
    std::optional<double> slack;        ///< smallest slack where the line count is limited
    std::optional<double> narrowSlack;  ///< the same at viewport widths below 500 px
    std::vector<int> without;           ///< indices of cards that wishes ignore, from 0
    std::vector<RoleWishes> roles;
    FileKeys fileKeys;
    friend bool operator==(const Wishes&, const Wishes&) = default;
};

/// `under` with the members that `wishes` sets replaced by those.
Wishes overlaid(const Wishes& under, const Wishes& wishes);

/// The wishes that hold by default. Findings use them too.
Wishes defaultWishes(const Project& project);

/// The default wishes overlaid with those of the project. Every member of `Wishes` is set.
Wishes effectiveWishes(const Project& project);

/// A wish's value and the viewport widths that it holds for: above `from`, up to `to`, CSS px.
template <class T>
struct WishRange {
    double from = 0;
    double to = 0;
    T value{};
};

/// The values of `member` for `role`, by ascending ranges of widths that do not overlap.
template <class T>
std::vector<WishRange<T>> wishRanges(const Wishes& wishes, const std::string& role,
                                     std::optional<T> RoleWishes::*member) {
    std::vector<WishRange<T>> all;
    for (const RoleWishes& entry : wishes.roles) {
        if (entry.role != role || !(entry.*member)) continue;
        const double from = entry.from.value_or(0);
        const double to = entry.upTo.value_or(std::numeric_limits<double>::infinity());
        std::vector<WishRange<T>> left;
        for (const WishRange<T>& one : all) {
            if (one.from < std::min(one.to, from))
                left.push_back({one.from, std::min(one.to, from), one.value});
            if (std::max(one.from, to) < one.to) left.push_back({std::max(one.from, to), one.to, one.value});
        }
        left.push_back({from, to, *(entry.*member)});
        all = std::move(left);
    }
    std::sort(all.begin(), all.end(),
              [](const WishRange<T>& a, const WishRange<T>& b) { return a.from < b.from; });
    return all;
}

}  // namespace tenter::project
