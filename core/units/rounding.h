// Rounding of lengths. Without SSE 4.1, which Debian does not require, std::floor and std::round are calls of
// a library; a layout rounds each length several times.
#pragma once

#include <cmath>
#include <cstdint>

namespace tenter::units {

/// The largest whole number that is at most `value`, as std::floor gives it.
template <class Real>
Real wholeBelow(Real value) {
    // Beyond this limit every number is whole, or does not fit the integer.
    constexpr auto limit = static_cast<Real>(4e15);
    if (!(std::abs(value) < limit)) return std::floor(value);
    const auto whole = static_cast<Real>(static_cast<std::int64_t>(value));
    return whole > value ? whole - 1 : whole;
}

/// The whole number nearest to `value`, halves away from zero, as std::round gives it.
inline double wholeNearest(double value) {
    constexpr double limit = 4e15;
    if (!(std::abs(value) < limit)) return std::round(value);
    const auto whole = static_cast<double>(static_cast<std::int64_t>(value));
    const double rest = value - whole;
    return rest >= 0.5 ? whole + 1 : rest <= -0.5 ? whole - 1 : whole;
}

}  // namespace tenter::units
