// The glyphs and underlines of a line of text, in device px.
#pragma once

#include <vector>

#include "draw/device_grid.h"
#include "draw/glyph_outline.h"

namespace tenter::draw {

/// A glyph with the position of its origin on the baseline, px; y grows downwards.
struct PlacedGlyph {
    const text::Face* face = nullptr;
    std::uint32_t id = 0;
    std::uint32_t cluster = 0;  ///< index of its cluster in the paragraph
    double x = 0;
    double y = 0;
    bool leaning = false;  ///< skewed by `obliqueSkew`
};

/// A piece of an underline, px.
struct UnderlinePiece {
    double x = 0;
    double y = 0;
    double width = 0;
    double height = 0;
};

/// What is drawn of one line.
struct LineInk {
    double size = 0;                              ///< font size, px
    text::Line line;                              ///< its clusters
    std::vector<text::ReshapedCluster> reshaped;  ///< those that its breaks change
    std::vector<PlacedGlyph> glyphs;
    std::vector<UnderlinePiece> underlines;
};

/// `italic` and `underlineLinks` as in `ShowText`. Underlines have a gap where a glyph crosses them. CSS Text
/// Decoration 4 § 4.
LineInk lineInk(const DeviceGrid& grid, const layout::LaidPart& part, const layout::LaidLine& line,
                bool italic, bool underlineLinks, GlyphOutlines& outlines);

}  // namespace tenter::draw
