// The row's geometry at one viewport width.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "project/project.h"
#include "text/lines.h"
#include "text/paragraph_store.h"

namespace tenter::layout {

/// A box in CSS px from the page's top left corner.
struct Box {
    double x = 0;
    double y = 0;
    double width = 0;
    double height = 0;
    [[nodiscard]] double right() const { return x + width; }
    [[nodiscard]] double bottom() const { return y + height; }
    friend bool operator==(const Box&, const Box&) = default;
};

/// Four sides in CSS px.
template <class Number>
struct EdgesOf {
    Number top = 0;
    Number right = 0;
    Number bottom = 0;
    Number left = 0;
};
using Edges = EdgesOf<double>;

/// One laid line of text: `text` plus where it stands.
struct LaidLine {
    text::Line line;
    double x = 0;             ///< left edge of its first visible glyph's cluster, CSS px on the page
    double baseline = 0;      ///< CSS px on the page
    text::LineExtent extent;  ///< above and below the baseline
};

struct LaidPart {
    std::size_t index = 0;  ///< in the card's parts
    bool picture = false;
    std::uint32_t role = 0;  ///< which of `Band::roles` (text parts)
    Box box;                  ///< border box
    Edges margin, padding;
    double border = 0;
    double fontSize = 0;
    double lineHeight = 0;
    double letterSpacing = 0, wordSpacing = 0;
    double available = 0;  ///< width lines are broken at
    double measure = 0;    ///< comfortable-line figure: characters to a line of full width
    double slack = 1;      ///< of its tightest line
    double autoMargin = 0;      ///< height above it that its automatic top margin takes
    std::uint32_t firstLine = 0, lineCount = 0;  ///< in `Layout::lines`
    const text::Paragraph* paragraph = nullptr;  ///< owned by the prepared row
};

struct LaidCard {
    Box box;
    Edges padding;
    double border = 0;
    std::uint32_t firstPart = 0, partCount = 0;  ///< in `Layout::parts`
};

struct Layout {
    double width = 0;  ///< viewport, CSS px
    std::size_t band = 0;
    Box container, row;
    double pageHeight = 0;
    std::vector<LaidCard> cards;
    std::vector<LaidPart> parts;
    std::vector<LaidLine> lines;
};

struct BandPlan;  // prepared.h

/// A variant made ready to be laid out at any width: settings resolved per band, paragraphs shaped, sizes in
/// the numbers that are emitted. Holds what its layouts point to.
class PreparedRow {
public:
    PreparedRow(const project::Project& project, std::size_t variant, text::ParagraphStore& store,
                const text::BreakProfile& profile);
    ~PreparedRow();
    PreparedRow(PreparedRow&&) noexcept;
    PreparedRow& operator=(PreparedRow&&) noexcept;

    [[nodiscard]] std::size_t bandCount() const { return bands_.size(); }
    [[nodiscard]] std::size_t bandAt(double width) const;
    [[nodiscard]] const project::Settings& settings(std::size_t band) const;
    /// Role names in the order `LaidPart::style` counts them.
    [[nodiscard]] const std::vector<std::string>& roles() const { return roles_; }
    [[nodiscard]] const text::BreakProfile& profile() const { return *profile_; }
    /// A band as it is laid out (prepared.h), for what follows the row over all widths.
    [[nodiscard]] const BandPlan& band(std::size_t band) const { return *bands_.at(band); }
    /// What fonts lacked, each once.
    [[nodiscard]] std::vector<text::FontNote> notes() const;

    /// Computed font size in CSS px of role `style` at viewport width `width`, in its band.
    [[nodiscard]] double fontSize(std::uint32_t role, double width) const;
    /// Content width of a card in CSS px at viewport width `width`.
    [[nodiscard]] double cardWidth(double width) const;

private:
    std::vector<std::unique_ptr<BandPlan>> bands_;
    std::vector<std::string> roles_;
    const text::BreakProfile* profile_ = nullptr;
};

/// What a card asks of the cards beside it. CSS px.
struct CardContribution {
    /// Heights by level; one, its own height, where cards are not levelled.
    std::vector<double> levels;
    /// Where the first part that an automatic top margin pushes down is, and what its level needs to hold it;
    /// none: -1. Of that level's spare height it has one part of `autoMarginParts`.
    int autoMarginLevel = -1;
    double autoMarginHeight = 0;
    int autoMarginParts = 0;
};

/// The row at viewport width `width` (CSS px). `out` is overwritten; its memory is used again.
void layOut(const PreparedRow& row, double width, Layout& out);
Layout layOut(const PreparedRow& row, double width);

/// One card of the row as if no others stood beside it: its height, and places down the page, are its own.
/// Overwrites `out` and `contribution`.
void layOutSingleCard(const PreparedRow& row, double width, std::size_t card, Layout& out, CardContribution& contribution);

}  // namespace tenter::layout
