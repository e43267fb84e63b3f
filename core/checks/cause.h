// Gathering what has one cause, over cards and widths, and telling it.
#pragma once

#include <algorithm>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "checks/finding.h"
#include "checks/subject.h"

namespace tenter::checks {

/// All that has one cause. `worst` is the greatest measure of badness added.
struct Cause {
    std::vector<sweep::Interval> widths;
    std::set<std::pair<std::size_t, std::size_t>> places;  ///< card and part
    std::size_t card = 0;                                  ///< of the worst
    std::size_t part = 0;
    sweep::Interval there;  ///< widths of the worst, CSS px
    double at = 0;          ///< where in them it is the worst
    double worst = 0;

    /// Returns true if this is the worst so far. It is so at `worstAt`, or all over the span: then it is
    /// shown in its middle, since engines' own wrap points lie a little beside those computed.
    bool add(std::size_t atCard, std::size_t atPart, sweep::Interval span, double badness,
             std::optional<double> worstAt = std::nullopt);
    [[nodiscard]] bool any() const { return !places.empty(); }
};

/// A finding and the key by which it is the same under another profile.
struct Told {
    Finding finding;
    std::string key;
};
using Findings = std::vector<Told>;

/// What a check says of a cause.
struct Saying {
    std::string check;
    Severity severity = Severity::Note;
    std::string source;
    std::string says;
    std::string key;  ///< which of the check's causes it is
};

/// Adds a finding for `cause`, if there is any.
void tell(Findings& out, const Cause& cause, const Saying& saying);

/// Spans in order, overlapping and touching ones joined.
void join(std::vector<sweep::Interval>& spans);

/// Sum of the spans' lengths, CSS px.
double lengthOf(const std::vector<sweep::Interval>& spans);

/// Where between `from` and `to` the line, which starts at `from`, is above 0.
std::optional<sweep::Interval> whereAbove(const units::Linear& line, double from, double to);

/// Where two parts' numbers of lines differ: `found(span, one, other)`, spans rising.
template <class Found>
void whereUnlike(const std::vector<sweep::Piece>& one, const std::vector<sweep::Piece>& other,
                 Found&& found) {
    std::size_t k = 0;
    for (const sweep::Piece& piece : one) {
        while (k < other.size() && other[k].to <= piece.from)
            ++k;
        for (std::size_t i = k; i < other.size() && other[i].from < piece.to; ++i) {
            const sweep::Interval both{std::max(piece.from, other[i].from), std::min(piece.to, other[i].to)};
            // Nearer than any engine's grid the two are one.
            if (both.to - both.from > 1e-3 && piece.lines != other[i].lines)
                found(both, piece.lines, other[i].lines);
        }
    }
}

/// The part of a piece within `range`: its line then starts at the new `from`. Empty if there is none.
template <class Piece>
std::optional<sweep::Interval> within(const Piece& piece, const sweep::Interval& range) {
    const sweep::Interval cut{std::max(piece.from, range.from), std::min(piece.to, range.to)};
    if (cut.from < cut.to) return cut;
    return std::nullopt;
}

}  // namespace tenter::checks
