#include "draw/line_ink.h"

#include <algorithm>
#include <cmath>

#include "draw/text_line.h"

namespace tenter::draw {

namespace {

struct Span {
    double from, to;
};

class Collector {
public:
    Collector(LineInk& ink, const text::Paragraph& paragraph, double baseline, bool italic,
              bool underlineLinks, GlyphOutlines& outlines)
        : ink_(ink),
          paragraph_(paragraph),
          baseline_(baseline),
          italic_(italic),
          underlineLinks_(underlineLinks),
          outlines_(outlines) {}

    void cluster(std::uint32_t index, double from, double advance) {
        cluster_ = index;
        const text::ShapedRun& run = paragraph_.runs()[paragraph_.clusters()[index].run];
        inLink_ = underlineLinks_ && run.kind == project::Run::Kind::Link && run.face != nullptr;
        if (!inLink_) return;
        if (!spans_.empty() && std::abs(spans_.back().to - from) < 0.01)
            spans_.back().to = from + advance;
        else
            spans_.push_back({from, from + advance});
    }

    void glyph(std::uint16_t run, const text::Glyph& glyph, double x) {
        place(run, glyph, x);
        if (!inLink_ || ink_.glyphs.empty()) return;
        const PlacedGlyph& placed = ink_.glyphs.back();
        const UnderlineRows rows = underlineRows(ink_.size);
        const double raised = glyph.y * ink_.size;
        const double top = (-rows.below - raised) / ink_.size;
        const double bottom = (-rows.below - rows.count - raised) / ink_.size;
        const auto extent = outlines_.of(*placed.face, placed.id).between(bottom, top);
        if (!extent) return;
        const double lean = placed.leaning ? obliqueSkew * bottom : 0;
        crossings_.push_back({x + (extent->from + lean) * ink_.size - rows.count,
                              x + (extent->to + lean) * ink_.size + rows.count});
    }

    void hyphen(std::uint16_t run, const text::Glyph& glyph, double x) { place(run, glyph, x); }

    void underline() {
        if (spans_.empty()) return;
        const UnderlineRows rows = underlineRows(ink_.size);
        std::ranges::sort(crossings_, {}, &Span::from);
        const auto add = [&](double from, double to) {
            if (to > from)
                ink_.underlines.push_back(
                    {from, baseline_ + rows.below, to - from, static_cast<double>(rows.count)});
        };
        for (const Span& span : spans_) {
            double from = std::round(span.from);
            const double to = std::round(span.to);
            for (const Span& crossing : crossings_) {
                if (crossing.to <= from || crossing.from >= to) continue;
                add(from, crossing.from);
                from = crossing.to;
            }
            add(from, to);
        }
    }

private:
    void place(std::uint16_t index, const text::Glyph& glyph, double x) {
        const text::ShapedRun& run = paragraph_.runs()[index];
        if (!run.face) return;
        ink_.glyphs.push_back({run.face.get(), glyph.id, cluster_, x,
                               baseline_ - std::round(glyph.y * ink_.size), leans(run, italic_)});
    }

    LineInk& ink_;
    const text::Paragraph& paragraph_;
    double baseline_;
    bool italic_, underlineLinks_;
    GlyphOutlines& outlines_;
    std::uint32_t cluster_ = 0;
    bool inLink_ = false;
    std::vector<Span> spans_, crossings_;
};

}  // namespace

LineInk lineInk(const DeviceGrid& grid, const layout::LaidPart& part, const layout::LaidLine& line,
                bool italic, bool underlineLinks, GlyphOutlines& outlines) {
    LineInk ink;
    ink.size = part.glyphSize * grid.scale;
    if (part.paragraph == nullptr || !(ink.size > 0)) return ink;
    ink.line = line.line;
    ink.reshaped = part.paragraph->reshaped(line.line.first, line.line.end);
    ink.glyphs.reserve(line.line.end - line.line.first + 1);
    Collector collector(ink, *part.paragraph, grid.baseline(part, line), italic, underlineLinks, outlines);
    std::vector<std::uint32_t> order;
    walkLine(part, line, ink.reshaped, grid.scale, grid.x(line.x), order, collector);
    collector.underline();
    return ink;
}

}  // namespace tenter::draw
