// Ramps: a font size as a straight line between two (width, size) points, flat outside them.
#pragma once

#include <optional>
#include <string>

#include "units/length.h"
#include "units/linear.h"

namespace tenter::units {

/// A point of a ramp: width and size, both in CSS px.
struct RampPoint {
    double width = 0;
    double size = 16;
    friend bool operator==(const RampPoint&, const RampPoint&) = default;
};

/// A font size in CSS px as a function of a width in CSS px: the viewport's, or the card's content width.
/// Widths rise from `from` to `to`; sizes are positive and finite.
class Ramp {
public:
    Ramp() = default;  ///< flat at 16 px
    static Ramp flat(double size);
    /// Empty if a number is not finite, a size not positive or above 1e4, a width negative or above 1e5, or
    /// the widths less than 0.01 px apart while the sizes differ. Points are put in order of width.
    static std::optional<Ramp> between(RampPoint from, RampPoint to);

    [[nodiscard]] RampPoint from() const { return from_; }
    [[nodiscard]] RampPoint to() const { return to_; }
    [[nodiscard]] bool isFlat() const { return from_.size == to_.size; }
    /// The ideal size, before any rounding, in CSS px.
    [[nodiscard]] double sizeAt(double width) const;
    friend bool operator==(const Ramp&, const Ramp&) = default;

private:
    RampPoint from_;
    RampPoint to_;
};

/// A ramp in the numbers that are emitted: `clamp(least, base + slope, most)`. What is laid out is this,
/// not the ideal line. CSS Values 4 § 10.2: clamp(a, b, c) = max(a, min(b, c)).
class FluidSize {
public:
    /// `root` is the theme's root size in CSS px; `unit` is Rem or Px; `slope` is Vw or Cqi.
    static FluidSize from(const Ramp& ramp, double root, Unit unit, Unit slope);

    [[nodiscard]] bool isFlat() const { return flat_; }
    [[nodiscard]] Length minimum() const { return minimum_; }
    [[nodiscard]] Length base() const { return base_; }
    [[nodiscard]] Length slope() const { return slope_; }
    [[nodiscard]] Length maximum() const { return maximum_; }
    /// CSS px under `basis` (rem, vw and cqi are read).
    template <class Number = double>
    [[nodiscard]] Number resolve(const LengthBasisOf<Number>& basis) const {
        return flat_ ? minimum_.resolve(basis) : clamped(slope_.resolve(basis), basis);
    }
    /// The same with what follows the viewport or card less by `lag` CSS px.
    template <class Number>
    [[nodiscard]] Number resolveReduced(const LengthBasisOf<Number>& basis, double lag) const {
        return flat_ ? minimum_.resolve(basis) : clamped(slope_.resolve(basis) - lag, basis);
    }
    /// The same with what follows the viewport cut down to a multiple of `step` CSS px; 0 leaves it as it is.
    [[nodiscard]] double resolveTruncated(const LengthBasis& basis, double step) const;
    /// `clamp(1.125rem, 0.75rem + 1.2vw, 2rem)`, or the plain length if flat.
    [[nodiscard]] std::string css() const;

private:
    template <class Number>
    [[nodiscard]] Number clamped(const Number& following, const LengthBasisOf<Number>& basis) const {
        const Number between = base_.resolve(basis) + following;
        return max(minimum_.resolve(basis), min(between, maximum_.resolve(basis)));
    }

    bool flat_ = true;
    Length minimum_;
    Length base_;
    Length slope_;
    Length maximum_;
};

}  // namespace tenter::units
