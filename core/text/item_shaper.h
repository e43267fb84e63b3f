// Shapes pieces of a paragraph's text with HarfBuzz.
#pragma once

#include <hb.h>

#include <cstdint>
#include <string>
#include <vector>

#include "text/fonts.h"
#include "text/profile.h"

namespace tenter::text {

/// A glyph, measured in ems, in visual order within its cluster.
struct Glyph {
    std::uint32_t id = 0;
    float x = 0;  ///< from the cluster's left edge
    float y = 0;  ///< up from the baseline
};

/// UTF-16 code units [begin, end) with one face, level and script: shaped in one call.
struct Item {
    std::uint32_t begin = 0;
    std::uint32_t end = 0;
    FacePtr face;            ///< null for a forced break
    std::uint8_t level = 0;  ///< bidirectional level, UAX #9
    hb_script_t script = HB_SCRIPT_COMMON;
};

/// What HarfBuzz makes of code units [begin, end) of an item, its clusters in logical order.
struct ShapedPiece {
    /// The code units of one HarfBuzz cluster: a letter with its marks, or a ligature.
    struct Span {
        std::uint32_t begin = 0;
        std::uint32_t end = 0;
        std::uint32_t firstGlyph = 0;
        std::uint32_t endGlyph = 0;
        double advance = 0;   ///< em
        bool unsafe = false;  ///< a break before it changes glyphs
    };
    std::vector<Glyph> glyphs;
    std::vector<Span> spans;
};

/// Shapes in one language, with or without ligatures, as one browser engine does.
class ItemShaper {
public:
    ItemShaper() = default;
    ItemShaper(const BreakProfile& profile, std::string language, bool ligatures);

    /// Shapes code units [begin, end) of `text`, which lie in `item`; the text around them decides which
    /// forms letters take.
    [[nodiscard]] ShapedPiece shape(const std::u16string& text, const Item& item, std::uint32_t begin,
                                    std::uint32_t end) const;
    /// The sum of their advances, em.
    [[nodiscard]] double advance(const std::u16string& text, const Item& item, std::uint32_t begin,
                                 std::uint32_t end) const;

private:
    const BreakProfile* profile_ = nullptr;
    std::string language_ = "en";
    bool ligatures_ = true;
};

}  // namespace tenter::text
