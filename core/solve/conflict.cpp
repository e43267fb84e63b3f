#include "solve/conflict.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <optional>
#include <utility>

namespace tenter::solve {

namespace {

constexpr double mostLines = 50;

/// Further steps that are tried for the sake of the grid.
constexpr int mostMore = 20;

/// What a demand's figure may be moved to, and in which steps it is told.
struct Give {
    double limit = 0;
    double step = 0;
};
std::optional<Give> giveOf(const Demand& demand) {
    switch (demand.kind) {
        case Kind::Lines:
            return Give{mostLines, 1};
        case Kind::LeastMeasure:
            return Give{1, 0.5};
        case Kind::MostMeasure:
            return Give{1000, 0.5};
        case Kind::LeastSize:
            return Give{1, 0.05};
        case Kind::MostSize:
            return Give{400, 0.05};
        case Kind::LeastRatio:
            return Give{0.1, 0.01};
        case Kind::Growth:
            return Give{100, 0.05};
        case Kind::Zoom:
            return Give{20, 0.1};
        case Kind::Ratio:
        case Kind::Locked:
        case Kind::WithColumn:
        case Kind::SameAtBreakpoints:
        case Kind::ProportionalAtBreakpoints:
        case Kind::SameInVariants:
        case Kind::Words:
            return std::nullopt;
    }
    return std::nullopt;
}

/// Wishes that people think of last come first: where there is a choice they are not in the set.
int rank(Kind kind) {
    switch (kind) {
        case Kind::Zoom:
        case Kind::WithColumn:
            return 0;
        case Kind::Growth:
        case Kind::SameAtBreakpoints:
        case Kind::ProportionalAtBreakpoints:
            return 1;
        case Kind::LeastMeasure:
        case Kind::MostMeasure:
            return 2;
        default:
            return 3;
    }
}

/// Two demands can be in each other's way only if they ask something of the same role.
bool touch(const Demand& one, const Demand& other) {
    const auto asks = [](const Demand& demand, const std::string& role) {
        return demand.role == role || demand.other == role;
    };
    return asks(other, one.role) || (!one.other.empty() && asks(other, one.other));
}

}  // namespace

std::vector<bool> outsideConflict(const Model& model, const RampsSought& ramps,
                                  const std::vector<Demand>& demands, const std::vector<bool>& said) {
    std::vector<std::size_t> order(demands.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, {}, [&](std::size_t index) {
        return std::pair(static_cast<bool>(said[index]), rank(demands[index].kind));
    });
    std::vector<bool> out(demands.size(), false);
    std::vector<std::size_t> inside;
    for (const std::size_t index : order) {
        out[index] = true;
        if (!isFeasible(model, ramps, out)) continue;
        out[index] = false;
        inside.push_back(index);
    }
    if (inside.size() < 3) return out;
    // Another set may be smaller. People know best what they said themselves.
    std::ranges::reverse(order);
    std::ranges::reverse(inside);
    for (const std::size_t one : inside) {
        for (const std::size_t other : order) {
            if (other == one || !touch(demands[one], demands[other])) continue;
            std::vector<bool> all(demands.size(), true);
            all[one] = all[other] = false;
            if (!isFeasible(model, ramps, all)) return all;
        }
    }
    return out;
}

std::vector<Loosening> offered(const Conflict& conflict) {
    std::vector<Loosening> ending;
    std::vector<Loosening> others;
    for (const Loosening& one : conflict.loosenings)
        if (!one.unnatural) (one.leavesOthers ? others : ending).push_back(one);
    return ending.empty() ? others : ending;
}

Loosening leastLoosening(const Demand& wished, const Judged& canKeep, const Judged& hasSizes) {
    const auto give = giveOf(wished);
    Demand tried = wished;
    const double sign = give && give->limit > wished.value ? 1 : -1;
    // Figures are tried on the steps they are told in.
    const double start = give ? sign * std::floor(sign * wished.value / give->step + 1e-9) : 0;
    const auto holdsAt = [&](double steps) {
        const double value = (start + sign * steps) * give->step;
        tried.value = sign > 0 ? std::min(value, give->limit) : std::max(value, give->limit);
        return canKeep(tried);
    };
    double high = give ? std::ceil(std::abs(give->limit - wished.value) / give->step) : 0;
    if (!give || !holdsAt(high)) return {wished, true};
    double low = 0;
    // The least is mostly near.
    double near = 1;
    while (near < high && !holdsAt(near)) {
        low = near;
        near *= 2;
    }
    high = std::min(high, near);
    while (high - low > 1) {
        const double middle = std::floor((low + high) / 2);
        (holdsAt(middle) ? high : low) = middle;
    }
    // Just kept, wishes leave no room for a grid's lines.
    for (int more = 0; more < mostMore && holdsAt(high) && !hasSizes(tried); ++more)
        high += more < mostMore / 2 ? 1 : 4;
    return {tried, false};
}

}  // namespace tenter::solve
