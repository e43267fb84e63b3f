// Text of a PDF: glyphs with the characters that they stand for, so that it can be selected and read aloud.
#pragma once

#include <map>
#include <memory>

#include "draw/cairo_painter.h"
#include "draw/text_block.h"

namespace tenter::sheet {

/// Shows text in a PDF with the very faces that it was measured with. They must live as long.
class PdfText : public draw::GlyphShower {
public:
    PdfText();
    ~PdfText() override;
    PdfText(const PdfText&) = delete;
    PdfText& operator=(const PdfText&) = delete;

    /// Shows line `index` of `block`, whose top left corner is at (x, y). A space follows it if the text goes
    /// on, so that words of two lines stay apart.
    void showLine(cairo_t* context, const draw::TextBlock& block, std::size_t index, double x, double y);
    /// Shows all lines.
    void show(cairo_t* context, const draw::TextBlock& block, double x, double y);
    /// Shows the glyphs with fonts if a PDF can hold these: their licences allow embedding, and a
    /// variable one is at its default axes, because Cairo 1.16 writes no others.
    bool show(cairo_t* context, const text::Paragraph& paragraph, const draw::LineInk& ink) override;

private:
    struct Fonts;
    struct Run;
    void showRun(cairo_t* context, const Run& run, double size);
    std::unique_ptr<Fonts> fonts_;
};

}  // namespace tenter::sheet
