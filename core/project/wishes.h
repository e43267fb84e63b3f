// Wishes: what should hold of the sizes of type at every width. Checks take their figures from them, `solve`
// finds ramps that keep them.
#pragma once

#include <algorithm>
#include <limits>
#include <optional>
#include <string>
#include <vector>

#include "project/described.h"
#include "units/length.h"

namespace tenter::project {

struct Project;  // project.h

enum class Aim { Nearest, Largest, Calmest };           ///< Calmest: least change over widths
enum class AtBreakpoints { Free, Same, Proportional };  ///< the same size, or the same share of the column

/// Copy of fewer lines has no measure to speak of.
inline constexpr int measuredLines = 3;

/// What is wished of one role at viewport widths past `from`, up to `upTo` (CSS px; all if unset). Where two
/// entries of a role say the same member, the later one holds.
struct RoleWishes {
    std::string role;
    std::optional<double> from, upTo;
    std::optional<int> lines;                         ///< at most, or as many as the copy forces
    std::optional<double> leastMeasure, mostMeasure;  ///< characters to a line
    std::optional<double> leastSize, mostSize;        ///< CSS px
    std::optional<bool> locked;                       ///< ramps stay as they are
    std::optional<std::string> ratioTo;               ///< the role that the next two are times of
    std::optional<double> ratio, leastRatio;          ///< exactly; at least
    std::optional<double> growth;                     ///< at most, CSS px for 100 px of viewport width
    std::optional<bool> withColumn;                   ///< type never goes against its column
    std::optional<double> zoom;                       ///< by which readers can have type twice as large
    std::optional<AtBreakpoints> breakpoints;
    std::optional<bool> sameInVariants;  ///< at each width every variant has the same size
    Remembered remembered = {};
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

struct Wishes {
    std::optional<Aim> aim;
    std::optional<units::Length> grid;  ///< sizes are multiples of it: px or rem; 0: as fine as can be
    std::optional<double> reserve;      ///< share by which copy may grow and keep its lines
    std::optional<double> slack;        ///< share of a line kept free where lines are counted
    std::optional<double> narrowSlack;  ///< the same at widths under 500 px
    std::vector<int> without;           ///< cards left out of account, from 0
    std::vector<RoleWishes> roles;
    Remembered remembered;
    friend bool operator==(const Wishes&, const Wishes&) = default;
};

/// `wishes` of a person laid on `under`: what they say wins, the rest stays.
Wishes laidOn(const Wishes& under, const Wishes& wishes);

/// What holds if nothing is wished: the figures that findings are told by.
Wishes usualWishes(const Project& project);

/// The project's wishes on the usual ones: every member of `Wishes` is set.
Wishes wishesOf(const Project& project);

/// A wish's value and the viewport widths it holds for: past `from`, up to `to`. CSS px.
template <class T>
struct Held {
    double from = 0;
    double to = 0;
    T value{};
};

/// What `wishes` say of `member` for `role`, by widths, rising, apart.
template <class T>
std::vector<Held<T>> held(const Wishes& wishes, const std::string& role,
                          std::optional<T> RoleWishes::*member) {
    std::vector<Held<T>> all;
    for (const RoleWishes& entry : wishes.roles) {
        if (entry.role != role || !(entry.*member)) continue;
        const double from = entry.from.value_or(0);
        const double to = entry.upTo.value_or(std::numeric_limits<double>::infinity());
        std::vector<Held<T>> left;
        for (const Held<T>& one : all) {
            if (one.from < std::min(one.to, from))
                left.push_back({one.from, std::min(one.to, from), one.value});
            if (std::max(one.from, to) < one.to) left.push_back({std::max(one.from, to), one.to, one.value});
        }
        left.push_back({from, to, *(entry.*member)});
        all = std::move(left);
    }
    std::sort(all.begin(), all.end(), [](const Held<T>& a, const Held<T>& b) { return a.from < b.from; });
    return all;
}

}  // namespace tenter::project
