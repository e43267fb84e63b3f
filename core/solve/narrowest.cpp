#include "solve/narrowest.h"

#include <algorithm>
#include <cmath>

#include "text/breaker.h"

namespace tenter::solve {

namespace {

using text::LineStart;
using text::Opportunity;

LineShape shapeOf(const text::Paragraph& paragraph, const LineStart& start, const Opportunity& end,
                  const Shortened& shortened) {
    LineShape shape;
    shape.ems = text::lineWidth(paragraph, text::LineQuery{1, 0, 0, 0}, start.cluster, start.correction, end);
    shape.letters = text::lineWidth(paragraph, text::LineQuery{0, 0, 1, 0}, start.cluster, 0, end);
    shape.words = text::lineWidth(paragraph, text::LineQuery{0, 0, 0, 1}, start.cluster, 0, end);
    shape.first = start.cluster;
    shape.end = std::max(end.lineEnd, start.cluster);
    if (shortened.ems > 0 && shape.first <= shortened.word && shortened.word < shape.end)
        shape.ems = std::max(0.0, shape.ems - shortened.ems);
    return shape;
}

/// Breaks greedily into lines no wider than `most`; false if there are more than `lines` of them.
class GreedyWithin {
public:
    GreedyWithin(const text::Paragraph& paragraph, const Stretch& stretch, double size,
                 const Shortened& shortened)
        : paragraph_(paragraph), stretch_(stretch), size_(size), shortened_(shortened) {}

    [[nodiscard]] double width(const LineShape& shape) const {
        return shape.perSize(stretch_) + shape.fixed(stretch_, stretch_.from) / size_;
    }

    bool run(double most, std::size_t lines, std::vector<LineShape>& out) const {
        out.clear();
        const auto& opportunities = paragraph_.opportunities();
        LineStart start;
        for (std::size_t next = 0; next < opportunities.size();) {
            LineShape line;
            std::size_t chosen = opportunities.size();
            std::uint32_t word = start.cluster;
            for (std::size_t k = next; k < opportunities.size(); ++k) {
                const LineShape shape = shapeOf(paragraph_, start, opportunities[k], shortened_);
                if (width(shape) > most) break;
                // A prefix may be wider than what it grows into: a hyphen's is. Greedy breaking stops there.
                if (chosen == opportunities.size() || width(shape) >= width(line)) line = shape;
                line.end = shape.end;
                line.word = word;
                word = opportunities[k].cluster;
                chosen = k;
                if (opportunities[k].kind == Opportunity::Kind::Forced) break;
            }
            if (chosen == opportunities.size() || out.size() == lines) return false;
            out.push_back(line);
            start = {opportunities[chosen].cluster, opportunities[chosen].startCorrection};
            next = chosen + 1;
        }
        return true;
    }

private:
    const text::Paragraph& paragraph_;
    const Stretch& stretch_;
    double size_;
    const Shortened& shortened_;
};

}  // namespace

std::vector<LineShape> narrowest(const text::Paragraph& paragraph, std::size_t lines, const Stretch& stretch,
                                 double size, const Shortened& shortened) {
    std::vector<LineShape> best;
    if (paragraph.empty()) return best;
    lines = std::max(lines, paragraph.forcedLines());
    const GreedyWithin greedy(paragraph, stretch, size, shortened);
    double high = 0;
    for (const Opportunity& end : paragraph.opportunities())
        high = std::max(high, greedy.width(shapeOf(paragraph, {0, 0}, end, shortened)));
    double low = 0;
    for (const LineShape& word : wordsOf(paragraph, shortened)) {
        low = std::max(low, greedy.width(word));
        high = std::max(high, greedy.width(word));
    }
    if (!greedy.run(high, lines, best)) return best;
    // Where the widest word decides, no search is needed.
    std::vector<LineShape> tried;
    if (greedy.run(low, lines, tried)) return tried;
    while (high - low > 1e-9 * high) {
        const double middle = (low + high) / 2;
        if (greedy.run(middle, lines, tried)) {
            best = tried;
            high = 0;
            for (const LineShape& line : best)
                high = std::max(high, greedy.width(line));
        } else {
            low = middle;
        }
    }
    return best;
}

std::vector<LineShape> wordsOf(const text::Paragraph& paragraph, const Shortened& shortened) {
    std::vector<LineShape> words;
    LineStart start;
    for (const Opportunity& end : paragraph.opportunities()) {
        words.push_back(shapeOf(paragraph, start, end, shortened));
        words.back().word = start.cluster;
        start = {end.cluster, end.startCorrection};
    }
    return words;
}

}  // namespace tenter::solve
