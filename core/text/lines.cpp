#include "text/lines.h"

#include <algorithm>

#include "text/breaker.h"

namespace tenter::text {
namespace {

/// Keeps lines broken at one width, with their slack.
class LineKeeper {
public:
    LineKeeper(const LineQuery& query, std::vector<Line>& lines) : query_(query), lines_(lines) {}

    [[nodiscard]] bool fits(double width) const { return width <= query_.available + fitTolerance; }

    void line(const LineStart& start, const Opportunity& end, double width, double over) {
        Line line;
        line.first = start.cluster;
        line.end = std::max(end.lineEnd, start.cluster);
        line.next = end.cluster;
        line.hyphen = end.kind == Opportunity::Kind::SoftHyphen;
        line.width = width;
        if (width > 0 && fits(width)) line.slack = std::min(line.slack, (query_.available - width) / width);
        if (over > 0) line.slack = std::min(line.slack, (over - query_.available) / over);
        line.slack = std::max(line.slack, 0.0);
        lines_.push_back(line);
    }

private:
    const LineQuery& query_;
    std::vector<Line>& lines_;
};

void breakAt(const Paragraph& paragraph, const LineQuery& query, const std::vector<std::uint32_t>& ends,
             LineKeeper& keeper) {
    LineStart start;
    for (const std::uint32_t end : ends) {
        const Opportunity& at = paragraph.opportunities()[end];
        keeper.line(start, at, lineWidth(paragraph, query, start.cluster, start.correction, at), 0);
        start = {at.cluster, at.startCorrection};
    }
}

}  // namespace

double labelWidth(const Paragraph& paragraph, const LineQuery& query, double size,
                  const BreakProfile& profile) {
    const double drawn = profile.drawnSize(size);
    const double letter = profile.drawnAdvance(query.letterSpacing);
    const double word = profile.drawnAdvance(query.wordSpacing);
    double widest = 0;
    std::uint32_t first = 0;
    for (const Opportunity& end : paragraph.opportunities()) {
        if (end.kind != Opportunity::Kind::Forced) continue;
        double width = 0;
        for (std::uint32_t i = first; i < end.lineEnd; ++i) {
            const Cluster& cluster = paragraph.clusters()[i];
            width += profile.drawnAdvance(paragraph.ems(i, i + 1) * drawn) + cluster.letterUnits * letter +
                     cluster.wordUnits * word;
        }
        widest = std::max(widest, width);
        first = end.cluster;
    }
    return widest;
}

void breakLines(const Paragraph& paragraph, const LineQuery& query, const BreakProfile& profile,
                std::vector<Line>& lines) {
    if (paragraph.empty()) return;
    LineKeeper keeper(query, lines);
    Breaker<double, LineKeeper> breaker(paragraph, query, keeper);
    if (query.balance) {
        const std::vector<std::uint32_t> ends = profile.balanced(paragraph, query);
        if (!ends.empty()) {
            // How many lines there are is decided by greedy breaking, so its slack is theirs.
            const std::size_t first = lines.size();
            breaker.run();
            double slack = 1;
            for (std::size_t i = first; i < lines.size(); ++i)
                slack = std::min(slack, lines[i].slack);
            lines.resize(first);
            breakAt(paragraph, query, ends, keeper);
            for (std::size_t i = first; i < lines.size(); ++i)
                lines[i].slack = slack;
            return;
        }
    }
    breaker.run();
}

}  // namespace tenter::text
