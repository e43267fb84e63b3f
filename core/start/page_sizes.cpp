#include "start/page_sizes.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace tenter::start {

namespace {

using css::Line;
using units::Ramp;
using units::RampPoint;

/// A straight part of the sizes of a role.
struct Stretch {
    RampPoint from, to;
    [[nodiscard]] double slope() const { return (to.size - from.size) / (to.width - from.width); }
};

constexpr double sameSize = 0.005;  // CSS px
constexpr double flatSlope = 1e-6;

double rounded(double value) {
    return std::round(value * 1000) / 1000;
}

/// Stretches with those on one straight line joined; empty if the sizes jump.
std::vector<Stretch> joined(const std::vector<Stretch>& stretches) {
    std::vector<Stretch> all;
    for (const Stretch& next : stretches) {
        if (!all.empty() && std::abs(all.back().to.size - next.from.size) > sameSize) return {};
        if (!all.empty() && std::abs(all.back().slope() - next.slope()) < flatSlope)
            all.back().to = next.to;
        else
            all.push_back(next);
    }
    return all;
}

/// The ramp with these sizes: flat, then at most one slope, then flat. Empty if none has them.
std::optional<Ramp> rampOf(const std::vector<Stretch>& stretches) {
    const std::vector<Stretch> all = joined(stretches);
    if (all.empty()) return std::nullopt;
    const auto isFlat = [](const Stretch& one) { return std::abs(one.slope()) < flatSlope; };
    const auto sloping = std::ranges::count_if(all, [&](const Stretch& one) { return !isFlat(one); });
    if (sloping > 1) return std::nullopt;
    if (sloping == 0)
        return all.size() == 1 ? std::optional(Ramp::flat(rounded(all.front().from.size))) : std::nullopt;
    const auto slope = std::ranges::find_if(all, [&](const Stretch& one) { return !isFlat(one); });
    return Ramp::between({rounded(slope->from.width), rounded(slope->from.size)},
                         {rounded(slope->to.width), rounded(slope->to.size)});
}

std::vector<Ramp> rampsOf(const std::vector<Stretch>& stretches) {
    std::vector<Ramp> ramps;
    for (std::size_t i = 0; i < stretches.size();) {
        std::vector<Stretch> run{stretches[i]};
        Ramp ramp = rampOf(run).value_or(Ramp::flat(std::max(1.0, stretches[i].from.size)));
        while (i + run.size() < stretches.size()) {
            run.push_back(stretches[i + run.size()]);
            const auto longer = rampOf(run);
            if (!longer) {
                run.pop_back();
                break;
            }
            ramp = *longer;
        }
        ramps.insert(ramps.end(), run.size(), ramp);
        i += run.size();
    }
    return ramps;
}

}  // namespace

RoleSizes roleSizes(const std::vector<PieceReading>& pieces) {
    std::set<std::string> roles;
    for (const PieceReading& piece : pieces)
        for (const auto& [role, size] : piece.sizes)
            roles.insert(role);
    RoleSizes sizes;
    for (const std::string& role : roles) {
        std::vector<Stretch> stretches;
        for (const PieceReading& piece : pieces) {
            const auto found = piece.sizes.find(role);
            const Line line = found == piece.sizes.end() ? Line{16, 0} : found->second;
            stretches.push_back({{piece.from, line.atZero + line.perPx * piece.from},
                                 {piece.upTo, line.atZero + line.perPx * piece.upTo}});
        }
        sizes[role] = rampsOf(stretches);
    }
    return sizes;
}

}  // namespace tenter::start
