// Straight lines in the viewport width: a number type in which what is computed at one width is known for a
// stretch of widths.
#pragma once

#include <algorithm>
#include <cmath>
#include <limits>

namespace tenter::units {

/// A quantity along the viewport width, from some start on: `value + slope · t` at `t` CSS px past the start,
/// for 0 < t ≤ `until`. Whatever is computed from such numbers by sums, multiples, `min`, `max`,
/// `order` and `floor` is again one, and holds as long as every comparison made on the way keeps its
/// answer.
struct Linear {
    constexpr Linear() = default;
    // A constant is a straight line too, and formulas are full of them.
    constexpr Linear(double constant) : value(constant) {}  // NOLINT(google-explicit-constructor)
    constexpr Linear(double at, double rise, double end = std::numeric_limits<double>::infinity())
        : value(at), slope(rise), until(end) {}

    double value = 0;
    double slope = 0;  ///< a px of width
    double until = std::numeric_limits<double>::infinity();

    [[nodiscard]] double at(double t) const { return value + slope * t; }
    /// The same line from `t` past its start on.
    [[nodiscard]] Linear from(double t) const { return {at(t), slope, until - t}; }

    friend Linear operator+(const Linear& a, const Linear& b) {
        return {a.value + b.value, a.slope + b.slope, std::min(a.until, b.until)};
    }
    friend Linear operator-(const Linear& a, const Linear& b) {
        return {a.value - b.value, a.slope - b.slope, std::min(a.until, b.until)};
    }
    friend Linear operator-(const Linear& a) { return {-a.value, -a.slope, a.until}; }
    friend Linear operator*(double times, const Linear& a) {
        return {times * a.value, times * a.slope, a.until};
    }
    friend Linear operator*(const Linear& a, double times) { return times * a; }
    friend Linear operator/(const Linear& a, double by) { return {a.value / by, a.slope / by, a.until}; }
    Linear& operator+=(const Linear& other) { return *this = *this + other; }
};

/// Quantities this near, in CSS px, are taken for equal at a start, so that the rounding of doubles decides
/// nothing: past the start the flatter of two rising ones is the less.
inline constexpr double tieTolerance = 1e-10;

/// Whether one quantity is less than another, and for how long.
struct Order {
    bool less = false;
    double until = std::numeric_limits<double>::infinity();
};

inline Order order(double a, double b) {
    return {a < b};
}
inline Order order(const Linear& a, const Linear& b) {
    const double lead = b.value - a.value;
    const double gain = b.slope - a.slope;
    Order result{lead > 0, std::min(a.until, b.until)};
    if (std::abs(lead) <= tieTolerance + 1e-15 * std::abs(a.value))
        result.less = gain > 0;
    else if ((lead > 0) == (gain < 0) && gain != 0)
        result.until = std::min(result.until, -lead / gain);
    return result;
}

/// Lets `number` hold no longer than `until`.
inline void limitRange(double& /*number*/, double /*until*/) {}
inline void limitRange(Linear& number, double until) {
    number.until = std::min(number.until, until);
}

template <class Number>
Number min(const Number& a, const Number& b) {
    const Order which = order(a, b);
    Number result = which.less ? a : b;
    limitRange(result, which.until);
    return result;
}
template <class Number>
Number max(const Number& a, const Number& b) {
    const Order which = order(a, b);
    Number result = which.less ? b : a;
    limitRange(result, which.until);
    return result;
}

inline bool isZero(double number) {
    return number == 0;
}
inline bool isZero(const Linear& number) {
    return number.value == 0 && number.slope == 0;
}

/// The whole number at or below.
inline double floor(double number) {
    return std::floor(number);
}
inline Linear floor(const Linear& number) {
    const double nearest = std::round(number.value);
    double whole = std::floor(number.value);
    if (std::abs(number.value - nearest) <= tieTolerance) whole = number.slope < 0 ? nearest - 1 : nearest;
    Linear result(whole);
    result.until = number.until;
    if (number.slope > 0) limitRange(result, (whole + 1 - number.value) / number.slope);
    if (number.slope < 0) limitRange(result, (whole - number.value) / number.slope);
    return result;
}

}  // namespace tenter::units
