#include "solve/conflict.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <optional>
#include <utility>

#include "solve/constraint.h"

namespace tenter::solve {

namespace {

/// Further steps to try until sizes on the grid exist.
constexpr int maxGridSteps = 20;

/// Two wishes alone can conflict only if they concern a common role.
bool shareRole(const Wish& one, const Wish& other) {
    const auto concerns = [](const Wish& wish, const std::string& role) {
        return wish.role == role || wish.other == role;
    };
    return concerns(other, one.role) || (!one.other.empty() && concerns(other, one.other));
}

}  // namespace

std::vector<bool> wishesOutsideConflict(const Model& model, const RampSet& ramps,
                                        const std::vector<Wish>& wishes,
                                        const std::vector<bool>& explicitWishes) {
    std::vector<std::size_t> order(wishes.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, {}, [&](std::size_t index) {
        return std::pair(static_cast<bool>(explicitWishes[index]), wishes[index].kind->traits.removalRank);
    });
    // Deletion filter: a wish without which the rest is feasible belongs to the subset.
    std::vector<bool> outside(wishes.size(), false);
    std::vector<std::size_t> inside;
    for (const std::size_t index : order) {
        outside[index] = true;
        if (!isFeasible(model, ramps, outside)) continue;
        outside[index] = false;
        inside.push_back(index);
    }
    if (inside.size() < 3) return outside;
    // A conflict of two wishes is easier to understand. Explicit wishes are tried first.
    std::ranges::reverse(order);
    std::ranges::reverse(inside);
    for (const std::size_t one : inside) {
        for (const std::size_t other : order) {
            if (other == one || !shareRole(wishes[one], wishes[other])) continue;
            std::vector<bool> allButTwo(wishes.size(), true);
            allButTwo[one] = allButTwo[other] = false;
            if (!isFeasible(model, ramps, allButTwo)) return allButTwo;
        }
    }
    return outside;
}

std::vector<Relaxation> usefulRelaxations(const Conflict& conflict) {
    std::vector<Relaxation> complete;
    std::vector<Relaxation> partial;
    for (const Relaxation& one : conflict.relaxations)
        if (!one.unreadable) (one.othersConflict ? partial : complete).push_back(one);
    return complete.empty() ? partial : complete;
}

Relaxation smallestRelaxation(const Wish& wish, const WishTest& isFeasible, const WishTest& hasSizes) {
    const std::optional<RelaxationRange>& range = wish.kind->traits.relaxation;
    Wish tried = wish;
    const double sign = range && range->limit > wish.value ? 1 : -1;
    // Figures are tried in multiples of the step, so that the result is easy to read.
    const double start = range ? sign * std::floor(sign * wish.value / range->step + 1e-9) : 0;
    const auto feasibleAt = [&](double steps) {
        const double value = (start + sign * steps) * range->step;
        tried.value = sign > 0 ? std::min(value, range->limit) : std::max(value, range->limit);
        return isFeasible(tried);
    };
    double high = range ? std::ceil(std::abs(range->limit - wish.value) / range->step) : 0;
    if (!range || !feasibleAt(high)) return {wish, true};
    double low = 0;
    // A small change is usually enough: doubling finds an upper bound faster than halving the whole range.
    double doubled = 1;
    while (doubled < high && !feasibleAt(doubled)) {
        low = doubled;
        doubled *= 2;
    }
    high = std::min(high, doubled);
    while (high - low > 1) {
        const double middle = std::floor((low + high) / 2);
        (feasibleAt(middle) ? high : low) = middle;
    }
    // A wish that is only just satisfied may leave no size on the grid.
    for (int more = 0; more < maxGridSteps && feasibleAt(high) && !hasSizes(tried); ++more)
        high += more < maxGridSteps / 2 ? 1 : 4;
    return {tried, false};
}

}  // namespace tenter::solve
