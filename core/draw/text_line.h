// The positions of the glyphs of a laid line.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "draw/visual_order.h"
#include "layout/layout.h"

namespace tenter::draw {

/// The slope of a synthesised italic, as a share of the height. From memory: browser engines skew a face by
/// 14 degrees.
inline constexpr double obliqueSkew = 0.25;

/// True if the glyphs of a run must be skewed: the text is italic and the face is not. A missing weight is
/// not synthesised: the stylesheet has `font-synthesis` without weight.
bool leans(const text::ShapedRun& run, bool italic);

/// An underline in whole device px: its distance below the baseline and its thickness.
struct UnderlineRows {
    int below = 1;
    int count = 1;
};
/// The underline of text with font size `size` (device px) as Chromium 156 draws it, measured at 10 to 60 px:
/// a tenth of the size thick, rounded down, at a distance of half that tenth, rounded up. Firefox 153 takes
/// both from the face.
UnderlineRows underlineRows(double size);

/// The entry for cluster `index`; null if the line's breaks leave that cluster as it is.
const text::ReshapedCluster* find(const std::vector<text::ReshapedCluster>& reshaped, std::uint32_t index);

/// The glyphs of a cluster on its line; `own` is what `find` returns for it.
std::span<const text::Glyph> glyphsOf(const text::Paragraph& paragraph, const text::Cluster& cluster,
                                      const text::ReshapedCluster* own);

/// Calls `visitor` for everything on the line, from left to right:
/// - `visitor.cluster(index, from, advance)` for each cluster, visible or not;
/// - `visitor.glyph(run, glyph, x)` for each glyph; `x` is the position of its origin;
/// - `visitor.hyphen(run, glyph, x)` for the hyphen that is drawn at a soft hyphen.
/// Positions are in px of `scale` px per CSS px, and `pen` is that of the line's left edge. `reshaped`
/// is what `Paragraph::reshaped` returns for the line; `order` is scratch memory.
template <class Visitor>
void walkLine(const layout::LaidPart& part, const layout::LaidLine& laid,
              const std::vector<text::ReshapedCluster>& reshaped, double scale, double pen,
              std::vector<std::uint32_t>& order, Visitor&& visitor) {
    const text::Paragraph& paragraph = *part.paragraph;
    const double size = part.glyphSize * scale;
    const double letterSpacing = part.letterSpacing * scale;
    const double wordSpacing = part.wordSpacing * scale;
    visualOrder(paragraph, laid.line.first, laid.line.end, order);
    const auto hyphen = [&] {
        if (!laid.line.hyphen || laid.line.end == laid.line.first) return;
        const std::uint16_t run = paragraph.clusters()[laid.line.end - 1].run;
        visitor.hyphen(run, paragraph.runs()[run].hyphen, pen);
        pen += paragraph.hyphenAdvanceBefore(laid.line.end) * size;
    };
    if (paragraph.rightToLeft()) hyphen();
    for (const std::uint32_t index : order) {
        const text::Cluster& cluster = paragraph.clusters()[index];
        const text::ReshapedCluster* own = find(reshaped, index);
        const double spacing = cluster.letterUnits * letterSpacing + cluster.wordUnits * wordSpacing;
        const double advance = (own != nullptr ? own->advance : cluster.advance) * size + spacing;
        visitor.cluster(index, pen, advance);
        if (cluster.visible) {
            // Spacing comes after a cluster in the cluster's own direction.
            const double before = (cluster.level & 1) != 0 ? spacing : 0;
            for (const text::Glyph& glyph : glyphsOf(paragraph, cluster, own))
                visitor.glyph(cluster.run, glyph, pen + before + glyph.x * size);
        }
        pen += advance;
    }
    if (!paragraph.rightToLeft()) hyphen();
}

}  // namespace tenter::draw
