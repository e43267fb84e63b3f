// The row's geometry at one viewport width.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "project/project.h"
#include "text/lines.h"
#include "text/paragraph_store.h"

namespace tenter::layout {

/// A rectangle in CSS px; x and y are from the page's top left corner.
struct Box {
    double x = 0;
    double y = 0;
    double width = 0;
    double height = 0;
    [[nodiscard]] double right() const { return x + width; }
    [[nodiscard]] double bottom() const { return y + height; }
    friend bool operator==(const Box&, const Box&) = default;
};

/// Margins or paddings of the four sides, in CSS px.
template <class Number>
struct EdgesOf {
    Number top = 0;
    Number right = 0;
    Number bottom = 0;
    Number left = 0;
};
using Edges = EdgesOf<double>;

/// A line of text with its position on the page.
struct LaidLine {
    text::Line line;
    double x = 0;             ///< left edge of the first visible cluster, CSS px on the page
    double baseline = 0;      ///< CSS px on the page
    text::LineExtent extent;  ///< height above and below the baseline, CSS px
};

/// A part as laid out. All lengths in CSS px.
struct LaidPart {
    std::size_t index = 0;  ///< its index in the card's parts
    bool picture = false;
    std::uint32_t role = 0;  ///< index into `PreparedRow::roles()` (text parts)
    Box box;                 ///< border box
    Edges margin, padding;
    double border = 0;
    double fontSize = 0;
    double glyphSize = 0;  ///< font size of its glyphs: `fontSize`, or more where an engine has a least size
    double lineHeight = 0;
    double letterSpacing = 0, wordSpacing = 0;
    double available = 0;                        ///< the width its lines are broken at
    double measure = 0;                          ///< mean number of characters on a line of full width
    double slack = 1;                            ///< smallest slack of its lines
    double minimumHeight = 0;                    ///< height of its minimum lines; 0: no minimum
    double autoMargin = 0;                       ///< height of its automatic top margin
    std::uint32_t firstLine = 0, lineCount = 0;  ///< its lines in `Layout::lines`
    const text::Paragraph* paragraph = nullptr;  ///< owned by the prepared row
};

/// A card as laid out. Lengths in CSS px.
struct LaidCard {
    Box box;
    Edges padding;
    double border = 0;
    std::uint32_t firstPart = 0, partCount = 0;  ///< its parts in `Layout::parts`
};

/// The geometry of a row at one viewport width.
struct Layout {
    double width = 0;  ///< viewport, CSS px
    std::size_t band = 0;
    std::size_t interval = 0;
    Box container, row;
    double pageHeight = 0;
    std::vector<LaidCard> cards;
    std::vector<LaidPart> parts;
    std::vector<LaidLine> lines;
};

struct BandPlan;      // prepared.h
struct IntervalPlan;  // prepared.h

/// A variant prepared for layout at any width: settings resolved for each band, the page for each interval
/// (project/intervals.h), paragraphs shaped, sizes in the numbers of the stylesheet. It owns the paragraphs
/// that its layouts point to.
class PreparedRow {
public:
    PreparedRow(const project::Project& project, project::VariantRef variant, text::ParagraphStore& store,
                const text::BreakProfile& profile);
    ~PreparedRow();
    PreparedRow(PreparedRow&&) noexcept;
    PreparedRow& operator=(PreparedRow&&) noexcept;

    [[nodiscard]] std::size_t bandCount() const { return bands_.size(); }
    /// Index of the band that holds viewport width `width` (CSS px).
    [[nodiscard]] std::size_t bandAt(double width) const;
    [[nodiscard]] const project::Settings& settings(std::size_t band) const;
    /// Index of the row in the project.
    [[nodiscard]] std::size_t rowIndex() const { return rowIndex_; }
    /// The part at `part` of card `card`.
    [[nodiscard]] project::PartRef place(std::size_t card, std::size_t part) const {
        return {card, part, rowIndex_};
    }
    /// Role names; `LaidPart::role` is an index into them.
    [[nodiscard]] const std::vector<std::string>& roles() const { return roles_; }
    [[nodiscard]] const text::BreakProfile& profile() const { return *profile_; }
    /// The prepared settings of a band (prepared.h).
    [[nodiscard]] const BandPlan& band(std::size_t band) const { return *bands_.at(band); }

    [[nodiscard]] std::size_t intervalCount() const { return intervals_.size(); }
    /// Index of the interval that holds viewport width `width` (CSS px).
    [[nodiscard]] std::size_t intervalAt(double width) const;
    /// An interval (prepared.h), for computations over a range of widths.
    [[nodiscard]] const IntervalPlan& interval(std::size_t index) const { return *intervals_.at(index); }
    /// The interval that holds viewport width `width` (CSS px).
    [[nodiscard]] const IntervalPlan& at(double width) const { return *intervals_[intervalAt(width)]; }
    /// The interval of band `band` that holds viewport width `width` (CSS px), or the nearest one.
    [[nodiscard]] const IntervalPlan& intervalIn(std::size_t band, double width) const;

    /// Notes about missing fonts, each once.
    [[nodiscard]] std::vector<text::FontNote> notes() const;

    /// Computed font size in CSS px of role `role` at viewport width `width` (CSS px).
    [[nodiscard]] double fontSize(std::uint32_t role, double width) const;
    /// Content width of a card in CSS px at viewport width `width` (CSS px).
    [[nodiscard]] double cardWidth(double width) const;
    /// Root font size in CSS px at viewport width `width` (CSS px).
    [[nodiscard]] double rem(double width) const;

private:
    std::vector<std::unique_ptr<BandPlan>> bands_;
    std::vector<std::unique_ptr<IntervalPlan>> intervals_;
    std::vector<std::string> roles_;
    std::size_t rowIndex_ = 0;
    const text::BreakProfile* profile_ = nullptr;
};

/// The geometry of `row` at viewport width `width` (CSS px). The first form overwrites `out` and reuses its
/// memory.
void layOut(const PreparedRow& row, double width, Layout& out);
Layout layOut(const PreparedRow& row, double width);

/// The same, with text broken as the engine draws it at exactly this width: on its grid of lengths, font
/// sizes and advances. `layOut` breaks it at the mean of that grid, so that over a range of widths each break
/// has a closed form. The two differ only close to a width at which a line break changes.
void layOutDrawn(const PreparedRow& row, double width, Layout& out);
Layout layOutDrawn(const PreparedRow& row, double width);

/// The box and lines of the text part at `place` at viewport width `width` (CSS px), without the other parts
/// of its card: it starts at the top of a card at the origin. Overwrites `out`, which owns the result.
const LaidPart& layOutSingleText(const PreparedRow& row, double width, project::PartRef place, Layout& out);

}  // namespace tenter::layout
