// Outlines of glyphs in em.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <vector>

#include "text/fonts.h"

namespace tenter::draw {

/// A point in em: x to the right of the glyph's origin, y up from the baseline.
struct OutlinePoint {
    double x = 0;
    double y = 0;
};

/// The contours of one glyph. Each verb has its points in `points`: Move and Line 1, Quadratic 2, Cubic 3,
/// Close none.
struct GlyphOutline {
    enum class Verb : std::uint8_t { Move, Line, Quadratic, Cubic, Close };
    std::vector<Verb> verbs;
    std::vector<OutlinePoint> points;

    /// The part of a horizontal strip that the glyph covers.
    struct Extent {
        double from = 0;
        double to = 0;
    };
    /// The extent of the glyph's ink between the heights `bottom` and `top` (em, up from the baseline); empty
    /// if there is no ink.
    [[nodiscard]] std::optional<Extent> between(double bottom, double top) const;
};

/// The outlines of faces. Each is read once and kept. They come from the same font objects that the text was
/// measured with. The faces must live as long.
class GlyphOutlines {
public:
    const GlyphOutline& of(const text::Face& face, std::uint32_t glyph);

private:
    std::map<std::pair<const text::Face*, std::uint32_t>, GlyphOutline> kept_;
};

}  // namespace tenter::draw
