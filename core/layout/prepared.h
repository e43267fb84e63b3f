// What `PreparedRow` holds for each band: settings as numbers and lengths, parts with their paragraphs.
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "layout/layout.h"
#include "project/levels.h"
#include "units/ramp.h"

namespace tenter::layout {

/// Four lengths: top, right, bottom, left.
struct Lengths {
    units::Length top, right, bottom, left;
    template <class Number>
    [[nodiscard]] EdgesOf<Number> resolve(const units::LengthBasisOf<Number>& basis) const {
        return {top.resolve(basis), right.resolve(basis), bottom.resolve(basis), left.resolve(basis)};
    }
};

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
};

struct PartPlan {
    bool picture = false;
    std::uint32_t role = 0;
    text::ParagraphPtr paragraph;
    double ratio = 1.5;     ///< a picture's width over its height
    std::size_t level = 0;  ///< where cards are levelled, but for a part beside the others
};

struct CardPlan {
    std::vector<PartPlan> parts;
    int beside = -1;  ///< the part that stands beside the others, where the band says so
};

struct BandPlan {
    std::optional<double> upTo;
    project::Settings settings;
    const text::BreakProfile* profile = nullptr;
    project::Page page;
    bool rightToLeft = false;
    int columns = 1;
    units::Length rowWidth, rowMaxWidth, columnGap, rowGap, cardBorder, pictureShare;
    Lengths rowPadding, containerPadding, cardPadding, pictureMargin;
    bool centred = false, levelled = false, beside = false, bleed = false;
    project::Levels levels;
    std::vector<RolePlan> roles;
    std::vector<CardPlan> cards;
};

/// What the row measures across the page, before any text is broken (across.h). CSS px.
template <class Number>
struct InlineSizes {
    units::LengthBasisOf<Number> basis;  ///< em is the root's: what rows, cards and pictures have
    Number pageWidth = 0, containerWidth = 0;
    Number containerContentWidth = 0;     ///< the container's content width
    Number rowSpecifiedWidth = 0;   ///< as `width` and `max-width` say
    Number rowWidth = 0;      ///< no less than its paddings
    Number rowContentWidth = 0;  ///< of the row
    EdgesOf<Number> containerPadding, rowPadding;
    Number columnWidth = 0, columnGap = 0, rowGap = 0;
    EdgesOf<Number> cardPadding;  ///< as laid: room for a picture beside the text included
    Number cardBorder = 0;
    Number cardContent = 0;  ///< content width of a card
    Number besidePictureWidth = 0;  ///< of a picture beside the text
    Number besideInset = 0;  ///< from the card's padding edge to that picture
};

/// The row's outline at one width: what stands down the page is on the profile's grid. CSS px.
struct Frame : InlineSizes<double> {
    Box container, row;
    double contentX = 0, contentY = 0;  ///< of the row
};

/// `edges` with top and bottom on the profile's grid.
Edges snappedEdges(const Edges& edges, const text::BreakProfile& profile);

Frame frameAt(const BandPlan& band, double width);
/// Computed size of a role in CSS px within a frame.
double sizeOf(const RolePlan& role, const Frame& frame);

}  // namespace tenter::layout
