#include "row/text_painter.h"

#include <hb-ot.h>

#include <algorithm>
#include <cmath>

#include "row/visual_order.h"

namespace tenter::desktop::row {

namespace {

// The correction of the advance at the start of a line that begins at `cluster` without a space before it.
double startCorrection(const text::Paragraph& paragraph, std::uint32_t cluster) {
    const auto at = [cluster](const std::vector<text::Opportunity>& list) {
        const auto found = std::lower_bound(
            list.begin(), list.end(), cluster,
            [](const text::Opportunity& one, std::uint32_t value) { return one.cluster < value; });
        return found != list.end() && found->cluster == cluster ? &*found : nullptr;
    };
    if (const text::Opportunity* regular = at(paragraph.opportunities())) return regular->startCorrection;
    const text::Opportunity* emergency = at(paragraph.overflowOpportunities());
    return emergency != nullptr ? emergency->startCorrection : 0;
}

using UnderlineRows = TextPainter::UnderlineRows;

struct UnderlineLook {
    double below = 0;  // em, distance of its upper edge below the baseline
    double thickness = 0;
};

UnderlineLook underlineOf(const text::Face& face) {
    hb_position_t offset = 0;
    hb_position_t size = 0;
    UnderlineLook look{0.1, 0.05};
    if (hb_ot_metrics_get_position(face.font(), HB_OT_METRICS_TAG_UNDERLINE_OFFSET, &offset) != 0 &&
        offset < 0)
        look.below = -offset / face.scale();
    if (hb_ot_metrics_get_position(face.font(), HB_OT_METRICS_TAG_UNDERLINE_SIZE, &size) != 0 && size > 0)
        look.thickness = size / face.scale();
    return look;
}

// The underline of text with font size `size`, device px.
UnderlineRows underlineRows(const UnderlineLook& look, double size) {
    return {std::max(1, static_cast<int>(std::lround(look.below * size))),
            std::max(1, static_cast<int>(std::lround(look.thickness * size)))};
}

// Browser engines round the ascent and descent of a face to whole device px, and Chromium rounds down the
// space above (measured with Chromium 156: without this, every third line is one pixel off). The layout does
// the same for a scale of 1; at another scale the baseline is computed again.
int baselineOf(const Canvas& canvas, const layout::LaidPart& part, const layout::LaidLine& laid) {
    if (canvas.scale == 1 || !part.paragraph->strut())
        return static_cast<int>(std::lround(canvas.y(laid.baseline)));
    const text::Face& face = *part.paragraph->strut();
    const double size = part.fontSize * canvas.scale;
    const double height = part.lineHeight * canvas.scale;
    const double top = canvas.y(laid.baseline - laid.extent.above);
    const double ascent = std::round(face.ascent() * size);
    const double descent = std::round(face.descent() * size);
    return static_cast<int>(std::lround(top + std::floor((height - ascent - descent) / 2) + ascent));
}

// Blends `over` into `under` with `alpha` (0 to 255), two channels at a time.
inline QRgb blended(QRgb under, QRgb over, std::uint32_t alpha) {
    const std::uint32_t share = alpha + (alpha >> 7U);  // 0 to 256
    const std::uint32_t rest = 256 - share;
    const std::uint32_t redBlue = ((over & 0xff00ffU) * share + (under & 0xff00ffU) * rest) >> 8U;
    const std::uint32_t green = ((over & 0xff00U) * share + (under & 0xff00U) * rest) >> 8U;
    return 0xff000000U | (redBlue & 0xff00ffU) | (green & 0xff00U);
}

}  // namespace

void TextPainter::paint(Canvas& canvas, const layout::Layout& layout, const layout::LaidPart& part,
                        const TextLook& look) {
    if (part.paragraph == nullptr || part.lineCount == 0 || look.colour.alpha() == 0) return;
    const double size = part.fontSize * canvas.scale;
    if (!(size > 0.5)) return;
    colour_ = look.colour.rgb();
    for (unsigned i = 0; i < 256; ++i)
        opacity_[i] = static_cast<std::uint8_t>((i * static_cast<unsigned>(look.colour.alpha()) + 127) / 255);

    faces_.clear();
    for (const text::ShapedRun& run : part.paragraph->runs()) {
        // A missing italic is synthesised, as in browsers. A missing weight is not: the stylesheet has
        // `font-synthesis` without weight.
        const bool italic = look.italic || run.kind == project::Run::Kind::Emphasis;
        const bool leaning = run.face && italic && !run.face->italic();
        faces_.push_back(run.face ? &glyphs_.sized(run.face, size, leaning) : nullptr);
    }
    const double reach = 1.5 * part.fontSize;
    for (std::uint32_t i = 0; i < part.lineCount; ++i) {
        const layout::LaidLine& laid = layout.lines[part.firstLine + i];
        if (canvas.y(laid.baseline + reach) < 0 || canvas.y(laid.baseline - reach) > canvas.image.height())
            continue;
        line(canvas, part, laid, look);
    }
}

void TextPainter::line(Canvas& canvas, const layout::LaidPart& part, const layout::LaidLine& laid,
                       const TextLook& look) {
    const text::Paragraph& paragraph = *part.paragraph;
    const double size = part.fontSize * canvas.scale;
    const double letterSpacing = part.letterSpacing * canvas.scale;
    const double wordSpacing = part.wordSpacing * canvas.scale;
    const int baseline = baselineOf(canvas, part, laid);
    double pen = canvas.x(laid.x);
    visualOrder(paragraph, laid.line.first, laid.line.end, order_);
    const double correction = startCorrection(paragraph, laid.line.first);

    spans_.clear();
    crossings_.clear();
    const text::Face* underlined = nullptr;
    UnderlineLook rule;
    const auto draw = [&](SizedFace& face, const text::Glyph& glyph, bool links) {
        const double x = pen + glyph.x * size;
        const long quarter = std::lround(x * phases);
        const int penX = static_cast<int>(quarter >> 2);
        const Coverage& coverage = face.of(glyph.id, static_cast<unsigned>(quarter & 3));
        const int y = baseline - static_cast<int>(std::lround(glyph.y * size));
        blend(canvas, face, coverage, penX, y);
        if (links) noteCrossing(face, coverage, penX, baseline - y, underlineRows(rule, size));
    };
    const auto hyphen = [&] {
        if (!laid.line.hyphen || laid.line.end == laid.line.first) return;
        const std::uint16_t run = paragraph.clusters()[laid.line.end - 1].run;
        if (faces_[run] != nullptr) draw(*faces_[run], paragraph.hyphen(), false);
        pen += paragraph.hyphenAdvance() * size;
    };

    if (paragraph.rightToLeft()) hyphen();
    for (const std::uint32_t index : order_) {
        const text::Cluster& cluster = paragraph.clusters()[index];
        const double spacing = cluster.letterUnits * letterSpacing + cluster.wordUnits * wordSpacing;
        double advance = cluster.advance * size + spacing;
        if (index == laid.line.first) advance += correction * size;
        const text::ShapedRun& run = paragraph.runs()[cluster.run];
        const bool links = look.underlineLinks && run.kind == project::Run::Kind::Link && run.face != nullptr;
        if (links) {
            if (underlined != run.face.get()) {
                underlined = run.face.get();
                rule = underlineOf(*underlined);
            }
            if (!spans_.empty() && std::abs(spans_.back().to - pen) < 0.01)
                spans_.back().to = pen + advance;
            else
                spans_.push_back({pen, pen + advance});
        }
        if (cluster.visible && faces_[cluster.run] != nullptr) {
            // Spacing comes after a cluster in the cluster's own direction.
            const double before = (cluster.level & 1) != 0 ? spacing : 0;
            pen += before;
            for (std::uint32_t i = 0; i < cluster.glyphCount; ++i)
                draw(*faces_[cluster.run], paragraph.glyphs()[cluster.firstGlyph + i], links);
            pen -= before;
        }
        pen += advance;
    }
    if (!paragraph.rightToLeft()) hyphen();
    if (underlined != nullptr) underline(canvas, *underlined, size, baseline);
}

void TextPainter::blend(Canvas& canvas, const SizedFace& face, const Coverage& coverage, int penX,
                        int baseline) {
    const int left = penX + coverage.left;
    const int top = baseline - coverage.top;
    const int fromX = std::max(0, -left);
    const int toX = std::min<int>(coverage.width, canvas.image.width() - left);
    const int fromY = std::max(0, -top);
    const int toY = std::min<int>(coverage.height, canvas.image.height() - top);
    if (fromX >= toX || fromY >= toY) return;
    const std::uint8_t* source = face.pixels(coverage) + static_cast<std::ptrdiff_t>(fromY) * coverage.width;
    auto* const bits = canvas.image.bits();
    const auto stride = canvas.image.bytesPerLine();
    for (int y = fromY; y < toY; ++y, source += coverage.width) {
        auto* const row = reinterpret_cast<QRgb*>(bits + (top + y) * stride) + left;
        for (int x = fromX; x < toX; ++x) {
            const std::uint32_t alpha = opacity_[source[x]];
            if (alpha == 255)
                row[x] = colour_;
            else if (alpha != 0)
                row[x] = blended(row[x], colour_, alpha);
        }
    }
}

void TextPainter::noteCrossing(const SizedFace& face, const Coverage& coverage, int penX, int raised,
                               UnderlineRows rows) {
    constexpr std::uint8_t visible = 64;
    const int first = std::max(0, coverage.top + raised + rows.below);
    const int last = std::min<int>(coverage.height, coverage.top + raised + rows.below + rows.count);
    int from = coverage.width;
    int to = 0;
    for (int y = first; y < last; ++y) {
        const std::uint8_t* const row =
            face.pixels(coverage) + static_cast<std::ptrdiff_t>(y) * coverage.width;
        for (int x = 0; x < coverage.width; ++x) {
            if (row[x] < visible) continue;
            from = std::min(from, x);
            to = std::max(to, x + 1);
        }
    }
    if (from < to)
        crossings_.push_back(
            {penX + coverage.left + from - rows.count, penX + coverage.left + to + rows.count});
}

// CSS Text Decoration 4 § 4: the underline has a gap where a glyph crosses it.
void TextPainter::underline(Canvas& canvas, const text::Face& face, double size, int baseline) {
    const UnderlineRows rows = underlineRows(underlineOf(face), size);
    const int top = baseline + rows.below;
    std::sort(crossings_.begin(), crossings_.end(),
              [](const Ink& a, const Ink& b) { return a.from < b.from; });
    const auto fill = [&](int from, int to) {
        for (int y = std::max(0, top); y < std::min(top + rows.count, canvas.image.height()); ++y) {
            auto* const row = reinterpret_cast<QRgb*>(canvas.image.scanLine(y));
            for (int x = std::max(0, from); x < std::min(to, canvas.image.width()); ++x)
                row[x] = blended(row[x], colour_, opacity_[255]);
        }
    };
    for (const Span& span : spans_) {
        int from = static_cast<int>(std::lround(span.from));
        const int to = static_cast<int>(std::lround(span.to));
        for (const Ink& ink : crossings_) {
            if (ink.to <= from || ink.from >= to) continue;
            fill(from, ink.from);
            from = ink.to;
        }
        fill(from, to);
    }
}

}  // namespace tenter::desktop::row
