// Paints lines of text glyph by glyph at the positions that the layout has computed.
#pragma once

#include <QColor>
#include <array>
#include <vector>

#include "row/canvas.h"
#include "row/glyphs.h"

namespace tenter::desktop::row {

/// The look of a part's text, apart from its glyphs.
struct TextLook {
    QColor colour;
    bool italic = false;  ///< an upright face is skewed if the family has no italic
    bool underlineLinks = true;
};

class TextPainter {
public:
    void paint(Canvas& canvas, const layout::Layout& layout, const layout::LaidPart& part,
               const TextLook& look);
    /// Drops glyphs that were not used recently; call it once per frame.
    void trim() { glyphs_.trim(); }
    void clear() { glyphs_.clear(); }

    /// An underline in device px: its distance below the baseline and its thickness.
    struct UnderlineRows {
        int below = 1;
        int count = 1;
    };

private:
    struct Span {  // of an underline, device px
        double from, to;
    };
    struct Ink {  // where a glyph crosses the underline, device px
        int from, to;
    };
    void line(Canvas& canvas, const layout::LaidPart& part, const layout::LaidLine& laid,
              const TextLook& look);
    void blend(Canvas& canvas, const SizedFace& face, const Coverage& coverage, int penX, int baseline);
    void noteCrossing(const SizedFace& face, const Coverage& coverage, int penX, int raised,
                      UnderlineRows rows);
    void underline(Canvas& canvas, const text::Face& face, double size, int baseline);
    Glyphs glyphs_;
    std::vector<SizedFace*> faces_;  // of the runs of the part being painted
    std::vector<std::uint32_t> order_;
    std::vector<Span> spans_;
    std::vector<Ink> crossings_;
    std::array<std::uint8_t, 256> opacity_{};  // by coverage, for the current colour
    QRgb colour_ = 0;
};

}  // namespace tenter::desktop::row
