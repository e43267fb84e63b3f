// Text of the drawing itself, such as a label: shaped and broken into lines.
#pragma once

#include <string>
#include <vector>

#include "layout/layout.h"
#include "text/paragraph_store.h"
#include "units/colour.h"

namespace tenter::draw {

enum class TextAlign { Start, Center, End };

/// How a block of text looks. Lengths in the unit of the drawing.
struct BlockStyle {
    std::vector<std::string> family{"sans-serif"};
    double weight = 400;
    double size = 16;
    double lineHeight = 22;
    double letterSpacing = 0;
    bool ligatures = true;
    TextAlign align = TextAlign::Start;
    units::Colour colour;
    std::string language = "en";
    bool rightToLeft = false;
};

/// Lines of text from a left edge and a top edge at 0. Owns its paragraph.
class TextBlock {
public:
    /// Breaks `copy` at `width`. Words that are wider than that are cut.
    TextBlock(const project::Copy& copy, const BlockStyle& style, double width, text::ParagraphStore& store);
    TextBlock(const std::string& text, const BlockStyle& style, double width, text::ParagraphStore& store);

    [[nodiscard]] const BlockStyle& style() const { return style_; }
    [[nodiscard]] double height() const { return static_cast<double>(lines_.size()) * style_.lineHeight; }
    /// Width of the widest line.
    [[nodiscard]] double width() const;
    /// What `walkLine` and `lineInk` take: the part with the size and the paragraph, and the lines.
    [[nodiscard]] const layout::LaidPart& part() const { return part_; }
    [[nodiscard]] const std::vector<layout::LaidLine>& lines() const { return lines_; }

private:
    BlockStyle style_;
    text::ParagraphPtr paragraph_;
    layout::LaidPart part_;
    std::vector<layout::LaidLine> lines_;
};

}  // namespace tenter::draw
