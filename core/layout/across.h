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
Number snappedBorder(const Number& length, const text::BreakProfile& profile) {
    const Number width = length + profile.borderLead();
    const units::Order some = units::order(Number(0), length);
    if (!some.less) {
        Number none = 0;
        units::hold(none, some.until);
        return none;
    }
    return units::greater(Number(1), units::wholeBelow(width));
}

/// The same of a part's border, which in em follows the size as the engine cuts it down.
template <class Number>
Number partBorder(const RolePlan& role, const units::LengthBasisOf<Number>& basis) {
    const text::BreakProfile& profile = *role.profile;
    Number border = snappedBorder(role.border.resolve(basis), profile);
    const double step = profile.fluidStep();
    if (step == 0 || role.size.isFlat() || role.border.unit() != units::Unit::Em) return border;
    const double whole = units::atStart(border);
    const auto shortOf = [&](double px) {
        const double wanted = (px - profile.borderLead()) / role.border.value();
        const units::Order which = role.size.cutBelow(basis, step, wanted);
        units::hold(border, which.until);
        return which.less;
    };
    if (whole > 0 && !shortOf(whole + 1))
        border += Number(1);
    else if (whole > 1 && shortOf(whole))
        border += Number(-1);
    return border;
}

template <class Number>
Across<Number> acrossAt(const BandPlan& band, const Number& width) {
    const project::Page& page = band.page;
    const Number none = 0;
    const auto upTo = [](const Number& length, const units::Length& most,
                         const units::LengthBasisOf<Number>& basis) {
        return most.isNone() ? length : units::lesser(length, most.resolve(basis));
    };
    Across<Number> across;
    const double bar = page.scrollbar.width;
    const bool outside = page.scrollbar.always && band.profile->vwExcludesSteadyScrollbar();
    across.basis.rem = page.rem();
    across.basis.em = page.rem();
    across.basis.vw = outside ? width - bar : width;
    across.basis.cqi = across.basis.vw;

    across.pageWidth = units::greater(none, width - bar);
    across.basis.percent = across.pageWidth;
    across.containerPadding = band.containerPadding.resolve(across.basis);
    across.containerWidth =
        upTo(page.container.width.resolve(across.basis), page.container.maxWidth, across.basis);
    const EdgesOf<Number>& outer = across.containerPadding;
    across.roomWidth = units::greater(none, across.containerWidth - outer.left - outer.right);

    across.basis.percent = across.roomWidth;
    across.rowPadding = band.rowPadding.resolve(across.basis);
    const EdgesOf<Number>& inner = across.rowPadding;
    across.rowOwnWidth = upTo(band.rowWidth.resolve(across.basis), band.rowMaxWidth, across.basis);
    across.rowWidth = units::greater(across.rowOwnWidth, inner.left + inner.right);
    across.contentWidth = across.rowWidth - inner.left - inner.right;

    across.basis.percent = across.contentWidth;
    across.columnGap = band.columnGap.resolve(across.basis);
    across.rowGap = band.rowGap.resolve(across.basis);
    across.columnWidth =
        units::greater(none, (across.contentWidth - (band.columns - 1) * across.columnGap) / band.columns);
    if (band.centred) across.columnWidth = units::greater(none, across.columnWidth - centredSpare);

    across.basis.percent = across.columnWidth;
    across.cardPadding = band.cardPadding.resolve(across.basis);
    const Number saidBorder = band.cardBorder.resolve(across.basis);
    across.cardBorder = snappedBorder(saidBorder, *band.profile);
    across.borderCut = saidBorder - across.cardBorder;
    if (band.beside) {
        Number& start = band.rightToLeft ? across.cardPadding.right : across.cardPadding.left;
        across.besideWidth = band.pictureShare.resolve(across.basis);
        across.besideInset = band.bleed ? none : start;
        start += across.besideInset + across.besideWidth;
    }
    if (band.beside) {
        // The picture is a share of its card, which its paddings may make wider than its column. It is told
        // as one of the card's padding box and of its borders as wide as they say (emit::withinPaddingBox).
        across.basis.percent = across.cardWidth() + 2 * across.borderCut;
        across.besideWidth = band.pictureShare.resolve(across.basis);
    }
    across.cardContent = units::greater(none, across.columnWidth - across.cardPadding.left -
                                                  across.cardPadding.right - 2 * across.cardBorder);
    across.basis.percent = across.cardContent;
    across.basis.cqi = across.cardContent;
    return across;
}

/// Margins of a picture that does not stand beside the text; across, it may run over the card's padding.
template <class Number>
EdgesOf<Number> pictureMargin(const BandPlan& band, const Across<Number>& card) {
    EdgesOf<Number> margin = band.pictureMargin.resolve(card.basis);
    if (band.bleed && !band.beside) {
        margin.left = -card.cardPadding.left;
        margin.right = -card.cardPadding.right;
    }
    return margin;
}

/// Width of its slot.
template <class Number>
Number pictureWidth(const BandPlan& band, const Across<Number>& card) {
    const EdgesOf<Number> margin = pictureMargin(band, card);
    Number room = card.cardContent - margin.left - margin.right;
    // On levels its width is said by the row's, with borders as wide as they say (emit::contentInRow).
    if (band.levelled) room = room - 2 * card.borderCut;
    return units::greater(Number(0), room);
}

/// What a text part measures across its card. CSS px.
template <class Number>
struct TextAcross {
    units::LengthBasisOf<Number> basis;  ///< em is the part's own
    Number letterSpacing = 0, wordSpacing = 0, border = 0;
    EdgesOf<Number> margin, padding;
    Number edges = 0;                 ///< paddings and borders of both sides
    Number available = 0;             ///< content width of its box
    text::LineQueryOf<Number> query;  ///< how its lines are broken
};

template <class Number>
TextAcross<Number> textAcross(const RolePlan& role, const text::Paragraph& paragraph,
                              const Across<Number>& card) {
    const Number none = 0;
    TextAcross<Number> part;
    part.basis = card.basis;
    part.basis.em = role.size.resolve(card.basis);
    part.letterSpacing = role.letterSpacing.resolve(part.basis);
    part.wordSpacing = role.wordSpacing.resolve(part.basis);
    part.margin = role.margin.resolve(part.basis);
    part.padding = role.padding.resolve(part.basis);
    part.border = partBorder(role, part.basis);
    part.edges = part.padding.left + part.padding.right + 2 * part.border;
    const Number room = units::greater(none, card.cardContent - part.margin.left - part.margin.right);
    part.query = {role.size.behind(card.basis, text::fluidLag),
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
                units::greater(part.query.available, text::minContent(paragraph, part.query));
            part.available = part.query.available;
        }
        units::hold(part.available, spare.until);
        units::hold(part.query.available, spare.until);
    }
    part.query.available = units::greater(none, part.query.available);
    part.available = units::greater(none, part.available);
    return part;
}

}  // namespace tenter::layout
