#include "text/balance.h"

#include <algorithm>
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

bool areWithin(const std::vector<Line>& lines, double width) {
    return std::all_of(lines.begin(), lines.end(),
                       [&](const Line& line) { return line.width <= width + fitTolerance; });
}

bool isBalanced(const std::vector<Line>& lines, const LineQuery& query, std::size_t mostLines) {
    return lines.size() >= 2 && lines.size() <= mostLines && areWithin(lines, query.available);
}

/// The opportunity each line ends at; empty if one ends inside a word.
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

/// With so few places to break, the last of which is the end, the rule by width is used.
bool isShort(const Paragraph& paragraph) {
    return paragraph.opportunities().size() < 4;
}

/// Decides at one width.
struct AtOneWidth {
    double available;
    [[nodiscard]] bool fits(double width) const { return width <= available + fitTolerance; }
    [[nodiscard]] bool less(double a, double b) const { return a < b; }
};

/// Decides along a stretch of widths, and keeps for how long.
class AlongWidths {
public:
    explicit AlongWidths(const units::Linear& available) : lines_(available, 0) {}
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

/// The least cost over all ways to break, line end by line end.
template <class Number, class Cost, class Judge>
class LeastPenalty {
public:
    LeastPenalty(const Paragraph& paragraph, const LineQueryOf<Number>& query, Judge& judge)
        : paragraph_(paragraph),
          query_(query),
          aLine_(4 * units::product(query.available, query.size)),
          least_(paragraph.opportunities().size()),
          from_(least_.size(), unreached) {
        for (std::size_t end = 0; end < least_.size(); ++end)
            reach(end, judge);
    }

    /// Empty if the paragraph's end is not reached.
    [[nodiscard]] std::vector<std::uint32_t> ends() const {
        if (from_.back() == unreached) return {};
        std::vector<std::uint32_t> chosen;
        for (std::size_t end = from_.size() - 1;; end = from_[end] - 1) {
            chosen.push_back(static_cast<std::uint32_t>(end));
            if (from_[end] == 0) break;
        }
        std::reverse(chosen.begin(), chosen.end());
        return chosen;
    }

private:
    static constexpr std::size_t unreached = std::numeric_limits<std::size_t>::max();

    void reach(std::size_t end, Judge& judge) {
        const auto& ends = paragraph_.opportunities();
        const std::size_t lastWord = ends.size() - 2;
        for (std::size_t before = end + 1; before-- > 0;) {
            // A line from after `before - 1` to `end`.
            if (before > 0 && from_[before - 1] == unreached) continue;
            const std::uint32_t first = before == 0 ? 0 : ends[before - 1].cluster;
            const double correction = before == 0 ? 0 : ends[before - 1].startCorrection;
            const Number width = lineWidth(paragraph_, query_, first, correction, ends[end]);
            if (!judge.fits(width)) break;
            const Number spare = query_.available - width;
            Cost cost = units::product(spare, spare) + aLine_;
            if (before > 0) cost = least_[before - 1] + cost;
            if (end == lastWord) cost = cost + Cost(10000);
            if (ends[end].kind == Opportunity::Kind::SoftHyphen) cost = cost + 0.5 * aLine_;
            if (from_[end] == unreached || judge.less(cost, least_[end])) {
                least_[end] = cost;
                from_[end] = before;
            }
            if (before > 0 && ends[before - 1].kind == Opportunity::Kind::Forced) break;
        }
    }

    const Paragraph& paragraph_;
    const LineQueryOf<Number>& query_;
    Cost aLine_;
    std::vector<Cost> least_;
    std::vector<std::size_t> from_;
};

/// Up to where no way to break that has more lines than `ends` can cost less, whatever it is; 0 if that
/// cannot be told so simply. The widths of m lines sum up to at most the whole text's, T, so they cost at
/// least (m · available − T)² / m and m lines, which grows with m.
double noMoreLinesUntil(const Paragraph& paragraph, const LinearLineQuery& query,
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
    const units::Quadratic aLine = 4 * units::product(query.available, query.size);
    LinearLineCounter follower(query.available, 0);
    units::Quadratic cost;
    LineStart start;
    for (const std::uint32_t end : ends) {
        const Opportunity& at = all[end];
        const units::Linear width = lineWidth(paragraph, query, start.cluster, start.correction, at);
        if (!follower.fits(width)) return 0;
        const units::Linear spare = query.available - width;
        cost = cost + units::product(spare, spare) + aLine;
        if (end + 2 == all.size()) cost = cost + units::Quadratic(10000);
        start = {at.cluster, at.startCorrection};
    }
    const auto last = static_cast<std::uint32_t>(paragraph.clusters().size());
    const units::Linear whole = paragraph.ems(0, last) * query.size +
                                paragraph.letters(0, last) * query.letterSpacing +
                                paragraph.words(0, last) * query.wordSpacing;
    const double more = static_cast<double>(ends.size()) + 1;
    const units::Linear spare = more * query.available - whole;
    const units::Order roomy = units::order(units::Linear(0), spare);
    const units::Order dearer = units::order(cost, (1 / more) * units::product(spare, spare) + more * aLine);
    if (!roomy.less || !dearer.less) return 0;
    return std::min({until, follower.until(), roomy.until, dearer.until});
}

}  // namespace

std::vector<std::uint32_t> balancedByWidth(const Paragraph& paragraph, const LineQuery& query,
                                           const BreakProfile& profile, std::size_t mostLines) {
    std::vector<Line> lines = greedyLines(paragraph, query, profile, query.available);
    if (!isBalanced(lines, query, mostLines)) return {};
    std::vector<std::uint32_t> ends = endsOf(paragraph, lines);
    if (ends.empty()) return {};
    double low = 0;
    double high = query.available;
    // Each step looks at lines laid within `high`: the widest of them is a width that is known to do. A width
    // at which a word has to be cut does not, though its lines be as many.
    while (true) {
        double widest = 0;
        for (const Line& line : lines)
            widest = std::max(widest, line.width);
        high = std::min(high, widest);
        if (high - low < 1.0 / 1024) return ends;
        const double middle = (low + high) / 2;
        std::vector<Line> tried = greedyLines(paragraph, query, profile, middle);
        std::vector<std::uint32_t> triedEnds = endsOf(paragraph, tried);
        if (!triedEnds.empty() && triedEnds.size() <= ends.size() && areWithin(tried, middle)) {
            lines = std::move(tried);
            ends = std::move(triedEnds);
        } else {
            low = middle;
        }
    }
}

std::vector<std::uint32_t> balancedByPenalty(const Paragraph& paragraph, const LineQuery& query,
                                             const BreakProfile& profile, std::size_t mostLines) {
    const std::vector<Line> greedy = greedyLines(paragraph, query, profile, query.available);
    if (!isBalanced(greedy, query, mostLines)) return {};
    if (isShort(paragraph)) return balancedByWidth(paragraph, query, profile, mostLines);
    AtOneWidth judge{query.available};
    return LeastPenalty<double, double, AtOneWidth>(paragraph, query, judge).ends();
}

std::uint32_t linesByPenalty(const Paragraph& paragraph, const LinearLineQuery& query, std::uint32_t greedy,
                             std::size_t mostLines, double& until) {
    if (greedy < 2 || greedy > mostLines || isShort(paragraph)) return greedy;
    AlongWidths judge(query.available);
    const LeastPenalty<units::Linear, units::Quadratic, AlongWidths> rule(paragraph, query, judge);
    const std::vector<std::uint32_t> ends = rule.ends();
    const auto lines = ends.empty() ? greedy : static_cast<std::uint32_t>(ends.size());
    if (lines == greedy)
        if (const double holds = noMoreLinesUntil(paragraph, query, ends); holds > 0) {
            until = std::min(until, holds);
            return lines;
        }
    until = std::min(until, judge.until());
    return lines;
}

}  // namespace tenter::text
