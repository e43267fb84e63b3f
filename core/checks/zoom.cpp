// Can text be had twice as large by zooming. At zoom z a page W px wide is laid out W / z wide, so its type
// is seen at z · size(W / z). WCAG 2.2 SC 1.4.4, failure F94.
#include <algorithm>

#include "checks/phrases.h"
#include "checks/registry.h"
#include "project/wording.h"

namespace tenter::checks {

namespace {

using sweep::Interval;
using units::Linear;

constexpr double askedGain = 2;

/// A role's type seen through zooms up to `limit`.
class Zoomed {
public:
    Zoomed(const std::vector<RolePiece>& pieces, double limit) : pieces_(pieces), limit_(limit) {}

    /// Calls `found(span, gain)` for widths from `least` to `most` at which no zoom gives twice the size;
    /// `gain` is the most any gives where it is least.
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
        const std::vector<Linear> seen = sizesSeen(from, to);
        Interval span{from, to};
        for (const Linear& one : seen) {
            const Linear missing = askedGain * size - one;
            const auto still = whereAbove({missing.at(span.from - from), missing.slope}, span.from, span.to);
            if (!still) return;
            span = *still;
        }
        const auto gain = [&](double width) {
            double most = 0;
            for (const Linear& one : seen)
                most = std::max(most, one.at(width - from));
            return most / size.at(width - from);
        };
        found(span, std::min(gain(span.from), gain(span.to)));
    }

    /// What is seen at the limit, and at each zoom that lays the page out as wide as a breakpoint or a ramp's
    /// end. Between those z · size(W / z) only rises or only falls.
    [[nodiscard]] std::vector<Linear> sizesSeen(double from, double to) const {
        const Linear narrow = line(from / limit_, to / limit_);
        std::vector<Linear> seen{{limit_ * narrow.value, narrow.slope}};
        for (std::size_t i = 0; i + 1 < pieces_.size(); ++i) {
            const double at = pieces_[i].to;
            if (at * limit_ <= from || at >= to) continue;
            const double below = pieces_[i].size.at(at - pieces_[i].from);
            for (const double size : {below, pieces_[i + 1].size.value})
                seen.push_back({from * size / at, size / at});
        }
        return seen;
    }

    /// The size's line between two widths of one piece, from the first.
    [[nodiscard]] Linear line(double from, double to) const {
        const double middle = (from + to) / 2;
        const auto piece = std::ranges::find_if(pieces_, [&](const RolePiece& p) { return middle <= p.to; });
        const RolePiece& there = piece == pieces_.end() ? pieces_.back() : *piece;
        return {there.size.at(from - there.from), there.size.slope};
    }

    const std::vector<RolePiece>& pieces_;
    double limit_;
};

struct ZoomLimited {
    Cause cause;
    std::vector<std::string> types;
    std::string worst;
};

ZoomLimited zoomedUnder(const Subject& subject, double limit) {
    ZoomLimited found;
    for (const RoleSeen& role : subject.roles) {
        if (role.pieces.empty()) continue;
        bool any = false;
        Zoomed(role.pieces, limit).where(subject.least, subject.most, [&](const Interval& span, double gain) {
            any = true;
            if (found.cause.add(role.card, role.part, span, -gain)) found.worst = typeOf(role.name);
        });
        if (any) found.types.push_back(typeOf(role.name));
    }
    return found;
}

std::string zoomGains(const ZoomLimited& found, double limit, const std::string& whose) {
    return "At " + percent(limit) + " zoom, " + whose + ", " + found.worst + " gets only " +
           figure(-found.cause.worst, 2) + " times as large where the page is " +
           px(wholeIn(found.cause.there), 0) + " wide";
}

}  // namespace

void checkZoom(const Subject& subject, Findings& out) {
    const project::Limits& limits = subject.limits();
    const ZoomLimited usual = zoomedUnder(subject, limits.usualZoom);
    if (usual.cause.any()) {
        tell(out, usual.cause,
             {"zoom", Severity::Error, "WCAG 2.2 SC 1.4.4, failure F94",
              zoomGains(usual, limits.usualZoom, "the most browsers have") +
                  ", since it shrinks as the zoomed page narrows; readers may ask for 2. Let " +
                  project::listed(usual.types) +
                  " grow less: a largest size of at most 2.5 times the smallest always does.",
              "usual"});
        return;
    }
    const ZoomLimited least = zoomedUnder(subject, limits.leastZoom);
    if (!least.cause.any()) return;
    tell(out, least.cause,
         {"zoom", Severity::Warning, "WCAG 2.2 SC 1.4.4; the limit of 300 % from memory",
          zoomGains(least, limits.leastZoom, "the limit of one large desktop browser") +
              "; others zoom to 500 % and reach 2. Let " + project::listed(least.types) +
              " grow less: a largest size of at most 1.5 times the smallest always does.",
          "least"});
}

}  // namespace tenter::checks
