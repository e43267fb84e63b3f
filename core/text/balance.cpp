#include "text/balance.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <limits>

#include "units/quadratic.h"

namespace tenter::text {
namespace {

std::vector<Line> greedyLines(const Paragraph& paragraph, LineQuery query, const BreakProfile& profile,
                              double width) {
    query.balance = false;
    query.available = width;
    std::vector<Line> lines;
    breakLines(paragraph, query, profile, lines);
    return lines;
}

bool allFit(const std::vector<Line>& lines, double width) {
    return std::all_of(lines.begin(), lines.end(),
                       [&](const Line& line) { return line.width <= width + fitTolerance; });
}

bool canBeBalanced(const std::vector<Line>& lines, const LineQuery& query, std::size_t maxLines) {
    return lines.size() >= 2 && lines.size() <= maxLines && allFit(lines, query.available);
}

/// The index of the opportunity at which each line ends; empty if a line ends inside a word.
std::vector<std::uint32_t> endsOf(const Paragraph& paragraph, const std::vector<Line>& lines) {
    std::vector<std::uint32_t> ends;
    const auto& all = paragraph.opportunities();
    for (const Line& line : lines) {
        const auto end =
            std::lower_bound(all.begin(), all.end(), line.next,
                             [](const Opportunity& o, std::uint32_t next) { return o.cluster < next; });
        if (end == all.end() || end->cluster != line.next) return {};
        ends.push_back(static_cast<std::uint32_t>(end - all.begin()));
    }
    return ends;
}

/// True for a paragraph with fewer than three opportunities besides its end: Chromium then balances it by
/// width.
bool hasFewOpportunities(const Paragraph& paragraph) {
    return paragraph.opportunities().size() < 4;
}

/// Compares lines and penalties at one width.
struct SingleWidthJudge {
    double available;
    [[nodiscard]] bool fits(double width) const { return width <= available + fitTolerance; }
    [[nodiscard]] bool less(double a, double b) const { return a < b; }
};

/// Compares lines and penalties over a range of widths, and records how far the outcomes are valid.
class RangeJudge {
public:
    explicit RangeJudge(const units::Linear& available) : lines_(available, 0) {}
    bool fits(const units::Linear& width) { return lines_.fits(width); }
    bool less(const units::Quadratic& a, const units::Quadratic& b) {
        const units::Order which = units::order(a, b);
        until_ = std::min(until_, which.until);
        return which.less;
    }
    [[nodiscard]] double until() const { return std::min(until_, lines_.until()); }

private:
    LinearLineCounter lines_;
    double until_ = std::numeric_limits<double>::infinity();
};

/// Finds the line ends with the smallest total penalty, by dynamic programming over the opportunities.
template <class Number, class Cost, class Judge>
class PenaltyMinimiser {
public:
    PenaltyMinimiser(const Paragraph& paragraph, const LineQueryOf<Number>& query, Judge& judge)
        : paragraph_(paragraph),
          query_(query),
          linePenalty_(4 * units::product(query.available, query.size)),
          firstOrphan_(firstOrphan(paragraph)),
          smallest_(paragraph.opportunities().size()),
          lineStart_(smallest_.size(), unreached) {
        for (std::size_t end = 0; end < smallest_.size(); ++end)
            reach(end, judge);
    }

    /// Line ends, as indices into the opportunities; empty if no way of breaking fits.
    [[nodiscard]] std::vector<std::uint32_t> ends() const {
        if (lineStart_.back() == unreached) return {};
        std::vector<std::uint32_t> chosen;
        for (std::size_t end = lineStart_.size() - 1;; end = lineStart_[end] - 1) {
            chosen.push_back(static_cast<std::uint32_t>(end));
            if (lineStart_[end] == 0) break;
        }
        std::reverse(chosen.begin(), chosen.end());
        return chosen;
    }

private:
    static constexpr std::size_t unreached = std::numeric_limits<std::size_t>::max();

    /// The first of the opportunities that leave only the last word, or a part of it, for the last line: that
    /// before the word, and its soft hyphens. Measured in Chromium 156.
    static std::size_t firstOrphan(const Paragraph& paragraph) {
        const auto& ends = paragraph.opportunities();
        std::size_t first = ends.size() - 2;
        while (first > 0 && ends[first].kind == Opportunity::Kind::SoftHyphen)
            --first;
        return first;
    }

    void reach(std::size_t end, Judge& judge) {
        const auto& ends = paragraph_.opportunities();
        for (std::size_t before = end + 1; before-- > 0;) {
            // The line that starts after opportunity `before - 1` and ends at opportunity `end`.
            if (before > 0 && lineStart_[before - 1] == unreached) continue;
            const std::uint32_t first = before == 0 ? 0 : ends[before - 1].cluster;
            const double correction = before == 0 ? 0 : ends[before - 1].startCorrection;
            const Number width = lineWidth(paragraph_, query_, first, correction, ends[end]);
            if (!judge.fits(width)) break;
            const Number spare = query_.available - width;
            Cost cost = units::product(spare, spare) + linePenalty_;
            if (before > 0) cost = smallest_[before - 1] + cost;
            if (end >= firstOrphan_ && end + 1 < ends.size()) cost = cost + Cost(10000);
            if (ends[end].kind == Opportunity::Kind::SoftHyphen) cost = cost + 0.5 * linePenalty_;
            if (lineStart_[end] == unreached || judge.less(cost, smallest_[end])) {
                smallest_[end] = cost;
                lineStart_[end] = before;
            }
            if (before > 0 && ends[before - 1].kind == Opportunity::Kind::Forced) break;
        }
    }

    const Paragraph& paragraph_;
    const LineQueryOf<Number>& query_;
    Cost linePenalty_;
    std::size_t firstOrphan_;
    std::vector<Cost> smallest_;
    std::vector<std::size_t> lineStart_;
};

/// The end of the range, in CSS px past its start, in which no way of breaking with more lines than `ends`
/// has a smaller penalty; 0 if this simple bound does not apply. The widths of m lines add up to at most T,
/// the width of the whole text, so their penalty is at least (m · available − T)² / m plus m times the
/// penalty of a line, which grows with m.
double rangeWithoutMoreLines(const Paragraph& paragraph, const LinearLineQuery& query,
                             const std::vector<std::uint32_t>& ends) {
    const auto& all = paragraph.opportunities();
    const bool plain = std::all_of(all.begin(), all.end(), [](const Opportunity& o) {
        return o.startCorrection == 0 && o.endCorrection == 0 && o.kind != Opportunity::Kind::SoftHyphen;
    });
    if (!plain || ends.empty()) return 0;
    double until = std::numeric_limits<double>::infinity();
    for (const units::Linear& spacing : {query.letterSpacing, query.wordSpacing}) {
        if (spacing.value < 0) return 0;
        if (spacing.slope < 0) until = std::min(until, -spacing.value / spacing.slope);
    }
    const units::Quadratic linePenalty = 4 * units::product(query.available, query.size);
    LinearLineCounter counter(query.available, 0);
    units::Quadratic cost;
    LineStart start;
    for (const std::uint32_t end : ends) {
        const Opportunity& at = all[end];
        const units::Linear width = lineWidth(paragraph, query, start.cluster, start.correction, at);
        if (!counter.fits(width)) return 0;
        const units::Linear spare = query.available - width;
        cost = cost + units::product(spare, spare) + linePenalty;
        if (end + 2 == all.size()) cost = cost + units::Quadratic(10000);
        start = {at.cluster, at.startCorrection};
    }
    const auto last = static_cast<std::uint32_t>(paragraph.clusters().size());
    const units::Linear whole = paragraph.ems(0, last) * query.size +
                                paragraph.letters(0, last) * query.letterSpacing +
                                paragraph.words(0, last) * query.wordSpacing;
    const double more = static_cast<double>(ends.size()) + 1;
    const units::Linear spare = more * query.available - whole;
    const units::Order enoughRoom = units::order(units::Linear(0), spare);
    const units::Order higherPenalty =
        units::order(cost, (1 / more) * units::product(spare, spare) + more * linePenalty);
    if (!enoughRoom.less || !higherPenalty.less) return 0;
    return std::min({until, counter.until(), enoughRoom.until, higherPenalty.until});
}

/// Line ends at the narrowest width that needs no more lines than `lines`.
std::vector<std::uint32_t> balancedByWidth(const Paragraph& paragraph, const LineQuery& query,
                                           const BreakProfile& profile, std::vector<Line> lines) {
    std::vector<std::uint32_t> ends = endsOf(paragraph, lines);
    if (ends.empty()) return {};
    double low = 0;
    double high = query.available;
    // Bisection. The widest of the current lines is a width that is known to suffice. A width at which a word
    // must be cut does not suffice, even with the same number of lines.
    while (true) {
        double widest = 0;
        for (const Line& line : lines)
            widest = std::max(widest, line.width);
        high = std::min(high, widest);
        if (high - low < 1.0 / 1024) return ends;
        const double middle = (low + high) / 2;
        std::vector<Line> tried = greedyLines(paragraph, query, profile, middle);
        std::vector<std::uint32_t> triedEnds = endsOf(paragraph, tried);
        if (!triedEnds.empty() && triedEnds.size() <= ends.size() && allFit(tried, middle)) {
            lines = std::move(tried);
            ends = std::move(triedEnds);
        } else {
            low = middle;
        }
    }
}

/// App units in a CSS px: Firefox balances in whole steps of them.
constexpr int stepsInPx = 60;
/// CSS px; far more than an engine can lay out.
constexpr double widestBalanced = 1e8;
/// Keeps a whole number from being truncated to one less, because of the rounding of doubles.
constexpr double noise = 1e-6;

/// Height of all lines in CSS px; 0 if the query does not state it.
double heightOf(const Paragraph& paragraph, const std::vector<Line>& lines, const LineQuery& query,
                const BreakProfile& profile) {
    if (query.lineHeight == 0 || !paragraph.unlikeStruts()) return 0;
    double height = 0;
    for (const Line& line : lines) {
        const LineExtent extent = extentOf(paragraph, line, query.heightSize, query.lineHeight, profile);
        height += extent.above + extent.below;
    }
    return height;
}

/// The least width in CSS px above that of `lines` at which one of them may end later.
double nextWidth(const Paragraph& paragraph, const LineQuery& query, const std::vector<Line>& lines) {
    const auto& all = paragraph.opportunities();
    double next = query.available;
    for (const Line& line : lines) {
        const auto at =
            std::upper_bound(all.begin(), all.end(), line.next,
                             [](std::uint32_t cluster, const Opportunity& o) { return cluster < o.cluster; });
        if (at == all.end()) break;
        next = std::min(next, lineWidth(paragraph, query, line.first, 0, *at));
    }
    return next;
}

}  // namespace

std::vector<std::uint32_t> balancedByInset(const Paragraph& paragraph, const LineQuery& query,
                                           const BreakProfile& profile, std::size_t maxLines) {
    std::vector<Line> lines = greedyLines(paragraph, query, profile, query.available);
    std::vector<std::uint32_t> ends = endsOf(paragraph, lines);
    if (lines.size() < 2 || lines.size() > maxLines || ends.empty() || query.available > widestBalanced)
        return {};
    const std::size_t count = lines.size();
    const double height = heightOf(paragraph, lines, query, profile);
    const auto room = static_cast<std::int64_t>(query.available * stepsInPx + noise);
    const auto suffices = [&](std::int64_t inset) {
        lines = greedyLines(paragraph, query, profile, static_cast<double>(room - inset) / stepsInPx);
        ends = endsOf(paragraph, lines);
        return ends.size() == count && std::abs(heightOf(paragraph, lines, query, profile) - height) < noise;
    };
    std::int64_t step = room / static_cast<std::int64_t>(count);
    std::int64_t inset = step;
    for (step /= 2; step > 0; step /= 2)
        inset += suffices(inset) ? step : -step;
    // From here on the engine goes back step by step; no width before `nextWidth` breaks in another way.
    while (inset > 0 && !suffices(inset)) {
        const double wider = nextWidth(paragraph, query, lines);
        inset = std::max<std::int64_t>(
            0, std::min(inset - 1, room - static_cast<std::int64_t>(std::ceil(wider * stepsInPx - noise))));
    }
    return inset > 0 || suffices(0) ? ends : std::vector<std::uint32_t>{};
}

std::vector<std::uint32_t> balancedByPenalty(const Paragraph& paragraph, const LineQuery& query,
                                             const BreakProfile& profile, std::size_t maxLines) {
    std::vector<Line> greedy = greedyLines(paragraph, query, profile, query.available);
    if (!canBeBalanced(greedy, query, maxLines)) return {};
    if (hasFewOpportunities(paragraph)) return balancedByWidth(paragraph, query, profile, std::move(greedy));
    SingleWidthJudge judge{query.available};
    return PenaltyMinimiser<double, double, SingleWidthJudge>(paragraph, query, judge).ends();
}

std::uint32_t linesByPenalty(const Paragraph& paragraph, const LinearLineQuery& query, std::uint32_t greedy,
                             std::size_t maxLines, double& until) {
    if (greedy < 2 || greedy > maxLines || hasFewOpportunities(paragraph)) return greedy;
    RangeJudge judge(query.available);
    const PenaltyMinimiser<units::Linear, units::Quadratic, RangeJudge> rule(paragraph, query, judge);
    const std::vector<std::uint32_t> ends = rule.ends();
    const auto lines = ends.empty() ? greedy : static_cast<std::uint32_t>(ends.size());
    if (lines == greedy)
        if (const double holds = rangeWithoutMoreLines(paragraph, query, ends); holds > 0) {
            until = std::min(until, holds);
            return lines;
        }
    until = std::min(until, judge.until());
    return lines;
}

}  // namespace tenter::text
