#include "solve/allowed.h"

#include <algorithm>

#include "solve/model.h"

namespace tenter::solve {

namespace {

/// A straight line over widths.
struct Segment {
    sweep::Interval widths;
    double start = 0, end = 0;
    [[nodiscard]] double slope() const { return (end - start) / (widths.to - widths.from); }
    [[nodiscard]] double at(double width) const { return start + slope() * (width - widths.from); }
};

/// Widths and sizes nearer than this are one, CSS px.
constexpr double apart = 1e-7;
/// What is bounded by no less is not bounded, CSS px.
constexpr double noBound = 1e4;

void addVertex(std::vector<sweep::Curve>& curves, double width, double value, bool anew) {
    if (anew) curves.emplace_back();
    sweep::Curve& curve = curves.back();
    if (!curve.empty() && curve.back().width == width && std::abs(curve.back().value - value) < apart) return;
    curve.push_back({width, value});
}

/// The lower edge of all segments: at each width the least of those there.
std::vector<sweep::Curve> lowerEdge(const std::vector<Segment>& segments) {
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
        if (to - cuts[i] < apart) continue;
        for (double from = cuts[i]; to - from > apart;) {
            // The lowest just past `from`, and where another one dives below it.
            const Segment* lowest = nullptr;
            for (const Segment& one : segments) {
                if (one.widths.from > cuts[i] + apart || one.widths.to < to - apart) continue;
                if (lowest == nullptr) {
                    lowest = &one;
                    continue;
                }
                const double lead = lowest->at(from) - one.at(from);
                if (lead > apart || (lead > -apart && one.slope() < lowest->slope())) lowest = &one;
            }
            if (lowest == nullptr) break;
            double until = to;
            for (const Segment& one : segments) {
                if (one.widths.from > cuts[i] + apart || one.widths.to < to - apart) continue;
                const double closing = lowest->slope() - one.slope();
                const double meets = from + (one.at(from) - lowest->at(from)) / closing;
                if (closing > 0 && meets > from + apart) until = std::min(until, meets);
            }
            addVertex(curves, from, lowest->at(from), from - reached > apart);
            addVertex(curves, until, lowest->at(until), false);
            reached = from = until;
        }
    }
    return curves;
}

bool isLimit(Kind kind) {
    return kind == Kind::Lines || kind == Kind::LeastMeasure || kind == Kind::MostMeasure ||
           kind == Kind::LeastSize || kind == Kind::MostSize || kind == Kind::Words;
}

}  // namespace

Allowed allowedSizes(const project::Project& project, std::size_t variant, const std::string& role,
                     text::ParagraphStore& store, const Options& options) {
    const project::Wishes wishes = project::wishesOf(project);
    std::vector<Demand> demands = demandsOf(project, wishes);
    std::vector<sweep::Interval> alike;
    for (const Demand& demand : demands)
        if (demand.role == role && demand.kind == Kind::SameInVariants) alike.push_back(demand.widths);
    std::erase_if(demands,
                  [&](const Demand& demand) { return demand.role != role || !isLimit(demand.kind); });
    Allowed allowed;
    if (demands.empty()) return allowed;
    const std::vector<std::size_t> variants =
        alike.empty() ? std::vector{variant} : project::everyVariant(project);
    const Setting setting(project, variants, store, options.profile);
    const RampsSought ramps(project, variants, {role});
    const Model model(setting, ramps, wishes, demands);
    std::vector<Segment> caps;
    std::vector<Segment> floors;
    const std::vector<sweep::Interval> whole{{project.leastWidth, project.mostWidth}};
    const auto put = [&](const Limit& limit, const sweep::Interval& within) {
        const sweep::Interval& all = limit.widths;
        const sweep::Interval widths{std::max(all.from, within.from), std::min(all.to, within.to)};
        if (widths.to - widths.from < apart) return;
        if (limit.start.size >= noBound && limit.end.size >= noBound) return;
        const auto sizeAt = [&](double width) {
            const double along = (width - all.from) / (all.to - all.from);
            return limit.start.size + along * (limit.end.size - limit.start.size);
        };
        const double first = sizeAt(widths.from);
        const double last = sizeAt(widths.to);
        if (limit.cap)
            caps.push_back({widths, first, last});
        else
            floors.push_back({widths, -first, -last});
    };
    for (const Sight& sight : model.sights()) {
        const auto index = static_cast<std::uint32_t>(std::ranges::find(sight.row->roles(), role) -
                                                      sight.row->roles().begin());
        for (const Demand& demand : demands)
            for (const Limit& limit : limitsOf(sight, index, demand, model.margins(), model.without()))
                for (const sweep::Interval& widths : sight.variant == variant ? whole : alike)
                    put(limit, widths);
    }
    allowed.most = lowerEdge(caps);
    allowed.least = lowerEdge(floors);
    for (sweep::Curve& curve : allowed.least)
        for (sweep::Vertex& vertex : curve)
            vertex.value = -vertex.value;
    return allowed;
}

}  // namespace tenter::solve
