#include "sheet/pdf_look.h"

namespace tenter::sheet::look {

namespace {

draw::BlockStyle styleOf(double size, double lineHeight, const units::Colour& colour, double weight) {
    draw::BlockStyle style;
    // The first that is installed; other scripts come from the fonts of the system. All have a file for each
    // weight: Cairo 1.16 puts a variable font into a PDF at its default weight only.
    style.family = {"Lato", "Noto Sans", "DejaVu Sans", "sans-serif"};
    style.size = size;
    style.lineHeight = lineHeight;
    style.colour = colour;
    style.weight = weight;
    // Not every reader of tags knows a glyph that stands for two letters.
    style.ligatures = false;
    return style;
}

}  // namespace

draw::BlockStyle body(const units::Colour& colour, double weight) {
    return styleOf(8.6, bodyHeight, colour, weight);
}

draw::BlockStyle note(const units::Colour& colour, double weight) {
    return styleOf(7.4, noteHeight, colour, weight);
}

draw::BlockStyle cell(double size, double weight) {
    return styleOf(size, size * 1.36, text, weight);
}

draw::BlockStyle title() {
    draw::BlockStyle style = styleOf(27, 31, text, 700);
    style.letterSpacing = -0.4;
    return style;
}

draw::BlockStyle heading(int level) {
    draw::BlockStyle style = level == 2 ? styleOf(17, 21, text, 700) : styleOf(11, 14.5, text, 700);
    style.letterSpacing = level == 2 ? -0.2 : 0;
    return style;
}

}  // namespace tenter::sheet::look
