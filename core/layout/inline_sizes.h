// Inline sizes of a row: widths of the container, row, cards and parts. Templates over the number type: at
// one viewport width (double) or over a range of widths (units::Linear).
#pragma once

#include <cmath>

#include "layout/prepared.h"
#include "text/lines.h"

namespace tenter::layout {

/// Amount in CSS px by which cards of a centred row are narrower than their column. Without it an engine's
/// rounding could move the last card of a full line to the next line.
inline constexpr double centredSpare = 0.02;

/// Borders of this width in CSS px and more are not snapped. Nobody sees the px that it changes, and a border
/// in rem, under a root size that follows the viewport, would have an event for each of thousands of px.
inline constexpr double widestSnappedBorder = 1000;

/// `width` rounded down to whole device px, in CSS px.
template <class Number>
Number wholeDevicePx(const Number& width, double ratio) {
    return ratio == 1 ? units::floor(width) : units::floor(width * ratio) / ratio;
}

/// Border width in CSS px, snapped as engines do: to whole device px, at least one. CSS Values 4 § 5.4.
template <class Number>
Number snappedBorder(const Number& length, const text::BreakProfile& profile) {
    const Number width = length + profile.borderAllowance();
    const units::Order some = units::order(Number(0), length);
    if (!some.less) {
        Number none = 0;
        units::limitRange(none, some.until);
        return none;
    }
    const double ratio = profile.ratio();
    if (units::atStart(width) < widestSnappedBorder)
        return units::max(Number(1 / ratio), wholeDevicePx(width, ratio));
    const units::Order narrow = units::order(width, Number(widestSnappedBorder));
    Number snapped = narrow.less ? wholeDevicePx(width, ratio) : length;
    units::limitRange(snapped, narrow.until);
    return snapped;
}

/// Border width in CSS px of a part. A border in em refers to the font size that the engine has truncated.
template <class Number>
Number partBorder(const RolePlan& role, const units::LengthBasisOf<Number>& basis) {
    const text::BreakProfile& profile = *role.profile;
    Number border = snappedBorder(role.border.resolve(basis), profile);
    const double step = profile.fluidStep();
    const double whole = units::atStart(border);
    const double devicePx = 1 / profile.ratio();
    if (step == 0 || role.size.isFlat() || role.border.unit() != units::Unit::Em ||
        whole >= widestSnappedBorder)
        return border;
    const auto isNarrowerThan = [&](double px) {
        const double size = (px - profile.borderAllowance()) / role.border.value();
        const units::Order which = role.size.isTruncatedBelow(basis, step, size);
        units::limitRange(border, which.until);
        return which.less;
    };
    if (whole > 0 && !isNarrowerThan(whole + devicePx))
        border += Number(devicePx);
    else if (whole > devicePx && isNarrowerThan(whole))
        border += Number(-devicePx);
    return border;
}

/// Leaves lengths as they are computed.
struct Unrounded {
    template <class Number>
    const Number& operator()(const Number& length, const units::Length& /*declared*/) const {
        return length;
    }
    /// Width of a column, in CSS px: an equal share of `room`, less `spare`.
    template <class Number>
    [[nodiscard]] Number column(const Number& room, int columns, double spare) const {
        return room / columns - Number(spare);
    }
    /// A term of a calculation, of which only the sum is rounded.
    template <class Number>
    [[nodiscard]] const Number& term(const Number& length, const units::Length& /*declared*/) const {
        return length;
    }
};

/// Inline sizes of container, row and cards of `interval` at viewport width `width`, all in CSS px. `rounded`
/// rounds each length: Unrounded, or the grid of an engine (drawn_sizes.cpp).
template <class Number, class Rounding = Unrounded>
InlineSizes<Number> inlineSizesAt(const IntervalPlan& interval, const Number& width,
                                  const Rounding& rounded = {}) {
    const PagePlan& page = interval.page;
    const BandPlan& band = *interval.band;
    const Number none = 0;
    InlineSizes<Number> sizes;
    const auto resolved = [&](const units::Length& length) -> Number {
        return rounded(length.resolve(sizes.basis), length);
    };
    const auto limited = [&](const units::Length& length, const units::Length& most) -> Number {
        return most.isNone() ? resolved(length) : units::min(resolved(length), resolved(most));
    };
    const auto edges = [&](const Lengths& sides) -> EdgesOf<Number> {
        return {resolved(sides.top), resolved(sides.right), resolved(sides.bottom), resolved(sides.left)};
    };
    const double scrollbar = page.scrollbar.width;
    const bool vwExcludesScrollbar = page.scrollbar.always && band.profile->vwExcludesSteadyScrollbar();
    sizes.basis.vw = vwExcludesScrollbar ? units::max(none, width - scrollbar) : width;
    const double truncation = page.rootSize.truncation(sizes.basis.vw, band.profile->fluidStep());
    sizes.basis.rem = page.rootSize.resolve(page.readerSize, sizes.basis.vw, truncation);
    sizes.basis.em = sizes.basis.rem;
    sizes.basis.cqi = sizes.basis.vw;

    sizes.pageWidth = units::max(none, width - scrollbar);
    sizes.basis.percent = sizes.pageWidth;
    sizes.containerPadding = edges(page.containerPadding);
    sizes.containerWidth =
        limited(page.containerWidth, page.containerMaxWidth) + Number(page.containerAddedWidth);
    const EdgesOf<Number>& containerEdges = sizes.containerPadding;
    sizes.containerContentWidth =
        units::max(none, sizes.containerWidth - containerEdges.left - containerEdges.right);

    sizes.basis.percent = sizes.containerContentWidth;
    sizes.rowPadding = edges(band.rowPadding);
    const EdgesOf<Number>& rowEdges = sizes.rowPadding;
    const Number specifiedWidth = limited(band.rowWidth, band.rowMaxWidth);
    sizes.rowWidth = units::max(specifiedWidth, rowEdges.left + rowEdges.right);
    sizes.rowContentWidth = sizes.rowWidth - rowEdges.left - rowEdges.right;

    sizes.basis.percent = sizes.rowContentWidth;
    sizes.columnGap = resolved(band.columnGap);
    sizes.rowGap = resolved(band.rowGap);
    // The width of a card in a centred row is one calculation, in which the gap is not rounded.
    const Number gap =
        band.centred ? rounded.term(band.columnGap.resolve(sizes.basis), band.columnGap) : sizes.columnGap;
    const Number columns = sizes.rowContentWidth - (band.columns - 1) * gap;
    sizes.columnWidth =
        units::max(none, rounded.column(columns, band.columns, band.centred ? centredSpare : 0));

    // In a centred row the stylesheet states percentages of the column as shares of the row (emit::ofColumn).
    sizes.basis.percent = band.centred ? units::max(none, columns / band.columns) : sizes.columnWidth;
    sizes.cardPadding = edges(band.cardPadding);
    const Number specifiedBorder = band.cardBorder.resolve(sizes.basis);
    sizes.cardBorder = snappedBorder(specifiedBorder, *band.profile);
    sizes.borderDifference = specifiedBorder - sizes.cardBorder;
    if (band.beside) {
        Number& start = band.rightToLeft ? sizes.cardPadding.right : sizes.cardPadding.left;
        sizes.besidePictureWidth = band.pictureShare.resolve(sizes.basis);
        sizes.besideInset = band.bleed ? none : start;
        // One calculation in the stylesheet (emit::besidesPicture).
        const units::Length& once = band.rightToLeft ? band.cardPadding.right : band.cardPadding.left;
        const units::Length side = band.bleed ? once : once.times(2);
        start = rounded(rounded.term(side.resolve(sizes.basis), side) + sizes.besidePictureWidth,
                        band.pictureShare);
        // The stylesheet states the width as a share of the card's padding box plus the specified borders
        // (emit::withinPaddingBox). A card with wide padding is wider than its column.
        sizes.basis.percent = sizes.cardWidth() + 2 * sizes.borderDifference;
        sizes.besidePictureWidth = band.pictureShare.resolve(sizes.basis);
    }
    sizes.cardContent = units::max(
        none, sizes.columnWidth - sizes.cardPadding.left - sizes.cardPadding.right - 2 * sizes.cardBorder);
    sizes.basis.percent = sizes.cardContent;
    sizes.basis.cqi = sizes.cardContent;
    return sizes;
}

/// Content width in CSS px of a card, as the stylesheet states it in units of the row with aligned parts:
/// less padding and the specified borders (emit::contentInRow), even if the column has no room for these.
template <class Number>
Number contentInRow(const InlineSizes<Number>& card) {
    return card.columnWidth - card.cardPadding.left - card.cardPadding.right -
           2 * (card.cardBorder + card.borderDifference);
}

/// Margins in CSS px of a picture above the text. A full-bleed picture has negative inline margins, so that
/// it covers the card's padding.
template <class Number>
EdgesOf<Number> pictureMargin(const BandPlan& band, const InlineSizes<Number>& card) {
    EdgesOf<Number> margin = band.pictureMargin.resolve(card.basis);
    if (band.levelled) {
        units::LengthBasisOf<Number> inRow = card.basis;
        inRow.percent = contentInRow(card);
        margin.top = band.pictureMargin.top.resolve(inRow);
        margin.bottom = band.pictureMargin.bottom.resolve(inRow);
    }
    if (band.bleed && !band.beside) {
        margin.left = -card.cardPadding.left;
        margin.right = -card.cardPadding.right;
    }
    return margin;
}

/// Width in CSS px of the slot of a picture above the text.
template <class Number>
Number pictureWidth(const BandPlan& band, const InlineSizes<Number>& card) {
    const EdgesOf<Number> margin = pictureMargin(band, card);
    Number room = card.cardContent - margin.left - margin.right;
    if (band.levelled) room = contentInRow(card) - margin.left - margin.right;
    return units::max(Number(0), room);
}

/// Inline sizes of a text part in its card, in CSS px.
template <class Number>
struct TextInlineSizes {
    units::LengthBasisOf<Number> basis;  ///< em is the part's font size
    Number letterSpacing = 0, wordSpacing = 0, border = 0;
    EdgesOf<Number> margin, padding;
    Number edges = 0;                 ///< padding and border of both sides
    Number available = 0;             ///< content width of its box
    bool fitsLabel = false;           ///< true if its text on one line decides that width
    bool fitsWord = false;            ///< true if a word that is not cut decides that width
    text::LineQueryOf<Number> query;  ///< the values its lines are broken with
};

/// Letter or word spacing in CSS px as the engine adds it: rounded to its grid where it does not depend on
/// the width, less the mean truncation where it follows the viewport.
template <class Number>
Number meanSpacing(const RolePlan& role, const units::Length& spacing,
                   const units::LengthBasisOf<Number>& basis) {
    const text::BreakProfile& profile = *role.profile;
    const auto drawn = [&](double length) { return profile.drawnAdvance(length); };
    const Number length = spacing.resolve(basis);
    if (spacing.unit() == units::Unit::Px || (spacing.unit() == units::Unit::Rem && !role.fluidRoot))
        return drawn(units::atStart(length));
    if (spacing.unit() == units::Unit::Em) return role.size.resolveDrawn(spacing.value(), basis, 0, drawn);
    if (spacing.unit() != units::Unit::Vw) return length;
    return length - Number(std::copysign(profile.fluidStep() / 2, spacing.value()));
}

/// Spacing, margins, padding and border of a text part in `role`, in a card of the sizes `card`.
template <class Number>
TextInlineSizes<Number> textEdges(const RolePlan& role, const InlineSizes<Number>& card) {
    TextInlineSizes<Number> part;
    part.basis = card.basis;
    part.basis.em = role.size.resolve(card.basis);
    part.letterSpacing = role.letterSpacing.resolve(part.basis);
    part.wordSpacing = role.wordSpacing.resolve(part.basis);
    part.margin = role.margin.resolve(part.basis);
    part.padding = role.padding.resolve(part.basis);
    part.border = partBorder(role, part.basis);
    part.edges = part.padding.left + part.padding.right + 2 * part.border;
    return part;
}

/// Inline sizes of `paragraph` in `role`, in a card of the sizes `card`.
template <class Number>
TextInlineSizes<Number> textInlineSizes(const RolePlan& role, const text::Paragraph& paragraph,
                                        const InlineSizes<Number>& card) {
    const Number none = 0;
    TextInlineSizes<Number> part = textEdges(role, card);
    const Number room = units::max(none, card.cardContent - part.margin.left - part.margin.right);
    const text::Face* face = paragraph.strut().get();
    const auto drawnSize = [&](double size) { return role.profile->drawnSize(size, face); };
    const Number size = role.size.resolveDrawn(1, card.basis, role.profile->meanTruncation(), drawnSize);
    part.query = {role.leastSize > 0 ? units::max(size, Number(role.leastSize)) : size,
                  room - part.edges,
                  meanSpacing(role, role.letterSpacing, part.basis),
                  meanSpacing(role, role.wordSpacing, part.basis),
                  role.overflowWrap,
                  role.balance};
    part.available = part.query.available;
    if (role.place != project::Place::Stretch) {
        // Shrink to fit: `fit-content`, CSS Sizing 3 § 5.1. A label that fits decides the width of its box,
        // but the slack of its lines refers to the available width, because the box grows with the label.
        const Number most = text::maxContent(paragraph, part.query);
        const units::Order spare = units::order(most, part.query.available);
        if (spare.less) {
            part.available = most;
            part.fitsLabel = true;
        } else {
            const Number least = text::minContent(paragraph, part.query);
            part.fitsWord = units::order(part.query.available, least).less;
            part.query.available = units::max(part.query.available, least);
            part.available = part.query.available;
        }
        units::limitRange(part.available, spare.until);
        units::limitRange(part.query.available, spare.until);
    }
    part.query.available = units::max(none, part.query.available) + role.profile->fitAllowance();
    part.available = units::max(none, part.available);
    return part;
}

}  // namespace tenter::layout
