// The contents of `PreparedRow`: for each band, settings as numbers and lengths, parts with their paragraphs;
// for each interval, the page and the font sizes.
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "layout/layout.h"
#include "project/levels.h"
#include "units/ramp.h"

namespace tenter::layout {

/// The lengths of the four sides.
struct Lengths {
    units::Length top, right, bottom, left;
    template <class Number>
    [[nodiscard]] EdgesOf<Number> resolve(const units::LengthBasisOf<Number>& basis) const {
        return {top.resolve(basis), right.resolve(basis), bottom.resolve(basis), left.resolve(basis)};
    }
};

/// The text settings of a role in an interval.
struct RolePlan {
    units::FluidSize size;
    units::LineHeight lineHeight;
    units::Length letterSpacing, wordSpacing, border;
    Lengths margin, padding;
    project::Align align = project::Align::Start;
    project::Place place = project::Place::Stretch;
    project::OverflowWrap overflowWrap = project::OverflowWrap::Normal;
    bool balance = false;
    int keepLines = 0;
    bool fluidRoot = false;  ///< true if the root's font size depends on the viewport width
    double leastSize = 0;    ///< CSS px; the engine draws no smaller text (text::BreakProfile::leastSize)
    const text::BreakProfile* profile = nullptr;
};

/// A part of a card in a band.
struct PartPlan {
    bool picture = false;
    std::uint32_t role = 0;  ///< index into `PreparedRow::roles()`
    text::ParagraphPtr paragraph;
    double ratio = 1.5;     ///< a picture's width over its height
    std::size_t level = 0;  ///< its level if parts are aligned; unused for a picture beside the text
};

/// A card in a band.
struct CardPlan {
    std::vector<PartPlan> parts;
    std::optional<std::size_t> beside;  ///< index of the picture beside the text; empty: none
};

/// A band of a variant, with every setting resolved.
struct BandPlan {
    std::optional<double> upTo;  ///< the band's largest viewport width in CSS px; empty: no limit
    project::Settings settings;
    const text::BreakProfile* profile = nullptr;
    bool rightToLeft = false;
    int columns = 1;
    units::Length rowWidth, rowMaxWidth, columnGap, rowGap, cardBorder, pictureShare;
    Lengths rowPadding, cardPadding, pictureMargin;
    bool centred = false, levelled = false, beside = false, bleed = false;
    project::Levels levels;
    std::vector<CardPlan> cards;
    [[nodiscard]] const PartPlan& part(project::PartRef place) const {
        return cards[place.card].parts[place.part];
    }
};

/// The page at the widths of an interval.
struct PagePlan {
    project::Scrollbar scrollbar;
    units::RootSize rootSize;
    double readerSize = units::usualReaderSize;  ///< CSS px
    units::Length containerWidth, containerMaxWidth;
    double containerAddedWidth = 0;  ///< CSS px
    project::Shift containerShift;
    Lengths containerPadding;
    project::ContainerPlace containerPlace = project::ContainerPlace::Center;
    units::Colour background;  ///< of the container
};

/// Viewport widths within one band and one range of the page. Every length is linear in the width there, up
/// to the ends of ramps, maximum widths and the root size, which units::Linear finds.
struct IntervalPlan {
    std::optional<double> upTo;      ///< its largest viewport width in CSS px; empty: no limit
    std::size_t bandIndex = 0;       ///< index of its band
    const BandPlan* band = nullptr;  ///< owned by the prepared row
    PagePlan page;
    std::vector<RolePlan> roles;  ///< their sizes depend on the root size
    [[nodiscard]] const PartPlan& part(project::PartRef place) const { return band->part(place); }
};

/// Inline sizes of container, row and cards, before text is broken into lines (inline_sizes.h). CSS px.
template <class Number>
struct InlineSizes {
    units::LengthBasisOf<Number> basis;  ///< em is the root font size, which rows, cards and pictures use
    Number pageWidth = 0, containerWidth = 0;
    Number containerContentWidth = 0;  ///< content width of the container
    Number rowWidth = 0;               ///< by `width` and `max-width`, but at least its padding
    Number rowContentWidth = 0;        ///< content width of the row
    EdgesOf<Number> containerPadding, rowPadding;
    Number columnWidth = 0, columnGap = 0, rowGap = 0;
    EdgesOf<Number> cardPadding;  ///< includes the room for a picture beside the text
    Number cardBorder = 0;
    Number borderDifference = 0;  ///< specified width of the card's border on one side minus `cardBorder`
    Number cardContent = 0;       ///< content width of a card
    /// Width of a card: that of its column, but at least its padding and border. CSS Sizing 3 § 4.
    [[nodiscard]] Number cardWidth() const {
        return units::max(columnWidth, cardPadding.left + cardPadding.right + 2 * cardBorder);
    }
    Number besidePictureWidth = 0;  ///< width of a picture beside the text
    Number besideInset = 0;         ///< distance from the card's border to that picture
};

/// Container, row and cards at one width, before text is laid out, in CSS px. Vertical lengths are on the
/// profile's grid.
struct Frame : InlineSizes<double> {
    Box container, row;
    double contentX = 0, contentY = 0;  ///< top left corner of the row's content box
};

/// `edges`, which `sides` resolve to, with top and bottom rounded to the profile's grid.
Edges snappedEdges(const Edges& edges, const Lengths& sides, const text::BreakProfile& profile);

/// The frame of an interval at viewport width `width` (CSS px).
Frame frameAt(const IntervalPlan& interval, double width);
/// Computed font size in CSS px of a role in a frame.
double sizeOf(const RolePlan& role, const Frame& frame);

}  // namespace tenter::layout
