#include "text/lines.h"

#include <algorithm>

#include "text/breaker.h"

namespace tenter::text {
namespace {

/// A policy for `Breaker` that stores lines broken at one width, with their slack.
class LineCollector {
public:
    LineCollector(const LineQuery& query, std::vector<Line>& lines) : query_(query), lines_(lines) {}

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
             LineCollector& collector) {
    LineStart start;
    for (const std::uint32_t end : ends) {
        const Opportunity& at = paragraph.opportunities()[end];
        collector.line(start, at, lineWidth(paragraph, query, start.cluster, start.correction, at), 0);
        start = {at.cluster, at.startCorrection};
    }
}

}  // namespace

void findDrawnPositions(const Paragraph& paragraph, const LineQuery& query, double size,
                        const BreakProfile& profile, DrawnPositions& drawn) {
    std::size_t run = paragraph.runs().size();
    double drawnSize = size;
    const double letter = profile.drawnAdvance(query.letterSpacing);
    const double word = profile.drawnAdvance(query.wordSpacing);
    double before = 0;  // of the inline boxes before this one
    double inside = 0;  // of this inline box
    std::vector<double>& ends = drawn.ends;
    ends.clear();
    drawn.profile = &profile;
    const std::vector<Cluster>& clusters = paragraph.clusters();
    for (std::uint32_t i = 0; i < clusters.size(); ++i) {
        const Cluster& cluster = clusters[i];
        if (i > 0 && !paragraph.isInOneInline(clusters[i - 1], cluster)) {
            before += profile.drawnInline(inside);
            inside = 0;
        }
        ends.push_back(before + inside);
        if (cluster.run != run) {
            run = cluster.run;
            drawnSize = profile.drawnSize(size, paragraph.runs()[run].face.get());
        }
        inside += profile.drawnAdvance(paragraph.ems(i, i + 1) * drawnSize) + cluster.letterUnits * letter +
                  cluster.wordUnits * word;
    }
    ends.push_back(before + inside);
}

double labelWidth(const Paragraph& paragraph, const LineQuery& query, double size,
                  const BreakProfile& profile) {
    DrawnPositions drawn;
    findDrawnPositions(paragraph, query, size, profile, drawn);
    double widest = 0;
    std::uint32_t first = 0;
    for (const Opportunity& end : paragraph.opportunities()) {
        if (end.kind != Opportunity::Kind::Forced) continue;
        if (end.lineEnd > first) widest = std::max(widest, drawn.ends[end.lineEnd] - drawn.ends[first]);
        first = end.cluster;
    }
    return widest;
}

LineExtent extentOf(const Paragraph& paragraph, const Line& line, double size, double lineHeight,
                    const BreakProfile& profile) {
    const auto extent = [&](const FacePtr& strut) {
        return strut ? profile.extent(*strut, size, lineHeight) : LineExtent{lineHeight, 0};
    };
    LineExtent most = extent(paragraph.strut());
    if (!paragraph.unlikeStruts()) return most;
    for (std::uint32_t i = line.first; i < line.end; ++i) {
        const std::uint16_t run = paragraph.clusters()[i].run;
        if (i > line.first && run == paragraph.clusters()[i - 1].run) continue;
        const LineExtent other = extent(paragraph.runs()[run].strut);
        most.above = std::max(most.above, other.above);
        most.below = std::max(most.below, other.below);
    }
    return most;
}

void breakLines(const Paragraph& paragraph, const LineQuery& query, const BreakProfile& profile,
                std::vector<Line>& lines) {
    if (paragraph.empty()) return;
    LineCollector collector(query, lines);
    Breaker<double, LineCollector> breaker(paragraph, query, collector);
    if (query.balance) {
        const std::vector<std::uint32_t> ends = profile.balanced(paragraph, query);
        if (!ends.empty()) {
            // Greedy breaking decides the number of lines, so its smallest slack is the slack of every line.
            const std::size_t first = lines.size();
            breaker.run();
            double slack = 1;
            for (std::size_t i = first; i < lines.size(); ++i)
                slack = std::min(slack, lines[i].slack);
            lines.resize(first);
            breakAt(paragraph, query, ends, collector);
            for (std::size_t i = first; i < lines.size(); ++i)
                lines[i].slack = slack;
            return;
        }
    }
    breaker.run();
}

}  // namespace tenter::text
