// What a row measures across the page, in whatever numbers: at one width, or along a stretch of widths.
#pragma once

#include "layout/prepared.h"
#include "text/lines.h"

namespace tenter::layout {

/// What the emitted width of a centred row's cards leaves out, so that no engine's rounding sends the last
/// card of a full line to the next one. CSS px.
inline constexpr double centredSpare = 0.02;

/// A border's width as engines snap it at one device pixel to a CSS px: whole pixels, at least one. CSS
/// Values 4 § 5.4.
template <class Number>
Number snappedBorder(const Number& width) {
    const units::Order some = units::order(Number(0), width);
    if (!some.less) {
        Number none = 0;
        units::limitRange(none, some.until);
        return none;
    }
    return units::max(Number(1), units::floor(width));
}

template <class Number>
InlineSizes<Number> inlineSizesAt(const BandPlan& band, const Number& width) {
    const project::Page& page = band.page;
    const Number none = 0;
    const auto upTo = [](const Number& length, const units::Length& most,
                         const units::LengthBasisOf<Number>& basis) {
        return most.isNone() ? length : units::min(length, most.resolve(basis));
    };
    InlineSizes<Number> across;
    const double bar = page.scrollbar.width;
    const bool outside = page.scrollbar.always && band.profile->vwExcludesSteadyScrollbar();
    across.basis.rem = page.rem();
    across.basis.em = page.rem();
    across.basis.vw = outside ? width - bar : width;
    across.basis.cqi = across.basis.vw;

    across.pageWidth = units::max(none, width - bar);
    across.basis.percent = across.pageWidth;
    across.containerPadding = band.containerPadding.resolve(across.basis);
    across.containerWidth =
        upTo(page.container.width.resolve(across.basis), page.container.maxWidth, across.basis);
    const EdgesOf<Number>& outer = across.containerPadding;
    across.containerContentWidth = units::max(none, across.containerWidth - outer.left - outer.right);

    across.basis.percent = across.containerContentWidth;
    across.rowPadding = band.rowPadding.resolve(across.basis);
    const EdgesOf<Number>& inner = across.rowPadding;
    across.rowSpecifiedWidth = upTo(band.rowWidth.resolve(across.basis), band.rowMaxWidth, across.basis);
    across.rowWidth = units::max(across.rowSpecifiedWidth, inner.left + inner.right);
    across.rowContentWidth = across.rowWidth - inner.left - inner.right;

    across.basis.percent = across.rowContentWidth;
    across.columnGap = band.columnGap.resolve(across.basis);
    across.rowGap = band.rowGap.resolve(across.basis);
    across.columnWidth =
        units::max(none, (across.rowContentWidth - (band.columns - 1) * across.columnGap) / band.columns);
    if (band.centred) across.columnWidth = units::max(none, across.columnWidth - centredSpare);

    across.basis.percent = across.columnWidth;
    across.cardPadding = band.cardPadding.resolve(across.basis);
    across.cardBorder = snappedBorder(band.cardBorder.resolve(across.basis));
    if (band.beside) {
        Number& start = band.rightToLeft ? across.cardPadding.right : across.cardPadding.left;
        across.besidePictureWidth = band.pictureShare.resolve(across.basis);
        across.besideInset = band.bleed ? none : start;
        start += across.besideInset + across.besidePictureWidth;
    }
    across.cardContent = units::max(none, across.columnWidth - across.cardPadding.left -
                                                  across.cardPadding.right - 2 * across.cardBorder);
    across.basis.percent = across.cardContent;
    across.basis.cqi = across.cardContent;
    return across;
}

/// Margins of a picture that does not stand beside the text; across, it may run over the card's padding.
template <class Number>
EdgesOf<Number> pictureMargin(const BandPlan& band, const InlineSizes<Number>& card) {
    EdgesOf<Number> margin = band.pictureMargin.resolve(card.basis);
    if (band.bleed && !band.beside) {
        margin.left = -card.cardPadding.left;
        margin.right = -card.cardPadding.right;
    }
    return margin;
}

/// Width of its slot.
template <class Number>
Number pictureWidth(const BandPlan& band, const InlineSizes<Number>& card) {
    const EdgesOf<Number> margin = pictureMargin(band, card);
    return units::max(Number(0), card.cardContent - margin.left - margin.right);
}

/// What a text part measures across its card. CSS px.
template <class Number>
struct TextInlineSizes {
    units::LengthBasisOf<Number> basis;  ///< em is the part's own
    Number letterSpacing = 0, wordSpacing = 0, border = 0;
    EdgesOf<Number> margin, padding;
    Number edges = 0;                 ///< paddings and borders of both sides
    Number available = 0;             ///< content width of its box
    text::LineQueryOf<Number> query;  ///< how its lines are broken
};

template <class Number>
TextInlineSizes<Number> textInlineSizes(const RolePlan& role, const text::Paragraph& paragraph,
                              const InlineSizes<Number>& card) {
    const Number none = 0;
    TextInlineSizes<Number> part;
    part.basis = card.basis;
    part.basis.em = role.size.resolve(card.basis);
    part.letterSpacing = role.letterSpacing.resolve(part.basis);
    part.wordSpacing = role.wordSpacing.resolve(part.basis);
    part.margin = role.margin.resolve(part.basis);
    part.padding = role.padding.resolve(part.basis);
    part.border = snappedBorder(role.border.resolve(part.basis));
    part.edges = part.padding.left + part.padding.right + 2 * part.border;
    const Number room = units::max(none, card.cardContent - part.margin.left - part.margin.right);
    part.query = {role.size.resolveReduced(card.basis, text::fluidTruncation),
                  room - part.edges,
                  part.letterSpacing,
                  part.wordSpacing,
                  role.overflowWrap,
                  role.balance};
    part.available = part.query.available;
    if (role.place != project::Place::Stretch) {
        // Shrink to fit. CSS Sizing 3 § 5.1, fit-content. A label with room to spare is as wide as itself,
        // but its lines' slack is how far it is from the room there is: the box grows with the label.
        const Number most = text::maxContent(paragraph, part.query);
        const units::Order spare = units::order(most, part.query.available);
        if (spare.less) {
            part.available = most;
        } else {
            part.query.available =
                units::max(part.query.available, text::minContent(paragraph, part.query));
            part.available = part.query.available;
        }
        units::limitRange(part.available, spare.until);
        units::limitRange(part.query.available, spare.until);
    }
    part.query.available = units::max(none, part.query.available);
    part.available = units::max(none, part.available);
    return part;
}

}  // namespace tenter::layout
