#include "units/contrast.h"

#include <algorithm>
#include <cmath>

namespace tenter::units {

namespace {

double linear(std::uint8_t channel) {
    const double value = channel / 255.0;
    return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4);
}

std::uint8_t mixed(std::uint8_t over, std::uint8_t under, double alpha) {
    return static_cast<std::uint8_t>(std::lround(over * alpha + under * (1 - alpha)));
}

}  // namespace

double luminance(const Colour& colour) {
    return 0.2126 * linear(colour.red) + 0.7152 * linear(colour.green) + 0.0722 * linear(colour.blue);
}

double contrast(const Colour& ink, const Colour& ground) {
    const double a = luminance(compositeOver(ink, ground));
    const double b = luminance(ground);
    return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

Colour compositeOver(const Colour& over, const Colour& under) {
    const double alpha = over.alpha / 255.0;
    return {mixed(over.red, under.red, alpha), mixed(over.green, under.green, alpha),
            mixed(over.blue, under.blue, alpha), 255};
}

}  // namespace tenter::units
