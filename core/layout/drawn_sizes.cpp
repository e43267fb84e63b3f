#include "layout/drawn_sizes.h"

#include <algorithm>

#include "layout/inline_sizes.h"

namespace tenter::layout {
namespace {

/// Rounds each length as the engine does, for the column `index`.
struct EngineGrid {
    const text::BreakProfile& profile;
    int index = 0;
    double operator()(double length, const units::Length& declared) const {
        return profile.snapped(length, declared);
    }
    [[nodiscard]] double column(double room, int columns, double spare) const {
        // In a centred row the width of a card is a calculation with percentages.
        return spare > 0 ? profile.snapped(room / columns - spare, units::Length::percent(100))
                         : profile.columnWidth(room, columns, index);
    }
    /// An engine that truncates lengths that follow the viewport does so in calculations, too.
    [[nodiscard]] double term(double length, const units::Length& declared) const {
        return declared.unit() == units::Unit::Vw && profile.fluidStep() > 0
                   ? profile.snapped(length, declared)
                   : length;
    }
};

}  // namespace

double drawnSpacing(const RolePlan& role, const units::Length& spacing, const units::LengthBasis& basis) {
    return EngineGrid{*role.profile}.term(spacing.resolve(basis), spacing);
}

double drawnPictureWidth(const BandPlan& band, const InlineSizes<double>& card) {
    // A full-bleed picture and one with aligned parts get their widths from other lengths.
    if (band.bleed || band.levelled) return pictureWidth<double>(band, card);
    const EngineGrid rounded{*band.profile};
    const auto margin = [&](const units::Length& side) { return rounded(side.resolve(card.basis), side); };
    return std::max(0.0,
                    card.cardContent - margin(band.pictureMargin.left) - margin(band.pictureMargin.right));
}

InlineSizes<double> drawnSizesAt(const IntervalPlan& interval, double width, int column) {
    return inlineSizesAt(interval, width, EngineGrid{*interval.band->profile, column});
}

DrawnQuery drawnQuery(const RolePlan& role, const text::Paragraph& paragraph, const InlineSizes<double>& card,
                      text::DrawnPositions& positions) {
    const text::BreakProfile& profile = *role.profile;
    const double step = profile.fluidStep();
    units::LengthBasis basis = card.basis;
    basis.em = role.size.resolve(basis);
    const double border = partBorder(role, basis);
    basis.em = role.size.resolveTruncated(basis, step);
    const auto resolved = [&](const units::Length& length) {
        return profile.snapped(length.resolve(basis), length);
    };
    DrawnQuery drawn;
    text::LineQuery& query = drawn.query;
    query.letterSpacing = drawnSpacing(role, role.letterSpacing, basis);
    query.wordSpacing = drawnSpacing(role, role.wordSpacing, basis);
    query.overflowWrap = role.overflowWrap;
    query.balance = role.balance;
    const double size = std::max(basis.em, role.leastSize);
    text::findDrawnPositions(paragraph, query, size, profile, positions);
    query.letterSpacing = profile.drawnAdvance(query.letterSpacing);
    query.wordSpacing = profile.drawnAdvance(query.wordSpacing);
    query.size = profile.drawnSize(size, paragraph.strut().get());
    query.drawn = &positions;
    const double room =
        std::max(0.0, card.cardContent - resolved(role.margin.left) - resolved(role.margin.right));
    query.available = room - resolved(role.padding.left) - resolved(role.padding.right) - 2 * border;
    if (role.place != project::Place::Stretch) {
        drawn.fitsLabel = text::maxContent(paragraph, query) <= query.available;
        if (!drawn.fitsLabel) {
            const double least = text::minContent(paragraph, query);
            drawn.fitsWord = query.available < least;
            query.available = std::max(query.available, least);
        }
    }
    query.available = std::max(0.0, query.available) + profile.fitAllowance();
    return drawn;
}

}  // namespace tenter::layout
