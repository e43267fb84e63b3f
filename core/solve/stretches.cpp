#include "solve/stretches.h"

#include <algorithm>

#include "layout/across.h"

namespace tenter::solve {

namespace {

using units::Linear;

/// A part's margins, paddings and borders at font size `em`, both sides. Engines snap a border down to whole
/// pixels, but not below one: if its width is in ems, it is told as wide as it may be, or as narrow.
Linear edgesAt(const layout::RolePlan& role, units::LengthBasisOf<Linear> basis, const Linear& em,
               bool wideBorder) {
    basis.em = em;
    const layout::EdgesOf<Linear> margin = role.margin.resolve(basis);
    const layout::EdgesOf<Linear> padding = role.padding.resolve(basis);
    Linear border = layout::partBorder(role, basis);
    if (role.border.unit() == units::Unit::Em && !role.border.isZero())
        border = wideBorder ? Linear(1) + role.border.resolve(basis) : Linear(1);
    return margin.left + margin.right + padding.left + padding.right + 2.0 * border;
}

/// What a length takes of the px and of the em.
std::pair<Linear, double> fixedAndEms(const units::Length& length, units::LengthBasisOf<Linear> basis) {
    basis.em = 0;
    const Linear fixed = length.resolve(basis);
    basis.em = 1;
    return {fixed, length.resolve(basis).value - fixed.value};
}

/// Where a stretch of this role ends, past `stretch.from`.
double endOf(const Stretch& stretch, const RampSought& ramp, const std::vector<double>& cuts) {
    double until = std::min({stretch.room.until, stretch.mostRoom.until, stretch.column.until,
                             stretch.follows.until, stretch.letter.until, stretch.word.until});
    for (const double knot : {ramp.from.width, ramp.to.width}) {
        const double ahead = (knot - stretch.follows.value) / stretch.follows.slope;
        if (stretch.follows.slope != 0 && ahead > sweep::leastStep) until = std::min(until, ahead);
    }
    for (const double cut : cuts)
        if (cut - stretch.from > sweep::leastStep) until = std::min(until, cut - stretch.from);
    return until;
}

}  // namespace

std::vector<Stretch> stretchesOf(const layout::PreparedRow& row, std::size_t variant, std::uint32_t role,
                                 const RampsSought& ramps, double least, double most,
                                 const std::vector<double>& cuts) {
    std::vector<Stretch> stretches;
    sweep::Stride stride;
    sweep::overBands(row, least, most, [&](std::size_t band, double from, double to) {
        const layout::BandPlan& plan = row.band(band);
        const layout::RolePlan& style = plan.roles[role];
        const bool followsCard = plan.settings.text.find(row.roles()[role])->follow == project::Follow::Card;
        const layout::Across<Linear> across = layout::acrossAt(plan, Linear(from, 1));
        Stretch stretch;
        stretch.from = from;
        stretch.band = band;
        const Linear fixed = edgesAt(style, across.basis, 0, true);
        stretch.emEdges = edgesAt(style, across.basis, 1, true).value - fixed.value;
        stretch.room = across.cardContent - fixed;
        const Linear narrow = edgesAt(style, across.basis, 0, false);
        stretch.leastEmEdges = edgesAt(style, across.basis, 1, false).value - narrow.value;
        stretch.mostRoom = across.cardContent - narrow;
        stretch.column = across.cardContent;
        stretch.follows = followsCard ? across.basis.cqi : across.basis.vw;
        std::tie(stretch.letter, stretch.emLetter) = fixedAndEms(style.letterSpacing, across.basis);
        std::tie(stretch.word, stretch.emWord) = fixedAndEms(style.wordSpacing, across.basis);
        const RampSought& ramp = ramps.in(variant, band, row.roles()[role]);
        stretch.to = stride.next(from, endOf(stretch, ramp, cuts), to);
        stretches.push_back(stretch);
        return stretch.to;
    });
    return stretches;
}

}  // namespace tenter::solve
