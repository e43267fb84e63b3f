#include "solve/line_shapes.h"

#include <algorithm>
#include <cmath>

#include "text/breaker.h"
#include "text/lines.h"

namespace tenter::solve {

namespace {

using text::LineStart;
using text::Opportunity;

LineShape shapeOf(const text::Paragraph& paragraph, const LineStart& start, const Opportunity& end,
                  const ShortenedWord& shortened) {
    LineShape shape;
    const text::LineContent content = text::lineContent(paragraph, start.cluster, start.correction, end);
    shape.ems = content.ems;
    shape.letters = content.letters;
    shape.words = content.words;
    shape.first = start.cluster;
    shape.end = std::max(end.lineEnd, start.cluster);
    if (shortened.ems > 0 && shape.first <= shortened.word && shortened.word < shape.end)
        shape.ems = std::max(0.0, shape.ems - shortened.ems);
    return shape;
}

/// Breaks a paragraph greedily at a given line width.
class GreedyBreaker {
public:
    GreedyBreaker(const text::Paragraph& paragraph, const LinearRange& range, double size,
                  const ShortenedWord& shortened)
        : paragraph_(paragraph), range_(range), size_(size), shortened_(shortened) {}

    [[nodiscard]] double width(const LineShape& shape) const {
        return shape.widthPerSize(range_) + shape.fixedWidth(range_, range_.from) / size_;
    }

    /// Breaks into lines no wider than `most` em; false if that takes more than `lines` lines.
    bool breakInto(double most, std::size_t lines, std::vector<LineShape>& out) const {
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
                // With a hyphen a shorter line can be wider than a longer one. Greedy breaking stops there,
                // so the widest prefix counts.
                if (chosen == opportunities.size() || width(shape) >= width(line)) line = shape;
                line.end = shape.end;
                line.word = word;
                // A soft hyphen is inside a word.
                if (opportunities[k].kind != Opportunity::Kind::SoftHyphen) word = opportunities[k].cluster;
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
    const LinearRange& range_;
    double size_;
    const ShortenedWord& shortened_;
};

}  // namespace

std::vector<LineShape> narrowestLines(const text::Paragraph& paragraph, std::size_t lines,
                                      const LinearRange& range, double size, const ShortenedWord& shortened) {
    std::vector<LineShape> best;
    if (paragraph.empty()) return best;
    lines = std::max(lines, paragraph.forcedLines());
    const GreedyBreaker greedy(paragraph, range, size, shortened);
    double high = 0;
    for (const Opportunity& end : paragraph.opportunities())
        high = std::max(high, greedy.width(shapeOf(paragraph, {0, 0}, end, shortened)));
    double low = 0;
    for (const LineShape& word : wordsOf(paragraph, shortened)) {
        low = std::max(low, greedy.width(word));
        high = std::max(high, greedy.width(word));
    }
    if (!greedy.breakInto(high, lines, best)) return best;
    // If the widest word sets the width, no search is needed.
    std::vector<LineShape> tried;
    if (greedy.breakInto(low, lines, tried)) return tried;
    while (high - low > 1e-9 * high) {
        const double middle = (low + high) / 2;
        if (greedy.breakInto(middle, lines, tried)) {
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

std::vector<LineShape> wordsOf(const text::Paragraph& paragraph, const ShortenedWord& shortened) {
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
