// A number type for quantities that are quadratic in the viewport width: products of linear ones.
#pragma once

#include <cmath>
#include <limits>

#include "units/linear.h"

namespace tenter::units {

/// A quantity `value + slope · t + bend · t²` at `t` CSS px past a start width.
struct Quadratic {
    constexpr Quadratic() = default;
    // Implicit, because formulas contain many constants.
    constexpr Quadratic(double constant) : value(constant) {}  // NOLINT(google-explicit-constructor)
    constexpr Quadratic(double at, double rise, double turn) : value(at), slope(rise), bend(turn) {}

    double value = 0;
    double slope = 0;
    double bend = 0;

    friend Quadratic operator+(const Quadratic& a, const Quadratic& b) {
        return {a.value + b.value, a.slope + b.slope, a.bend + b.bend};
    }
    friend Quadratic operator-(const Quadratic& a, const Quadratic& b) {
        return {a.value - b.value, a.slope - b.slope, a.bend - b.bend};
    }
    friend Quadratic operator*(double times, const Quadratic& a) {
        return {times * a.value, times * a.slope, times * a.bend};
    }
};

/// The product of two quantities: a plain number, or a quadratic one if the factors are linear.
inline double product(double a, double b) {
    return a * b;
}
inline Quadratic product(const Linear& a, const Linear& b) {
    return {a.value * b.value, a.value * b.slope + a.slope * b.value, a.slope * b.slope};
}

/// The smallest t > 0 at which `curve` is 0; infinity if there is none. Uses the form of the quadratic
/// formula that never subtracts two nearly equal numbers.
inline double firstRoot(const Quadratic& curve) {
    constexpr double never = std::numeric_limits<double>::infinity();
    if (curve.bend == 0) {
        const double root = curve.slope == 0 ? never : -curve.value / curve.slope;
        return root > 0 ? root : never;
    }
    const double under = curve.slope * curve.slope - 4 * curve.bend * curve.value;
    if (under < 0) return never;
    const double q = -0.5 * (curve.slope + std::copysign(std::sqrt(under), curve.slope));
    double first = never;
    for (const double root : {q / curve.bend, q == 0 ? 0 : curve.value / q})
        if (root > 0) first = std::min(first, root);
    return first;
}

/// Whether `a` is less than `b` just past the start, and up to which `t` that stays so.
inline Order order(const Quadratic& a, const Quadratic& b) {
    const Quadratic lead = b - a;
    const double near = tieTolerance + 1e-14 * (std::abs(a.value) + std::abs(b.value));
    if (std::abs(lead.value) > near) return {lead.value > 0, firstRoot(lead)};
    // Equal at the start: the slopes decide, and the order changes at the other root.
    if (lead.slope == 0) return {lead.bend > 0};
    return {lead.slope > 0, firstRoot({0, lead.slope, lead.bend})};
}

}  // namespace tenter::units
