#include "draw/text_line.h"

#include <algorithm>
#include <cmath>

namespace tenter::draw {

const text::ReshapedCluster* find(const std::vector<text::ReshapedCluster>& reshaped, std::uint32_t index) {
    const auto at = std::ranges::find(reshaped, index, &text::ReshapedCluster::index);
    return at != reshaped.end() ? &*at : nullptr;
}

std::span<const text::Glyph> glyphsOf(const text::Paragraph& paragraph, const text::Cluster& cluster,
                                      const text::ReshapedCluster* own) {
    if (own != nullptr) return own->glyphs;
    return std::span(paragraph.glyphs()).subspan(cluster.firstGlyph, cluster.glyphCount);
}

bool leans(const text::ShapedRun& run, bool italic) {
    return run.face && (italic || run.kind == project::Run::Kind::Emphasis) && !run.face->italic();
}

UnderlineRows underlineRows(double size) {
    const double tenth = size / 10;
    return {std::max(1, static_cast<int>(std::ceil(tenth / 2))),
            std::max(1, static_cast<int>(std::floor(tenth)))};
}

}  // namespace tenter::draw
