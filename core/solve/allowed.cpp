#include "solve/allowed.h"

#include <algorithm>

#include "solve/cancellation.h"
#include "solve/constraint.h"
#include "solve/model.h"

namespace tenter::solve {

namespace {

/// A linear bound over viewport widths.
struct Segment {
    sweep::Interval widths;
    double start = 0, end = 0;
    [[nodiscard]] double slope() const { return (end - start) / (widths.to - widths.from); }
    [[nodiscard]] double at(double width) const { return start + slope() * (width - widths.from); }
};

/// Widths and sizes closer than this are the same, CSS px.
constexpr double sameValue = 1e-7;
/// A bound from here on means that there is none, CSS px.
constexpr double noBound = 1e4;

void addVertex(std::vector<sweep::Curve>& curves, double width, double value, bool newCurve) {
    if (newCurve) curves.emplace_back();
    sweep::Curve& curve = curves.back();
    if (!curve.empty() && curve.back().width == width && std::abs(curve.back().value - value) < sameValue)
        return;
    curve.push_back({width, value});
}

/// The lower envelope of the segments: at each width the smallest of those there.
std::vector<sweep::Curve> lowerEnvelope(const std::vector<Segment>& segments,
                                        const std::stop_token& cancellation) {
    std::vector<double> cuts;
    for (const Segment& segment : segments) {
        cuts.push_back(segment.widths.from);
        cuts.push_back(segment.widths.to);
    }
    std::ranges::sort(cuts);
    std::vector<sweep::Curve> curves;
    double reached = -1;
    for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
        const double to = cuts[i + 1];
        if (to - cuts[i] < sameValue) continue;
        throwIfStopped(cancellation);
        for (double from = cuts[i]; to - from > sameValue;) {
            // The lowest segment just above `from`; below, the width at which another one crosses it.
            const Segment* lowest = nullptr;
            for (const Segment& one : segments) {
                if (one.widths.from > cuts[i] + sameValue || one.widths.to < to - sameValue) continue;
                if (lowest == nullptr) {
                    lowest = &one;
                    continue;
                }
                const double lead = lowest->at(from) - one.at(from);
                if (lead > sameValue || (lead > -sameValue && one.slope() < lowest->slope())) lowest = &one;
            }
            if (lowest == nullptr) break;
            double until = to;
            for (const Segment& one : segments) {
                if (one.widths.from > cuts[i] + sameValue || one.widths.to < to - sameValue) continue;
                const double closing = lowest->slope() - one.slope();
                const double meets = from + (one.at(from) - lowest->at(from)) / closing;
                if (closing > 0 && meets > from + sameValue) until = std::min(until, meets);
            }
            addVertex(curves, from, lowest->at(from), from - reached > sameValue);
            addVertex(curves, until, lowest->at(until), false);
            reached = from = until;
        }
    }
    return curves;
}

Allowed allowedSizesUntilStopped(const project::Project& project, std::size_t variant,
                                 const std::string& role, text::ParagraphStore& store,
                                 const Options& options) {
    const project::Wishes projectWishes = project::effectiveWishes(project);
    std::vector<Wish> wishes = singleWishes(project, projectWishes);
    std::vector<sweep::Interval> sameWidths;
    for (const Wish& wish : wishes)
        if (wish.role == role && wish.kind->traits.couplesVariants) sameWidths.push_back(wish.widths);
    std::erase_if(wishes, [&](const Wish& wish) { return wish.role != role || !wish.kind->boundsSize(); });
    Allowed allowed;
    if (wishes.empty()) return allowed;
    const std::vector<std::size_t> variants =
        sameWidths.empty() ? std::vector{variant} : project::everyVariant(project);
    const PreparedVariants prepared(project, variants, store, options.profile, options.cancellation);
    const RampSet ramps(project, variants, {role});
    const Model model(prepared, ramps, projectWishes, wishes);
    std::vector<Segment> upper;
    std::vector<Segment> lower;
    const std::vector<sweep::Interval> whole{{project.leastWidth, project.mostWidth}};
    const auto put = [&](const SizeBound& bound, const sweep::Interval& within) {
        const sweep::Interval& all = bound.widths;
        const sweep::Interval widths{std::max(all.from, within.from), std::min(all.to, within.to)};
        if (widths.to - widths.from < sameValue) return;
        if (bound.start.size >= noBound && bound.end.size >= noBound) return;
        const auto sizeAt = [&](double width) {
            const double along = (width - all.from) / (all.to - all.from);
            return bound.start.size + along * (bound.end.size - bound.start.size);
        };
        const double first = sizeAt(widths.from);
        const double last = sizeAt(widths.to);
        if (bound.upper)
            upper.push_back({widths, first, last});
        else
            lower.push_back({widths, -first, -last});
    };
    for (const VariantGeometry& geometry : model.geometries()) {
        const auto index = static_cast<std::uint32_t>(std::ranges::find(geometry.row->roles(), role) -
                                                      geometry.row->roles().begin());
        for (const Wish& wish : wishes)
            for (const SizeBound& bound : sizeBounds(model, geometry, index, wish))
                for (const sweep::Interval& widths : geometry.variant == variant ? whole : sameWidths)
                    put(bound, widths);
    }
    allowed.most = lowerEnvelope(upper, options.cancellation);
    allowed.least = lowerEnvelope(lower, options.cancellation);
    for (sweep::Curve& curve : allowed.least)
        for (sweep::Vertex& vertex : curve)
            vertex.value = -vertex.value;
    return allowed;
}

}  // namespace

Allowed allowedSizes(const project::Project& project, std::size_t variant, const std::string& role,
                     text::ParagraphStore& store, const Options& options) {
    try {
        return allowedSizesUntilStopped(project, variant, role, store, options);
    } catch (const Cancelled&) {
        Allowed allowed;
        allowed.isCancelled = true;
        return allowed;
    }
}

}  // namespace tenter::solve
