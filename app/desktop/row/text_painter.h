// Paints lines of text glyph by glyph at the positions that the layout has computed.
#pragma once

#include <array>
#include <vector>

#include "draw/drawing.h"
#include "draw/text_line.h"
#include "row/canvas.h"
#include "row/glyphs.h"

namespace tenter::desktop::row {

class TextPainter {
public:
    void paint(Canvas& canvas, const layout::Layout& layout, const layout::LaidPart& part,
               const draw::ShowText& look);
    /// Drops glyphs that were not used recently; call it once per frame.
    void trim() { glyphs_.trim(); }
    void clear() { glyphs_.clear(); }

private:
    struct Span {  // of an underline, device px
        double from, to;
    };
    struct Ink {  // where a glyph crosses the underline, device px
        int from, to;
    };
    struct LineVisitor;
    void line(Canvas& canvas, const layout::LaidPart& part, const layout::LaidLine& laid,
              const draw::ShowText& look);
    void blend(Canvas& canvas, const SizedFace& face, const Coverage& coverage, int penX, int baseline);
    void noteCrossing(const SizedFace& face, const Coverage& coverage, int penX, int raised,
                      draw::UnderlineRows rows);
    void underline(Canvas& canvas, double size, int baseline);
    Glyphs glyphs_;
    std::vector<SizedFace*> faces_;  // of the runs of the part being painted
    std::vector<std::uint32_t> order_;
    std::vector<Span> spans_;
    std::vector<Ink> crossings_;
    std::array<std::uint8_t, 256> opacity_{};  // by coverage, for the current colour
    QRgb colour_ = 0;
};

}  // namespace tenter::desktop::row
