#include "checks/wide.h"

#include <algorithm>

#include "checks/cause.h"
#include "layout/across.h"
#include "text/along.h"

namespace tenter::checks {

namespace {

using units::Linear;

/// How much wider than its room a part's widest word is.
Linear missingRoom(const layout::BandPlan& band, const layout::PartPlan& plan, double from) {
    const layout::Across<Linear> across = layout::acrossAt(band, Linear(from, 1));
    const layout::RolePlan& role = band.roles[plan.role];
    const layout::TextAcross<Linear> text = layout::textAcross(role, *plan.paragraph, across);
    text::LinesAlong query = text.query;
    query.overflowWrap = project::OverflowWrap::Normal;
    const Linear room =
        units::greater(Linear(0), across.cardContent - text.margin.left - text.margin.right) - text.edges;
    return text::minContent(*plan.paragraph, query) - room;
}

/// True if some line is wider than what it stands in; a word may still be broken where engines rescue it.
bool anyLineSticksOut(const layout::PreparedRow& row, std::size_t card, std::size_t part, double width) {
    const layout::BandPlan& band = row.band(row.bandAt(width));
    const layout::PartPlan& plan = band.cards[card].parts[part];
    const layout::TextAcross<double> text =
        layout::textAcross<double>(band.roles[plan.role], *plan.paragraph, layout::acrossAt(band, width));
    std::vector<text::Line> lines;
    text::breakLines(*plan.paragraph, text.query, row.profile(), lines);
    return std::ranges::any_of(
        lines, [&](const text::Line& line) { return line.width > text.query.available + text::hair; });
}

}  // namespace

bool cutsWords(const layout::PreparedRow& row, std::size_t card, std::size_t part, double width) {
    const layout::BandPlan& band = row.band(row.bandAt(width));
    const layout::RolePlan& role = band.roles[band.cards[card].parts[part].role];
    // A box that shrinks to its text is no narrower than its widest word, unless words break anywhere.
    return role.overflowWrap == project::OverflowWrap::Anywhere ||
           (role.overflowWrap == project::OverflowWrap::BreakWord && role.place == project::Place::Stretch);
}

std::vector<Wide> wideWords(const layout::PreparedRow& row, std::size_t card, std::size_t part, double least,
                            double most) {
    std::vector<Wide> found;
    sweep::Stride stride;
    sweep::overBands(row, least, most, [&](std::size_t index, double from, double to) {
        const layout::BandPlan& band = row.band(index);
        const layout::PartPlan& plan = band.cards[card].parts[part];
        const layout::RolePlan& role = band.roles[plan.role];
        const Linear missing = missingRoom(band, plan, from);
        const double end = stride.next(from, missing.until, to);
        const auto span = whereAbove(missing, from, end);
        if (!span) return end;
        const bool plain =
            role.overflowWrap == project::OverflowWrap::Normal && role.place == project::Place::Stretch;
        if (plain && !anyLineSticksOut(row, card, part, (span->from + span->to) / 2)) return end;
        const double at = missing.slope < 0 ? span->from : span->to;
        found.push_back({*span, missing.at(at - from), at});
        return end;
    });
    return found;
}

std::string widestWord(const layout::PreparedRow& row, std::size_t card, std::size_t part, double width) {
    const layout::BandPlan& band = row.band(row.bandAt(width));
    const layout::PartPlan& plan = band.cards[card].parts[part];
    const text::Paragraph& paragraph = *plan.paragraph;
    const layout::TextAcross<double> text =
        layout::textAcross<double>(band.roles[plan.role], paragraph, layout::acrossAt(band, width));
    std::uint32_t first = 0;
    double correction = 0;
    double widest = -1;
    std::string word;
    for (const text::Opportunity& end : paragraph.opportunities()) {
        const double wide = text::lineWidth(paragraph, text.query, first, correction, end);
        if (wide > widest) {
            widest = wide;
            word = paragraph.utf8(first, std::max(end.lineEnd, first));
        }
        first = end.cluster;
        correction = end.startCorrection;
    }
    return word;
}

}  // namespace tenter::checks
