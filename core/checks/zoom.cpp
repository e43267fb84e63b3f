// Text that zooming cannot make twice as large. At zoom z a page W px wide is laid out W / z wide, so its
// text appears at z · size(W / z). WCAG 2.2 SC 1.4.4, failure F94.
#include <algorithm>
#include <cmath>
#include <limits>

#include "checks/check.h"
#include "checks/common_remedies.h"
#include "checks/phrases.h"
#include "project/wording.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::checks {

namespace {

using sweep::Interval;
using units::Linear;

constexpr double askedGain = 2;

/// The text of a role at zooms up to `limit`.
class Zoomed {
public:
    Zoomed(const std::vector<RolePiece>& pieces, double limit) : pieces_(pieces), limit_(limit) {
        for (std::size_t i = 0; i + 1 < pieces.size(); ++i)
            if (!goesOn(pieces[i], pieces[i + 1])) kinks_.push_back(i);
    }

    /// Calls `found(span, gain)` for the widths from `least` to `most` at which no zoom gives twice the size.
    /// `gain` is the largest that a zoom gives, at the end of the span where it is smaller.
    template <class Found>
    void where(double least, double most, Found&& found) const {
        std::vector<double> cuts{least, most};
        for (const RolePiece& piece : pieces_) {
            cuts.push_back(piece.to);
            cuts.push_back(piece.to * limit_);
        }
        std::ranges::sort(cuts);
        for (std::size_t i = 0; i + 1 < cuts.size(); ++i)
            if (cuts[i] >= least && cuts[i + 1] <= most && cuts[i + 1] - cuts[i] > sweep::leastStep)
                between(cuts[i], cuts[i + 1], found);
    }

private:
    template <class Found>
    void between(double from, double to, Found&& found) const {
        const Linear size = line(from, to);
        const std::vector<Linear> shown = sizesShown(from, to);
        Interval span{from, to};
        for (const Linear& one : shown) {
            const Linear missing = askedGain * size - one;
            const auto still = whereAbove({missing.at(span.from - from), missing.slope}, span.from, span.to);
            if (!still) return;
            span = *still;
        }
        const auto gain = [&](double width) {
            double most = 0;
            for (const Linear& one : shown)
                most = std::max(most, one.at(width - from));
            return most / size.at(width - from);
        };
        found(span, std::min(gain(span.from), gain(span.to)));
    }

    /// The sizes at the limit, and at each zoom that lays the page out as wide as a breakpoint or the end of
    /// a ramp. Between those z · size(W / z) is monotonic.
    [[nodiscard]] std::vector<Linear> sizesShown(double from, double to) const {
        const Linear narrow = line(from / limit_, to / limit_);
        std::vector<Linear> shown{{limit_ * narrow.value, narrow.slope}};
        for (const std::size_t i : kinks_) {
            const double at = pieces_[i].to;
            if (at * limit_ <= from || at >= to) continue;
            const double below = pieces_[i].size.at(at - pieces_[i].from);
            for (const double size : {below, pieces_[i + 1].size.value})
                shown.push_back({from * size / at, size / at});
        }
        return shown;
    }

    /// The size between two widths of one piece, starting at the first.
    [[nodiscard]] Linear line(double from, double to) const {
        const double middle = (from + to) / 2;
        const auto piece = std::ranges::lower_bound(pieces_, middle, {}, &RolePiece::to);
        const RolePiece& there = piece == pieces_.end() ? pieces_.back() : *piece;
        return {there.size.at(from - there.from), there.size.slope};
    }

    /// True if the size is one straight line over two neighbouring pieces: only the column differs.
    static bool goesOn(const RolePiece& one, const RolePiece& next) {
        const double end = one.size.at(one.to - one.from);
        return one.size.slope == next.size.slope && std::abs(end - next.size.value) <= units::tieTolerance;
    }

    const std::vector<RolePiece>& pieces_;
    double limit_;
    /// The pieces after which the size does not go on. There can be many more pieces than these.
    std::vector<std::size_t> kinks_;
};

/// Roles that a zoom up to a limit does not double, and the worst of them.
struct LimitedZoom {
    Cause cause;  ///< badness: minus the largest gain
    std::vector<std::string> texts;
    std::string worst;  ///< the text of the worst role
};

LimitedZoom limitedZoom(const Subject& subject, double limit) {
    LimitedZoom found;
    for (const CheckedRole& role : subject.roles) {
        if (role.pieces.empty()) continue;
        bool any = false;
        Zoomed(role.pieces, limit).where(subject.least, subject.most, [&](const Interval& span, double gain) {
            any = true;
            if (found.cause.add(role.place, span, -gain)) found.worst = roleText(role.name);
        });
        if (any) found.texts.push_back(roleText(role.name));
    }
    return found;
}

/// `inMost`: most browsers have this limit, not one alone. A largest size of `safe` times the smallest always
/// passes.
Statement statementOf(const Subject& subject, const LimitedZoom& found, double limit, bool inMost,
                      double safe) {
    const std::string widths = atWidths(subject, found.cause.runOfWorst());
    const std::string zoom = units::percent(limit);
    const std::string gain = units::figure(-found.cause.worst, 2, units::Rounding::Down);
    return {
        inMost
            ? wording::say("%1, %2 zoom (the highest zoom in most browsers) makes %3 only %4 times as large",
                           {widths, zoom, found.worst, gain})
            : wording::say("%1, %2 zoom (the highest zoom in one desktop browser) makes %3 only %4 times as "
                           "large",
                           {widths, zoom, found.worst, gain}),
        wording::say(
            "WCAG requires twice the size, but zoom narrows the viewport, and the text shrinks with it"),
        wording::say("Keep the largest size of %1 at most %2 times the smallest (Text › Font size)",
                     {project::listed(found.texts), units::figure(safe)})};
}

void checkZoom(const Subject& subject, Findings& out) {
    const project::Limits& limits = subject.limits();
    const LimitedZoom usual = limitedZoom(subject, limits.usualZoom);
    if (usual.cause.any()) {
        report(out, usual.cause,
               {Severity::Error, wording::say("WCAG 2.2 SC 1.4.4, failure F94"),
                statementOf(subject, usual, limits.usualZoom, true, 2.5), "usual"});
        return;
    }
    const LimitedZoom least = limitedZoom(subject, limits.leastZoom);
    if (!least.cause.any()) return;
    report(out, least.cause,
           {Severity::Warning, wording::say("WCAG 2.2 SC 1.4.4; the limit of 300\u00A0% was not verified"),
            statementOf(subject, least, limits.leastZoom, false, 1.5), "least"});
}

void remedyZoom(Candidates& out) {
    const bool usual = out.isFor("usual");
    const double safe = usual ? 2.5 : 1.5;
    const std::vector<std::string> roles = out.roles();
    double least = std::numeric_limits<double>::infinity();
    double most = 0;
    for (const CheckedRole& role : out.subject().roles) {
        if (std::ranges::find(roles, role.name) == roles.end()) continue;
        for (const RolePiece& piece : role.pieces)
            for (const double size : {piece.size.value, piece.size.at(piece.to - piece.from)}) {
                least = std::min(least, size);
                most = std::max(most, size);
            }
    }
    const double lower = std::ceil(most / safe * 10) / 10;
    const double upper = std::floor(least * safe * 10) / 10;
    proposeSizesWithin(out, roles, lower, std::numeric_limits<double>::infinity(),
                       wording::say("Make %1 at least %2 everywhere", {roleTexts(roles), units::px(lower)}));
    proposeSizesWithin(out, roles, 0, upper,
                       wording::say("Make %1 at most %2 everywhere", {roleTexts(roles), units::px(upper)}));
    out.solveSizes();
}

}  // namespace

extern const Check zoomCheck{
    .name = "zoom", .run = checkZoom, .dependsOnBreaks = false, .remedies = remedyZoom};

}  // namespace tenter::checks
