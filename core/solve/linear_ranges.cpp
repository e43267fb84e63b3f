#include "solve/linear_ranges.h"

#include <algorithm>

#include "layout/inline_sizes.h"

namespace tenter::solve {

namespace {

using units::Linear;

/// Inline margins, paddings and borders of a part at font size `em`, both sides, CSS px. Engines round a
/// border down to whole pixels, but not below 1 px. A border in em has no known width yet: it counts as wide
/// as it can be, or as narrow.
Linear inlineEdges(const layout::RolePlan& role, units::LengthBasisOf<Linear> basis, const Linear& em,
                   bool wideBorder) {
    basis.em = em;
    const layout::EdgesOf<Linear> margin = role.margin.resolve(basis);
    const layout::EdgesOf<Linear> padding = role.padding.resolve(basis);
    Linear border = layout::partBorder(role, basis);
    if (role.border.unit() == units::Unit::Em && !role.border.isZero())
        border = wideBorder ? Linear(1) + role.border.resolve(basis) : Linear(1);
    return margin.left + margin.right + padding.left + padding.right + 2.0 * border;
}

/// A length as its part in CSS px and its part in em.
std::pair<Linear, double> fixedAndEms(const units::Length& length, units::LengthBasisOf<Linear> basis) {
    basis.em = 0;
    const Linear fixed = length.resolve(basis);
    basis.em = 1;
    return {fixed, length.resolve(basis).value - fixed.value};
}

/// Distance from `range.from`, CSS px, up to which everything stays linear.
double linearFor(const LinearRange& range, const RampVariables& ramp, const std::vector<double>& cuts) {
    double until = std::min({range.available.until, range.mostAvailable.until, range.column.until,
                             range.followed.until, range.letter.until, range.word.until});
    for (const double knot : {ramp.from.width, ramp.to.width}) {
        const double ahead = (knot - range.followed.value) / range.followed.slope;
        if (range.followed.slope != 0 && ahead > sweep::leastStep) until = std::min(until, ahead);
    }
    for (const double cut : cuts)
        if (cut - range.from > sweep::leastStep) until = std::min(until, cut - range.from);
    return until;
}

}  // namespace

std::vector<LinearRange> linearRanges(const layout::LinearSizes& lines, std::size_t variant,
                                      std::uint32_t role, const RampSet& ramps, double least, double most,
                                      const std::vector<double>& cuts) {
    const layout::PreparedRow& row = lines.row();
    std::vector<LinearRange> ranges;
    sweep::Stride stride;
    sweep::walkIntervals(row, least, most, [&](std::size_t index, double from, double to) {
        const layout::IntervalPlan& plan = row.interval(index);
        const std::size_t band = plan.bandIndex;
        const layout::RolePlan& style = plan.roles[role];
        const bool followsCard =
            plan.band->settings.text.find(row.roles()[role])->follow == project::Follow::Card;
        const layout::InlineSizes<Linear>& sizes = lines.at(index, from);
        LinearRange range;
        range.from = from;
        range.band = band;
        const Linear wide = inlineEdges(style, sizes.basis, 0, true);
        range.emEdges = inlineEdges(style, sizes.basis, 1, true).value - wide.value;
        range.available = sizes.cardContent - wide;
        const Linear narrow = inlineEdges(style, sizes.basis, 0, false);
        range.leastEmEdges = inlineEdges(style, sizes.basis, 1, false).value - narrow.value;
        range.mostAvailable = sizes.cardContent - narrow;
        range.column = sizes.cardContent;
        range.followed = followsCard ? sizes.basis.cqi : sizes.basis.vw;
        std::tie(range.letter, range.emLetter) = fixedAndEms(style.letterSpacing, sizes.basis);
        std::tie(range.word, range.emWord) = fixedAndEms(style.wordSpacing, sizes.basis);
        const RampVariables& ramp = ramps.in(variant, band, row.roles()[role]);
        range.to = stride.next(from, linearFor(range, ramp, cuts), to);
        ranges.push_back(range);
        return range.to;
    });
    return ranges;
}

}  // namespace tenter::solve
