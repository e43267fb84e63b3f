#include "checks/laid_lines.h"

#include "layout/across.h"
#include "text/along.h"

namespace tenter::checks {

namespace {

using units::Linear;

/// The breaker's witness that also keeps where lines start.
struct LineStarts {
    text::LineFollower follower;
    std::vector<std::uint32_t> starts = {};
    bool fits(const Linear& width) { return follower.fits(width); }
    void line(const text::LineStart& from, const text::Opportunity& end, const Linear& width,
              const Linear& over) {
        starts.push_back(from.cluster);
        follower.line(from, end, width, over);
    }
};

}  // namespace

void overLaidLines(
    const Subject& subject, const PartSeen& part, const sweep::Piece& piece,
    const std::function<void(const sweep::Interval&, const std::vector<std::uint32_t>&)>& found) {
    const layout::BandPlan& band = subject.row.band(piece.band);
    const layout::PartPlan& plan = band.cards[part.card].parts[part.part];
    const layout::RolePlan& role = band.roles[plan.role];
    if (role.balance) return;
    sweep::Stride stride;
    for (double at = piece.from; at < piece.to;) {
        const text::LinesAlong query =
            layout::textAcross(role, *plan.paragraph, layout::acrossAt(band, Linear(at, 1))).query;
        LineStarts witness{text::LineFollower(query.available, 0)};
        text::Breaker<Linear, LineStarts>(*plan.paragraph, query, witness).run();
        const double next = stride.next(at, witness.follower.until(), piece.to);
        found({at, next}, witness.starts);
        at = next;
    }
}

const text::Paragraph& paragraphIn(const Subject& subject, const PartSeen& part, const sweep::Piece& piece) {
    return *subject.row.band(piece.band).cards[part.card].parts[part.part].paragraph;
}

}  // namespace tenter::checks
