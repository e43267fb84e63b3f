#include "solve/nearness_objective.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace tenter::solve {

namespace {

/// Share by which a size that had to change may step at a breakpoint, or grow over a band, without penalty.
/// No source.
constexpr double freeStep = 0.15;
/// Weight of a larger step, relative to the weight of changing a size.
constexpr double excessStepWeight = 4;
/// Weight of starting below the requested size, relative to the same.
constexpr double lowStartWeight = 2;
/// Factor up to which a variant that has to grow is still a guide.
constexpr double usableScale = 1.15;
/// A size that changed by less than this share counts as unchanged.
constexpr double unchangedShare = 0.02;

/// The size as a factor of the current size.
LinearExpression scaleOf(const BandEnd& end) {
    return scaled(end.size, 1 / end.currentSize);
}

std::map<std::string, double> sharesOf(const std::vector<BandEnd>& ends, const std::string& mainRole) {
    std::map<std::string, double> shares;
    for (const BandEnd& end : ends)
        shares[end.role] = 1;
    const double others = static_cast<double>(shares.size()) - 1;
    if (others > 0)
        for (auto& [role, share] : shares)
            share = role == mainRole ? mainRoleShare : (1 - mainRoleShare) / others;
    return shares;
}

/// The average current size of each role, CSS px.
std::map<std::string, double> averageSizes(const std::vector<BandEnd>& ends) {
    std::map<std::string, std::pair<double, double>> sums;
    for (const BandEnd& end : ends) {
        sums[end.role].first += end.currentSize;
        sums[end.role].second += 1;
    }
    std::map<std::string, double> averages;
    for (const auto& [role, sum] : sums)
        averages[role] = sum.first / sum.second;
    return averages;
}

double valueOf(const LinearProgram& program, const LinearExpression& expression) {
    double sum = 0;
    for (const Term& term : expression)
        sum += term.coefficient * program.value(term.variable);
    return sum;
}

}  // namespace

NearnessObjective::NearnessObjective(LinearProgram& program, const Model& model, double weight)
    : shares_(sharesOf(model.bandEnds(), model.mainRole())) {
    addScales(program, model, weight);
    addNeighbours(program, model, weight);
    addLargestChange(program, model);
}

void NearnessObjective::addScales(LinearProgram& program, const Model& model, double weight) {
    const std::map<std::string, double> averages = averageSizes(model.bandEnds());
    std::map<std::tuple<std::size_t, std::size_t, bool>, Scale> bandEnds;
    for (const BandEnd& end : model.bandEnds()) {
        // Deviations count in px. As shares, small sizes would weigh more and pull the others down.
        const double own = weight * shares_.at(end.role) * end.currentSize / averages.at(end.role);
        const auto [entry, isNew] = bandEnds.try_emplace({end.variant, end.band, end.narrow});
        Scale& scale = entry->second;
        if (isNew) scale.variable = program.addVariable(0, infinity);
        scale.weight += own;
        const std::size_t deviation =
            program.addDeviation(difference(scaleOf(end), {{scale.variable, 1}}), 0, own);
        if (isNew) program.startFrom(deviation, scale.variable);
        VariantScale& variant = variants_[end.variant];
        variant.weight += own;
        if (end.role == model.mainRole())
            variant.smallestSize = std::min(variant.smallestSize, end.currentSize);
    }
    for (auto& [index, variant] : variants_) {
        variant.variable = program.addVariable(0, infinity);
        variant.fromTarget = program.addDeviation({{variant.variable, 1}}, 1, variantWeight * variant.weight);
        program.startFrom(variant.fromTarget, variant.variable);
    }
    for (const auto& [place, scale] : bandEnds)
        program.addDeviation({{scale.variable, 1}, {variants_.at(std::get<0>(place)).variable, -1}}, 0,
                             bandEndWeight * scale.weight);
}

void NearnessObjective::addNeighbours(LinearProgram& program, const Model& model, double weight) {
    const std::vector<BandEnd>& ends = model.bandEnds();
    for (std::size_t i = 0; i + 1 < ends.size(); ++i) {
        const BandEnd& below = ends[i];
        const BandEnd& above = ends[i + 1];
        if (below.variant != above.variant || below.role != above.role) continue;
        const double own = weight * shares_.at(below.role);
        program.addDeviation(difference(scaleOf(above), scaleOf(below)), 0,
                             own * (below.band == above.band ? slopeWeight : stepWeight));
        if (below.role == model.mainRole()) neighbours_.push_back({below, above, own});
    }
}

void NearnessObjective::addLargestChange(LinearProgram& program, const Model& model) const {
    for (const auto& [index, variant] : variants_) {
        const std::size_t largest = program.addVariable(0, infinity, largestChangeWeight * variant.weight);
        for (const BandEnd& end : model.bandEnds()) {
            if (end.role != model.mainRole() || end.variant != index) continue;
            LinearExpression change = scaleOf(end);
            change.push_back({largest, -1});
            program.addConstraint(change, -infinity, 1);
            change.back().coefficient = 1;
            program.addConstraint(change, 1, infinity);
        }
    }
}

bool NearnessObjective::raiseSmallRows(LinearProgram& program, double size) const {
    std::vector<std::pair<const VariantScale*, double>> raised;
    for (const auto& [index, variant] : variants_) {
        const double scale = program.value(variant.variable);
        if (scale > usableScale) raised.emplace_back(&variant, std::max(scale, size / variant.smallestSize));
    }
    for (const auto& [variant, scale] : raised)
        program.setTarget(variant->fromTarget, scale);
    return !raised.empty();
}

bool NearnessObjective::penaliseSteps(LinearProgram& program, double size) const {
    // New variables have no value until the next solve, so all values are read first.
    std::vector<std::pair<LinearExpression, double>> excesses;
    std::vector<LinearExpression> starts;
    for (const auto& [below, above, weight] : neighbours_) {
        const double first = valueOf(program, below.size);
        const double last = valueOf(program, above.size);
        const double firstChange = first / below.currentSize - 1;
        const double lastChange = last / above.currentSize - 1;
        if (std::max(std::abs(firstChange), std::abs(lastChange)) <= unchangedShare) continue;
        const bool sameBand = below.band == above.band;
        const bool opposite = firstChange * lastChange < 0 &&
                              std::min(std::abs(firstChange), std::abs(lastChange)) > unchangedShare;
        const double freeRatio = 1 / (1 - freeStep);
        const double allowedRatio = sameBand && !opposite
                                        ? std::max({freeRatio, above.currentSize / below.currentSize,
                                                    below.currentSize / above.currentSize})
                                        : freeRatio;
        const double smaller = std::min(first, last);
        const bool exceeds = std::max(first, last) > (1 + unchangedShare) * allowedRatio * smaller;
        if (!exceeds && !(sameBand && opposite)) continue;
        const bool falls = last < first;
        const LinearExpression& small = falls ? above.size : below.size;
        const LinearExpression excess = difference(falls ? below.size : above.size, small, allowedRatio);
        excesses.emplace_back(scaled(excess, 1 / smaller), excessStepWeight * weight);
        if (!sameBand || !opposite) continue;
        const std::size_t shortfall = program.addVariable(0, infinity, lowStartWeight * weight);
        starts.push_back(scaled(small, 1 / size));
        starts.back().push_back({shortfall, 1});
    }
    for (auto& [expression, weight] : excesses) {
        expression.push_back({program.addVariable(0, infinity, weight), -1});
        program.addConstraint(expression, -infinity, 0);
    }
    for (const LinearExpression& expression : starts)
        program.addConstraint(expression, 1, infinity);
    return !excesses.empty();
}

}  // namespace tenter::solve
