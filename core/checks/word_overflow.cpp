#include "checks/word_overflow.h"

#include <algorithm>

#include "checks/cause.h"
#include "layout/inline_sizes.h"
#include "text/linear_lines.h"

namespace tenter::checks {

namespace {

using units::Linear;

/// By how much a part's widest word is wider than its box, CSS px.
Linear missingRoom(const layout::IntervalPlan& interval, const layout::PartPlan& plan,
                   const layout::InlineSizes<Linear>& across) {
    const layout::RolePlan& role = interval.roles[plan.role];
    const layout::TextInlineSizes<Linear> text = layout::textInlineSizes(role, *plan.paragraph, across);
    text::LinearLineQuery query = text.query;
    query.overflowWrap = project::OverflowWrap::Normal;
    const Linear room =
        units::max(Linear(0), across.cardContent - text.margin.left - text.margin.right) - text.edges;
    return text::minContent(*plan.paragraph, query) - room;
}

/// True if some line is wider than its box. A browser may still break an overlong word as a last resort.
bool anyLineOverflows(const layout::PreparedRow& row, project::PartRef place, double width) {
    const layout::IntervalPlan& interval = row.at(width);
    const layout::PartPlan& plan = interval.part(place);
    const layout::TextInlineSizes<double> text = layout::textInlineSizes<double>(
        interval.roles[plan.role], *plan.paragraph, layout::inlineSizesAt(interval, width));
    std::vector<text::Line> lines;
    text::breakLines(*plan.paragraph, text.query, row.profile(), lines);
    return std::ranges::any_of(lines, [&](const text::Line& line) {
        return line.width > text.query.available + text::fitTolerance;
    });
}

}  // namespace

bool breaksWords(const layout::PreparedRow& row, project::PartRef place, double width) {
    const layout::IntervalPlan& interval = row.at(width);
    const layout::RolePlan& role = interval.roles[interval.part(place).role];
    // A box that shrinks to its text is at least as wide as its widest word, unless words break anywhere.
    return role.overflowWrap == project::OverflowWrap::Anywhere ||
           (role.overflowWrap == project::OverflowWrap::BreakWord && role.place == project::Place::Stretch);
}

std::vector<WordOverflow> wordOverflows(const layout::LinearSizes& sizes, project::PartRef place,
                                        double least, double most) {
    const layout::PreparedRow& row = sizes.row();
    std::vector<WordOverflow> found;
    sweep::Stride stride;
    sweep::walkIntervals(row, least, most, [&](std::size_t index, double from, double to) {
        const layout::IntervalPlan& interval = row.interval(index);
        const layout::PartPlan& plan = interval.part(place);
        const layout::RolePlan& role = interval.roles[plan.role];
        const Linear missing = missingRoom(interval, plan, sizes.at(index, from));
        const double end = stride.next(from, missing.until, to);
        const auto span = whereAbove(missing, from, end);
        if (!span) return end;
        const bool plain =
            role.overflowWrap == project::OverflowWrap::Normal && role.place == project::Place::Stretch;
        if (plain && !anyLineOverflows(row, place, (span->from + span->to) / 2)) return end;
        const double at = missing.slope < 0 ? span->from : span->to;
        found.push_back({*span, missing.at(at - from), at});
        return end;
    });
    return found;
}

std::string widestWord(const layout::PreparedRow& row, project::PartRef place, double width) {
    const layout::IntervalPlan& interval = row.at(width);
    const layout::PartPlan& plan = interval.part(place);
    const text::Paragraph& paragraph = *plan.paragraph;
    const layout::TextInlineSizes<double> text = layout::textInlineSizes<double>(
        interval.roles[plan.role], paragraph, layout::inlineSizesAt(interval, width));
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
