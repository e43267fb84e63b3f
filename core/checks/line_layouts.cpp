#include "checks/line_layouts.h"

#include "layout/inline_sizes.h"
#include "text/linear_lines.h"

namespace tenter::checks {

namespace {

using units::Linear;

/// A witness of the breaker that keeps the clusters at which lines start.
struct LineStarts {
    text::LinearLineCounter follower;
    std::vector<std::uint32_t> starts = {};
    bool fits(const Linear& width) { return follower.fits(width); }
    void line(const text::LineStart& from, const text::Opportunity& end, const Linear& width,
              const Linear& over) {
        starts.push_back(from.cluster);
        follower.line(from, end, width, over);
    }
};

}  // namespace

void forEachLineLayout(
    const Subject& subject, const CheckedPart& part, const sweep::Piece& piece,
    const std::function<void(const sweep::Interval&, const std::vector<std::uint32_t>&)>& found) {
    const layout::IntervalPlan& interval = subject.row.interval(piece.interval);
    const layout::PartPlan& plan = interval.part(part.place);
    const layout::RolePlan& role = interval.roles[plan.role];
    if (role.balance) return;
    sweep::Stride stride;
    for (double at = piece.from; at < piece.to;) {
        const text::LinearLineQuery query =
            layout::textInlineSizes(role, *plan.paragraph, layout::inlineSizesAt(interval, Linear(at, 1)))
                .query;
        LineStarts witness{text::LinearLineCounter(query.available, 0)};
        text::Breaker<Linear, LineStarts>(*plan.paragraph, query, witness).run();
        const double next = stride.next(at, witness.follower.until(), piece.to);
        found({at, next}, witness.starts);
        at = next;
    }
}

const text::Paragraph& paragraphIn(const Subject& subject, const CheckedPart& part,
                                   const sweep::Piece& piece) {
    return *subject.row.band(piece.band).part(part.place).paragraph;
}

}  // namespace tenter::checks
