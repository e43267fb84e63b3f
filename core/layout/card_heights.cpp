#include "layout/card_heights.h"

#include <algorithm>

namespace tenter::layout {

namespace {

/// Height of the minimum lines of a role. The stylesheet prints it as one length, which the engine rounds
/// once; the same number of lines can be taller, because the height of each line is rounded.
double minimumContentHeight(const RolePlan& role, const units::LengthBasis& basis) {
    if (role.keepLines == 0) return 0;
    if (role.lineHeight.isNumber())
        return role.profile->snapped(role.keepLines * role.lineHeight.number() * basis.em);
    const units::Length lines = role.lineHeight.length().times(role.keepLines);
    return role.profile->snapped(lines.resolve(basis), lines);
}

/// Margins or paddings of a part: left and right from `across`, top and bottom from `sides` resolved against
/// `basis` and rounded to the engine's grid.
Edges edgesOf(const Edges& across, const Lengths& sides, const units::LengthBasis& basis,
              const text::BreakProfile& profile) {
    const Edges down = sides.resolve(basis);
    return snappedEdges({down.top, across.right, down.bottom, across.left}, sides, profile);
}

}  // namespace

TextHeights textHeights(const RolePlan& role, const TextInlineSizes<double>& across,
                        units::LengthBasis basis) {
    const text::BreakProfile& profile = *role.profile;
    basis.em = role.size.resolveTruncated(basis, profile.fluidStep());
    TextHeights heights;
    heights.basis = basis;
    heights.drawnSize = std::max(basis.em, role.leastSize);
    heights.lineHeight =
        role.lineHeight.isNumber()
            ? profile.lineHeight(heights.drawnSize, role.lineHeight.number())
            : profile.lineHeight(role.lineHeight.length().resolve(basis), role.lineHeight.length());
    heights.minimumHeight = minimumContentHeight(role, basis);
    heights.margin = edgesOf(across.margin, role.margin, basis, profile);
    heights.padding = edgesOf(across.padding, role.padding, basis, profile);
    return heights;
}

units::LengthBasis snappedBasis(const BandPlan& band, const Frame& frame) {
    const auto on = [&](double length, const units::Length& declared) {
        return band.profile->snapped(length, declared);
    };
    units::LengthBasis basis = frame.basis;
    basis.cqi = std::max(0.0, band.profile->snapped(frame.columnWidth) -
                                  on(frame.cardPadding.left, band.cardPadding.left) -
                                  on(frame.cardPadding.right, band.cardPadding.right) - 2 * frame.cardBorder);
    return basis;
}

PartHeights pictureHeights(const BandPlan& band, const InlineSizes<double>& sizes, const CardPlan& card,
                           std::size_t part, double slotWidth) {
    const Edges margin = snappedEdges(pictureMargin<double>(band, sizes), band.pictureMargin, *band.profile);
    PartHeights heights{margin.top, margin.bottom, band.profile->snapped(slotWidth / card.parts[part].ratio),
                        0};
    if (band.bleed && !band.beside) {
        if (part == 0) heights.above = -sizes.cardPadding.top;
        if (part + 1 == card.parts.size()) heights.below = -sizes.cardPadding.bottom;
    }
    return heights;
}

double CardHeights::own() const {
    double height = frame_.cardPadding.top + frame_.cardPadding.bottom + 2 * frame_.cardBorder;
    for (std::size_t i = 0; i < parts_.size(); ++i)
        if (!isBeside(i)) height += parts_[i].outer();
    return height;
}

// CSS Grid 2 § 9: the subgrid's gap (0) differs from the row's, so half the difference is added on each side
// of a gap.
void CardHeights::levels(std::vector<double>& own, bool ofRow) const {
    const std::size_t levels = band_.levels.count;
    const double half = halfGap();
    own.assign(levels, 0);
    const auto sides = [&](std::size_t level) { return (level > 0 ? 1 : 0) + (level + 1 < levels ? 1 : 0); };
    // A level at the edge without a part still holds the card's padding and border, and its share of the gap.
    own.front() = sides(0) * half;
    own.back() = sides(levels - 1) * half;
    for (std::size_t i = 0; i < parts_.size(); ++i)
        if (!isBeside(i)) {
            const std::size_t level = card_.parts[i].level;
            own[level] = std::max(parts_[i].outer(), sides(level) * half);
        }
    own.front() += edgeAbove();
    own.back() += edgeBelow();
    for (std::size_t level = 0; level < levels; ++level)
        own[level] = std::max(own[level], sides(level) * half);
    // Firefox 153 finds the least height of a part before it knows the width of a subgrid that it has laid
    // out no text of, and then takes percentages for 0; later it places the parts by their full heights. In a
    // row of 876 px with gaps of 20.96 px, a card whose first text has `min-height: 55.44px` and paddings
    // of 2.5 % and 2.66 % is 20.96 px taller than its share of the height of the row.
    bool first = ofRow;
    if (band_.profile->addsGapToMinHeight())
        for (std::size_t i = 0; i < parts_.size(); ++i) {
            const double unknown = first ? parts_[i].shares : 0;
            first = first && card_.parts[i].picture;
            if (isBeside(i) || parts_[i].minimum == 0) continue;
            const std::size_t level = card_.parts[i].level;
            const double minimum = parts_[i].above + parts_[i].below + parts_[i].minimum - unknown;
            if (minimum > 0) own[level] = std::max(own[level], minimum + sides(level) * half);
        }
    for (std::size_t level = 0; level < levels; ++level)
        own[level] += restOfGap(level);
}

double CardHeights::inLevel(std::size_t part) const {
    const std::size_t level = card_.parts[part].level;
    double height = parts_[part].outer();
    if (level == 0) height += edgeAbove();
    if (level + 1 == band_.levels.count) height += edgeBelow();
    return height + restOfGap(level);
}

int CardHeights::autoMargins() const {
    int count = 0;
    for (std::size_t i = 0; i < parts_.size(); ++i)
        count += hasAutoMargin(i) ? 1 : 0;
    return count;
}

void CardHeights::contribute(CardContribution& contribution) const {
    contribution.autoMarginLevel = -1;
    if (band_.levelled)
        levels(contribution.levels);
    else
        contribution.levels.assign(1, own());
    for (std::size_t i = 0; i < parts_.size(); ++i) {
        if (!hasAutoMargin(i)) continue;
        const std::size_t level = band_.levelled ? card_.parts[i].level : 0;
        contribution.autoMarginLevel = static_cast<int>(level);
        contribution.autoMarginHeight = band_.levelled ? inLevel(i) : contribution.levels.front();
        contribution.autoMarginParts = band_.levelled ? 1 : autoMargins();
        break;
    }
}

}  // namespace tenter::layout
