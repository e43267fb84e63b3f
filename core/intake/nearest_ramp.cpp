#include "intake/nearest_ramp.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "units/number.h"

namespace tenter::intake {

namespace {

using css::PiecewiseLinear;
using css::Vertex;
using units::Ramp;
using units::RampPoint;

RampPoint pointOf(const Vertex& vertex) {
    return {vertex.width, vertex.value};
}

// Both functions are straight between their kinks, so the largest difference is at a kink.
NearestRamp measured(const Ramp& ramp, const PiecewiseLinear& sizes) {
    NearestRamp result{ramp, 0, sizes.vertices().front().width};
    const auto compare = [&](double width, double size) {
        const double apart = std::abs(ramp.sizeAt(width) - size);
        if (apart > result.largestError) {
            result.largestError = apart;
            result.errorAt = width;
        }
    };
    for (const Vertex& vertex : sizes.vertices())
        compare(vertex.width, vertex.value);
    for (const RampPoint& point : {ramp.from(), ramp.to()}) {
        const double width =
            std::clamp(point.width, sizes.vertices().front().width, sizes.vertices().back().width);
        compare(width, sizes.at(width));
    }
    return result;
}

// The exact ramp of sizes that have at most one piece with a slope.
std::optional<Ramp> exactRamp(const std::vector<Vertex>& vertices) {
    constexpr double nothing = 1e-9;
    std::vector<std::size_t> sloping;
    for (std::size_t i = 0; i + 1 < vertices.size(); ++i) {
        if (std::abs(vertices[i + 1].value - vertices[i].value) > nothing) sloping.push_back(i);
    }
    if (sloping.empty()) return Ramp::between(pointOf(vertices.front()), pointOf(vertices.front()));
    if (sloping.size() > 1) return std::nullopt;
    return Ramp::between(pointOf(vertices[sloping[0]]), pointOf(vertices[sloping[0] + 1]));
}

class Search {
public:
    explicit Search(const PiecewiseLinear& sizes)
        : sizes_(sizes), first_(sizes.vertices().front()), last_(sizes.vertices().back()) {}

    // The ramp with the same sizes at both ends and the smallest error. Tries a grid of widths, then refines.
    std::optional<NearestRamp> nearest() {
        constexpr int steps = 32;
        std::vector<double> widths;
        for (int i = 0; i <= steps; ++i)
            widths.push_back(first_.width + (last_.width - first_.width) * i / steps);
        if (sizes_.vertices().size() <= steps) {
            for (const Vertex& vertex : sizes_.vertices())
                widths.push_back(vertex.width);
        }
        for (const double from : widths) {
            for (const double to : widths)
                attempt(from, to);
        }
        for (double step = (last_.width - first_.width) / steps; best_ && step > 0.01; step /= 2) {
            while (improves(step)) {
            }
        }
        return best_;
    }

private:
    bool improves(double step) {
        const double from = best_->ramp.from().width;
        const double to = best_->ramp.to().width;
        bool better = false;
        for (const double left : {from - step, from, from + step}) {
            for (const double right : {to - step, to, to + step})
                better = attempt(left, right) || better;
        }
        return better;
    }

    bool attempt(double from, double to) {
        if (from < first_.width || to > last_.width || from >= to) return false;
        const auto ramp = Ramp::between({from, first_.value}, {to, last_.value});
        if (!ramp) return false;
        const NearestRamp found = measured(*ramp, sizes_);
        // A difference of rounding is not an improvement; otherwise the search might never end.
        if (best_ && found.largestError >= best_->largestError - 1e-9) return false;
        best_ = found;
        return true;
    }

    const PiecewiseLinear& sizes_;
    Vertex first_;
    Vertex last_;
    std::optional<NearestRamp> best_;
};

// The ramp with rounded numbers, if that hardly changes the error.
NearestRamp rounder(const NearestRamp& found, const PiecewiseLinear& sizes, double negligible) {
    struct Decimals {
        int width;
        int size;
    };
    for (const Decimals decimals : {Decimals{0, 2}, Decimals{0, 4}, Decimals{2, 4}}) {
        const auto rounded = [&](RampPoint point) {
            return RampPoint{units::rounded(point.width, decimals.width),
                             units::rounded(point.size, decimals.size)};
        };
        const auto ramp = Ramp::between(rounded(found.ramp.from()), rounded(found.ramp.to()));
        if (!ramp) continue;
        const NearestRamp candidate = measured(*ramp, sizes);
        if (candidate.largestError <= found.largestError + negligible) return candidate;
    }
    return found;
}

}  // namespace

std::optional<NearestRamp> nearestRamp(const css::PiecewiseLinear& sizes, double negligible) {
    const std::vector<Vertex>& vertices = sizes.vertices();
    for (const Vertex& vertex : vertices) {
        if (!Ramp::between(pointOf(vertex), pointOf(vertex))) return std::nullopt;
    }
    if (const std::optional<Ramp> ramp = exactRamp(vertices))
        return rounder(measured(*ramp, sizes), sizes, negligible);
    const std::optional<NearestRamp> nearest = Search(sizes).nearest();
    return nearest ? std::optional(rounder(*nearest, sizes, negligible)) : std::nullopt;
}

}  // namespace tenter::intake
