// The pages of a PDF: a place that moves down, page breaks, tags.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "draw/cairo_handles.h"
#include "sheet/content.h"
#include "sheet/pdf.h"
#include "sheet/pdf_look.h"
#include "sheet/pdf_text.h"
#include "sheet/pdf_update.h"

namespace tenter::sheet {

/// Writes blocks from the top of a page to its bottom. Lengths in points; x is from the left margin, y from
/// the top of the page.
class PdfWriter {
public:
    PdfWriter(const Sheet& sheet, const Paper& paper, text::ParagraphStore& store);

    [[nodiscard]] double left() const { return left_; }
    [[nodiscard]] double width() const { return paper_.width - 2 * left_; }
    [[nodiscard]] double top() const { return top_; }
    [[nodiscard]] double bottom() const { return paper_.height - 58; }
    [[nodiscard]] double y() const { return y_; }
    void advance(double height) { y_ += height; }

    [[nodiscard]] draw::TextBlock block(const std::string& text, const draw::BlockStyle& style,
                                        double width) {
        return {text, style, width, store_};
    }

    /// Says that `height` is needed in one piece. Headings that wait come first; they and the piece go to a
    /// new page if they do not fit. True if a page has begun.
    bool begin(double height);
    /// The height that is left on the page below the headings that wait.
    [[nodiscard]] double room();
    /// Keeps a heading until the block below it begins, so that none stands alone at the end of a page.
    void heading(int level, const std::string& text, const std::string& detail);

    /// Shows a block in an element `tag`.
    void text(const char* tag, const draw::TextBlock& block, double x, double y);
    /// Shows a block and moves below it.
    void paragraph(const char* tag, const draw::TextBlock& block);
    /// Shows one line without a tag of its own; `y` is its baseline, and `x` its start, middle or end.
    void label(const std::string& text, const units::Colour& colour, double size, double x, double y,
               draw::TextAlign align);
    void rule(const units::Colour& colour, double thickness);
    void fill(double x, double y, double width, double height, const units::Colour& colour);

    /// Opens an element, which closes with `close`, or at the end of the page if it is a list or a table.
    void open(const char* tag);
    void close();
    /// Closes a list or a table that is open.
    void closeList();
    /// Says that the next TH heads a column, or else a row.
    void noteHead(bool isColumn) { additions_.columnHeads.push_back(isColumn); }
    /// Opens a figure with an alternative text and returns what to draw with.
    cairo_t* beginFigure(const std::string& alternativeText);
    void endFigure() { close(); }

    /// What shows the texts of a drawing with fonts.
    draw::GlyphShower& glyphs() { return text_; }

    /// Ends the file; empty if there was not enough memory.
    std::string finish();

private:
    struct Waiting {
        int level = 2;
        std::string text, detail;
    };
    void newPage();
    void footer();
    [[nodiscard]] double heightOf(const Waiting& heading, bool isAtTop);
    void set(const Waiting& heading);

    const Sheet& sheet_;
    Paper paper_;
    text::ParagraphStore& store_;
    std::string bytes_;
    draw::CairoSurface surface_;
    draw::CairoContext context_;
    PdfText text_;
    PdfAdditions additions_;
    std::vector<std::string> open_;
    std::vector<Waiting> waiting_;
    double left_ = 48, top_ = 54, y_ = 54;
    int page_ = 1;
};

}  // namespace tenter::sheet
