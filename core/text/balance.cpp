#include "text/balance.h"

#include <algorithm>
#include <limits>

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

bool isBalanced(const std::vector<Line>& lines, const LineQuery& query, std::size_t mostLines) {
    if (lines.size() < 2 || lines.size() > mostLines) return false;
    return std::none_of(lines.begin(), lines.end(),
                        [&](const Line& line) { return line.width > query.available + 1e-6; });
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

}  // namespace

std::vector<std::uint32_t> balancedByWidth(const Paragraph& paragraph, const LineQuery& query,
                                           const BreakProfile& profile, std::size_t mostLines) {
    std::vector<Line> lines = greedyLines(paragraph, query, profile, query.available);
    if (!isBalanced(lines, query, mostLines)) return {};
    const std::size_t count = lines.size();
    double low = 0;
    double high = query.available;
    // Each step looks at lines laid within `high`: the widest of them is a width that is known to do.
    while (true) {
        double widest = 0;
        for (const Line& line : lines)
            widest = std::max(widest, line.width);
        high = std::min(high, widest);
        if (high - low < 1.0 / 1024) break;
        const double middle = (low + high) / 2;
        std::vector<Line> tried = greedyLines(paragraph, query, profile, middle);
        const bool does =
            tried.size() <= count &&
            std::all_of(tried.begin(), tried.end(), [&](const Line& l) { return l.width <= middle + 1e-6; });
        if (does)
            lines = std::move(tried);
        else
            low = middle;
    }
    return endsOf(paragraph, lines);
}

std::vector<std::uint32_t> balancedByPenalty(const Paragraph& paragraph, const LineQuery& query,
                                             const BreakProfile& profile, std::size_t mostLines) {
    const std::vector<Line> greedy = greedyLines(paragraph, query, profile, query.available);
    if (!isBalanced(greedy, query, mostLines)) return {};
    const auto& ends = paragraph.opportunities();
    if (ends.size() < 4) return balancedByWidth(paragraph, query, profile, mostLines);  // the last is the end

    constexpr double none = std::numeric_limits<double>::infinity();
    const double aLine = 4 * query.available * query.size;
    const double aHyphen = aLine / 2;
    const std::size_t lastWord = ends.size() - 2;
    std::vector<double> least(ends.size(), none);
    std::vector<std::size_t> from(ends.size(), ends.size());
    for (std::size_t end = 0; end < ends.size(); ++end) {
        for (std::size_t before = end + 1; before-- > 0;) {
            // A line from after `before - 1` to `end`.
            if (before > 0 && least[before - 1] == none) continue;
            const std::uint32_t first = before == 0 ? 0 : ends[before - 1].cluster;
            const double correction = before == 0 ? 0 : ends[before - 1].startCorrection;
            const double spare = query.available - lineWidth(paragraph, query, first, correction, ends[end]);
            if (spare < -1e-6) break;
            const double penalty = (end == lastWord ? 10000 : 0) +
                                   (ends[end].kind == Opportunity::Kind::SoftHyphen ? aHyphen : 0);
            const double cost = (before == 0 ? 0 : least[before - 1]) + spare * spare + aLine + penalty;
            if (cost < least[end]) {
                least[end] = cost;
                from[end] = before;
            }
            if (before > 0 && ends[before - 1].kind == Opportunity::Kind::Forced) break;
        }
    }
    if (least.back() == none) return {};
    std::vector<std::uint32_t> chosen;
    for (std::size_t end = ends.size() - 1;; end = from[end] - 1) {
        chosen.push_back(static_cast<std::uint32_t>(end));
        if (from[end] == 0) break;
    }
    std::reverse(chosen.begin(), chosen.end());
    return chosen;
}

}  // namespace tenter::text
