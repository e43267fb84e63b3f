// Collects the places with one cause, over cards and widths, and reports them as one finding.
#pragma once

#include <algorithm>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "checks/finding.h"
#include "checks/subject.h"

namespace tenter::checks {

/// Places and widths with one cause, and the worst of them.
struct Cause {
    std::vector<sweep::Interval> widths;
    std::set<project::PartRef> places;
    project::PartRef place;  ///< the worst
    sweep::Interval there;   ///< widths of the worst place, CSS px
    double at = 0;           ///< width within them at which it is worst, CSS px
    double worst = 0;        ///< the greatest badness added

    /// Adds a place; returns true if it is the worst so far. Without `worstAt` the place is equally bad over
    /// all of `span` and `at` becomes its middle, because a browser's wrap points are a little beside the
    /// computed ones.
    bool add(project::PartRef part, sweep::Interval span, double badness,
             std::optional<double> worstAt = std::nullopt);
    [[nodiscard]] bool any() const { return !places.empty(); }
    /// The widths around the worst place at which any place has the cause.
    [[nodiscard]] sweep::Interval runOfWorst() const;
};

/// A finding, and the key that identifies it among those of its check under another break profile.
struct KeyedFinding {
    Finding finding;
    std::string key;
};
using Findings = std::vector<KeyedFinding>;

/// What a check reports about a cause.
struct Description {
    Severity severity = Severity::Note;
    std::string source;
    Statement statement;
    std::string key = {};  ///< identifies the cause among those of the check
};

/// Adds a finding for `cause` unless it has no places.
void report(Findings& out, const Cause& cause, const Description& description);

/// Sorts the spans and joins those that overlap or touch.
void join(std::vector<sweep::Interval>& spans);

/// The width in `span` that shows what is worst at `at`: the nearest whole number, if the span has one.
/// `least` is the first width of the project, which has no band below it. CSS px.
double shownWidth(const sweep::Interval& span, double at, double least);

/// Sum of the spans' lengths, CSS px.
double lengthOf(const std::vector<sweep::Interval>& spans);

/// The widths between `from` and `to` at which `line`, which starts at `from`, is above 0. Empty if none.
std::optional<sweep::Interval> whereAbove(const units::Linear& line, double from, double to);

/// Narrower ranges are no difference: two events nearer than any browser's grid are the same event. CSS px.
inline constexpr double leastDifference = 1e-3;

/// Calls `found(span, linesOfOne, linesOfOther)` for the spans, rising, in which two parts have different
/// line counts.
template <class Found>
void whereLineCountsDiffer(const std::vector<sweep::Piece>& one, const std::vector<sweep::Piece>& other,
                           Found&& found) {
    std::size_t k = 0;
    for (const sweep::Piece& piece : one) {
        while (k < other.size() && other[k].to <= piece.from)
            ++k;
        for (std::size_t i = k; i < other.size() && other[i].from < piece.to; ++i) {
            const sweep::Interval both{std::max(piece.from, other[i].from), std::min(piece.to, other[i].to)};
            if (both.to - both.from > leastDifference && piece.lines != other[i].lines)
                found(both, piece.lines, other[i].lines);
        }
    }
}

/// The part of `piece` within `range`. The piece's lines then start at the new `from`. Empty if none.
template <class Piece>
std::optional<sweep::Interval> within(const Piece& piece, const sweep::Interval& range) {
    const sweep::Interval cut{std::max(piece.from, range.from), std::min(piece.to, range.to)};
    if (cut.from < cut.to) return cut;
    return std::nullopt;
}

}  // namespace tenter::checks
