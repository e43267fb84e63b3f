#include "pictures/demand.h"

#include <cmath>
#include <map>

namespace tenter::pictures {

namespace {

/// Viewports from this width on count as those of larger screens, CSS px. Common practice, no source.
constexpr double largerScreens = 768;

std::vector<Visit> evenVisits(double least, double most) {
    std::vector<Visit> visits;
    const auto first = std::lround(std::ceil(least));
    const auto last = std::lround(std::floor(most));
    for (long width = first; width <= last; ++width)
        visits.emplace_back(static_cast<double>(width), 1);
    if (visits.empty()) visits.emplace_back(least, 1);
    return visits;
}

}  // namespace

std::vector<RatioShare> usualRatios(double width) {
    if (width < largerScreens) return {{2, 0.5}, {3, 0.5}};
    return {{1, 0.5}, {2, 0.5}};
}

std::vector<Demand> demandOf(std::span<const Slot* const> slots, std::span<const Visit> visits, double least,
                             double most, std::span<const RatioShare> ratios) {
    std::vector<Visit> even;
    if (visits.empty()) {
        even = evenVisits(least, most);
        visits = even;
    }
    std::map<int, double> shares;
    double total = 0;
    for (const Slot* slot : slots) {
        for (const auto& [width, count] : visits) {
            const double drawn = sweep::valueAt(slot->drawn, width);
            if (!(drawn > 0) || !(count > 0)) continue;
            const std::vector<RatioShare> usual =
                ratios.empty() ? usualRatios(width) : std::vector<RatioShare>(ratios.begin(), ratios.end());
            for (const RatioShare& screen : usual) {
                shares[std::max(1, wholePixels(drawn * screen.ratio))] += count * screen.share;
                total += count * screen.share;
            }
        }
    }
    std::vector<Demand> demand;
    demand.reserve(shares.size());
    for (const auto& [width, share] : shares)
        if (share > 0) demand.push_back({width, share / total});
    return demand;
}

}  // namespace tenter::pictures
