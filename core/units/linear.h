// A number type for quantities that are linear in the viewport width. A formula computed with it gives the
// result for a range of widths at once.
#pragma once

#include <algorithm>
#include <cmath>
#include <limits>

namespace tenter::units {

/// A quantity that is linear in the viewport width: `value + slope · t` at `t` CSS px past a start width,
/// valid for 0 < t ≤ `until`. Sums, multiples, `min`, `max`, `order` and `floor` of such numbers are such
/// numbers again. A result is valid for as long as every comparison that led to it keeps its outcome.
struct Linear {
    constexpr Linear() = default;
    // Implicit, because formulas contain many constants.
    constexpr Linear(double constant) : value(constant) {}  // NOLINT(google-explicit-constructor)
    constexpr Linear(double at, double rise, double end = std::numeric_limits<double>::infinity())
        : value(at), slope(rise), until(end) {}

    double value = 0;
    double slope = 0;  ///< change for each CSS px of width
    double until = std::numeric_limits<double>::infinity();
    friend bool operator==(const Linear&, const Linear&) = default;

    [[nodiscard]] double at(double t) const { return value + slope * t; }
    /// The same quantity with its start moved by `t` CSS px.
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

/// Two quantities that differ by no more than this at their start, in CSS px, count as equal there; their
/// slopes then decide which is less. Without it the rounding of doubles would decide.
inline constexpr double tieTolerance = 1e-10;

/// Whether one quantity is less than another, and up to which `t` that stays so.
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

/// Shortens the range in which `number` is valid to `until`; does nothing for a plain number.
inline void limitRange(double& /*number*/, double /*until*/) {}
inline void limitRange(Linear& number, double until) {
    number.until = std::min(number.until, until);
}

/// The smaller of two quantities, valid for as long as it stays the smaller.
template <class Number>
Number min(const Number& a, const Number& b) {
    const Order which = order(a, b);
    Number result = which.less ? a : b;
    limitRange(result, which.until);
    return result;
}
/// The larger of two quantities, valid for as long as it stays the larger.
template <class Number>
Number max(const Number& a, const Number& b) {
    const Order which = order(a, b);
    Number result = which.less ? b : a;
    limitRange(result, which.until);
    return result;
}

/// The value at the start of the range.
inline double atStart(double number) {
    return number;
}
inline double atStart(const Linear& number) {
    return number.value;
}

inline bool isZero(double number) {
    return number == 0;
}
inline bool isZero(const Linear& number) {
    return number.value == 0 && number.slope == 0;
}

/// The largest whole number that is not above `number`, valid for as long as it stays the same.
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
