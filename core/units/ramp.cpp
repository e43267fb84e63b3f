#include "units/ramp.h"

#include <cmath>
#include <utility>

namespace tenter::units {

namespace {

constexpr double largestSize = 1e4;
constexpr double largestWidth = 1e5;
constexpr double smallestRun = 0.01;

bool isSize(double size) {
    return std::isfinite(size) && size > 0 && size <= largestSize;
}
bool isWidth(double width) {
    return std::isfinite(width) && width >= 0 && width <= largestWidth;
}

}  // namespace

Ramp Ramp::flat(double size) {
    Ramp ramp;
    if (isSize(size)) ramp.from_.size = ramp.to_.size = size;
    return ramp;
}

std::optional<Ramp> Ramp::between(RampPoint from, RampPoint to) {
    if (!isSize(from.size) || !isSize(to.size) || !isWidth(from.width) || !isWidth(to.width)) {
        return std::nullopt;
    }
    if (from.width > to.width) std::swap(from, to);
    if (to.width - from.width < smallestRun) {
        if (from.size != to.size) return std::nullopt;
        return flat(from.size);
    }
    Ramp ramp;
    ramp.from_ = from;
    ramp.to_ = to;
    return ramp;
}

double Ramp::sizeAt(double width) const {
    if (isFlat() || width <= from_.width) return from_.size;
    if (width >= to_.width) return to_.size;
    const double slope = (to_.size - from_.size) / (to_.width - from_.width);
    return from_.size + slope * (width - from_.width);
}

}  // namespace tenter::units
