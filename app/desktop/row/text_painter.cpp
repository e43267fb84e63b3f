#include "row/text_painter.h"

#include <algorithm>
#include <cmath>

namespace tenter::desktop::row {

namespace {

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
                        const draw::ShowText& look) {
    if (part.paragraph == nullptr || part.lineCount == 0 || look.colour.isTransparent()) return;
    const double size = part.glyphSize * canvas.scale;
    if (!(size > 0.5)) return;
    colour_ = qRgb(look.colour.red, look.colour.green, look.colour.blue);
    for (unsigned i = 0; i < 256; ++i)
        opacity_[i] = static_cast<std::uint8_t>((i * unsigned{look.colour.alpha} + 127) / 255);

    faces_.clear();
    for (const text::ShapedRun& run : part.paragraph->runs()) {
        faces_.push_back(run.face ? &glyphs_.sized(run.face, size, draw::leans(run, look.italic)) : nullptr);
    }
    const double reach = 1.5 * part.glyphSize;
    for (std::uint32_t i = 0; i < part.lineCount; ++i) {
        const layout::LaidLine& laid = layout.lines[part.firstLine + i];
        if (canvas.y(laid.baseline + reach) < 0 || canvas.y(laid.baseline - reach) > canvas.image.height())
            continue;
        line(canvas, part, laid, look);
    }
}

/// Draws the glyphs of a line and collects its underlines.
struct TextPainter::LineVisitor {
    TextPainter& owner;
    Canvas& canvas;
    const text::Paragraph& paragraph;
    bool underlineLinks;
    double size;
    int baseline;
    bool inLink = false;

    void cluster(std::uint32_t index, double from, double advance) {
        const text::ShapedRun& run = paragraph.runs()[paragraph.clusters()[index].run];
        inLink = underlineLinks && run.kind == project::Run::Kind::Link && run.face != nullptr;
        if (!inLink) return;
        if (!owner.spans_.empty() && std::abs(owner.spans_.back().to - from) < 0.01)
            owner.spans_.back().to = from + advance;
        else
            owner.spans_.push_back({from, from + advance});
    }

    void glyph(std::uint16_t run, const text::Glyph& glyph, double x) {
        if (owner.faces_[run] == nullptr) return;
        SizedFace& face = *owner.faces_[run];
        const long quarter = std::lround(x * phases);
        const int penX = static_cast<int>(quarter >> 2);
        const Coverage& coverage = face.of(glyph.id, static_cast<unsigned>(quarter & 3));
        const int y = baseline - static_cast<int>(std::lround(glyph.y * size));
        owner.blend(canvas, face, coverage, penX, y);
        if (inLink) owner.noteCrossing(face, coverage, penX, baseline - y, draw::underlineRows(size));
    }

    void hyphen(std::uint16_t run, const text::Glyph& hyphen, double x) {
        inLink = false;
        glyph(run, hyphen, x);
    }
};

void TextPainter::line(Canvas& canvas, const layout::LaidPart& part, const layout::LaidLine& laid,
                       const draw::ShowText& look) {
    const double size = part.glyphSize * canvas.scale;
    const int baseline = canvas.baseline(part, laid);
    spans_.clear();
    crossings_.clear();
    LineVisitor visitor{*this, canvas, *part.paragraph, look.underlineLinks, size, baseline};
    draw::walkLine(part, laid, part.paragraph->reshaped(laid.line.first, laid.line.end), canvas.scale,
                   canvas.x(laid.x), order_, visitor);
    if (!spans_.empty()) underline(canvas, size, baseline);
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
                               draw::UnderlineRows rows) {
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
void TextPainter::underline(Canvas& canvas, double size, int baseline) {
    const draw::UnderlineRows rows = draw::underlineRows(size);
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
