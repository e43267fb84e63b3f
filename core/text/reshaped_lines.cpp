// The glyphs of lines that a break makes other than those of unbroken text.
#include <algorithm>

#include "text/paragraph.h"

namespace tenter::text {

const Item& Paragraph::itemOf(std::uint32_t cluster) const {
    const auto after = std::ranges::upper_bound(items_, clusters_[cluster].begin, {}, &Item::begin);
    return *(after - 1);
}

bool Paragraph::breakChangesGlyphs(std::uint32_t cluster) const {
    if (cluster == 0 || cluster >= clusters_.size() || joints_[cluster] == Joint::None) return false;
    // Nobody sees kerning with a space at an end of a line.
    if (clusters_[cluster].space || clusters_[cluster - 1].space) return false;
    if (!reshapesAtBreaks_) {
        // A ligature that is kept whole before a soft hyphen leaves its other letters no advance
        // (builder.cpp).
        const bool whole = clusters_[cluster].visible && !(clusters_[cluster].advance > 0);
        if (joints_[cluster] != Joint::Ligature || whole) return false;
    }
    return &itemOf(cluster) == &itemOf(cluster - 1);
}

std::vector<ReshapedCluster> Paragraph::reshaped(std::uint32_t first, std::uint32_t end) const {
    std::vector<ReshapedCluster> list;
    if (first >= end) return list;
    const bool startChanges = breakChangesGlyphs(first);
    const bool endChanges = breakChangesGlyphs(end);
    std::uint32_t startEnd = first;
    if (startChanges)
        for (++startEnd; startEnd < end && breakChangesGlyphs(startEnd);)
            ++startEnd;
    std::uint32_t endFirst = end;
    if (endChanges)
        for (--endFirst; endFirst > first && breakChangesGlyphs(endFirst);)
            --endFirst;
    if (startEnd > endFirst) {
        addReshaped(first, end, list);
        return list;
    }
    if (startChanges) addReshaped(first, startEnd, list);
    if (endChanges) addReshaped(endFirst, end, list);
    return list;
}

void Paragraph::addReshaped(std::uint32_t first, std::uint32_t end,
                            std::vector<ReshapedCluster>& list) const {
    const Item& item = itemOf(first);
    const std::uint32_t to = end < clusters_.size() ? std::min(clusters_[end].begin, item.end) : item.end;
    const ShapedPiece piece = shaper_.shape(text_, item, clusters_[first].begin, to);
    const std::size_t base = list.size();
    for (std::uint32_t i = first; i < end; ++i)
        list.push_back({i, 0, {}});
    const auto from = [&](std::uint32_t unit) {  // the first cluster that starts at or after `unit`
        const auto at = std::lower_bound(clusters_.begin() + first, clusters_.begin() + end, unit,
                                         [](const Cluster& one, std::uint32_t u) { return one.begin < u; });
        return static_cast<std::uint32_t>(at - clusters_.begin());
    };
    for (const ShapedPiece::Span& span : piece.spans) {
        std::uint32_t begin = from(span.begin);
        const std::uint32_t finish = from(span.end);
        // A span that starts inside a cluster continues it.
        if (begin == finish && begin > first) --begin;
        if (begin >= finish) continue;
        // A ligature's clusters have equal shares; its glyphs belong to the leftmost (builder.cpp).
        const auto inked = std::count_if(clusters_.begin() + begin, clusters_.begin() + finish,
                                         [](const Cluster& one) { return one.visible; });
        ReshapedCluster& leftmost = list[base + (item.level % 2 != 0 ? finish - 1 : begin) - first];
        for (std::uint32_t g = span.firstGlyph; g < span.endGlyph; ++g) {
            Glyph glyph = piece.glyphs[g];
            glyph.x += leftmost.advance;
            leftmost.glyphs.push_back(glyph);
        }
        for (std::uint32_t i = begin; i < finish; ++i)
            if (inked == 0 || clusters_[i].visible)
                list[base + i - first].advance += static_cast<float>(
                    span.advance / static_cast<double>(inked == 0 ? finish - begin : inked));
    }
    if (!reshapesAtBreaks_)
        for (std::size_t i = base; i < list.size(); ++i)
            list[i].advance = clusters_[list[i].index].advance;
}

}  // namespace tenter::text
