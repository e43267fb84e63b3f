// Ramps: font sizes that change in a straight line between two widths and are constant outside them.
#pragma once

#include <optional>
#include <string>

#include "units/length.h"
#include "units/linear.h"
#include "units/root_size.h"

namespace tenter::units {

/// One end of a ramp: a width and a font size, both in CSS px.
struct RampPoint {
    double width = 0;
    double size = 16;
    friend bool operator==(const RampPoint&, const RampPoint&) = default;
};

/// A font size in CSS px as a function of a width in CSS px, which is the viewport width or the card's
/// content width. `from` has the smaller width; both sizes are positive and finite.
class Ramp {
public:
    Ramp() = default;  ///< flat at 16 px
    /// The same size at every width; 16 px if `size` is not valid.
    static Ramp flat(double size);
    /// A ramp between two points, in either order. Empty if a number is not finite, a size is not positive or
    /// above 1e4, a width is negative or above 1e5, or the sizes differ while the widths are less than 0.01
    /// px apart.
    static std::optional<Ramp> between(RampPoint from, RampPoint to);

    [[nodiscard]] RampPoint from() const { return from_; }
    [[nodiscard]] RampPoint to() const { return to_; }
    [[nodiscard]] bool isFlat() const { return from_.size == to_.size; }
    /// Font size in CSS px at `width`, before any rounding.
    [[nodiscard]] double sizeAt(double width) const;
    friend bool operator==(const Ramp&, const Ramp&) = default;

private:
    RampPoint from_;
    RampPoint to_;
};

/// A font size in the rounded numbers of the stylesheet: `clamp(minimum, base + slope, maximum)`. Layout uses
/// these numbers, not the exact ramp. CSS Values 4 § 10.2: clamp(a, b, c) = max(a, min(b, c)).
class FluidSize {
public:
    /// The font size that the stylesheet prints for `ramp`. `root` is the theme's root font size; `unit` is
    /// Rem or Px; `slope` is Vw (the ramp follows the viewport) or Cqi (it follows the card). Where the root
    /// size depends on the viewport width, the size is printed in px: no number of rem gives it, and such a
    /// root does not follow the reader's text size either.
    static FluidSize from(const Ramp& ramp, const RootSize& root, Unit unit, Unit slope);

    [[nodiscard]] bool isFlat() const { return flat_; }
    [[nodiscard]] Length minimum() const { return minimum_; }
    [[nodiscard]] Length base() const { return base_; }
    [[nodiscard]] Length slope() const { return slope_; }
    [[nodiscard]] Length maximum() const { return maximum_; }
    /// Font size in CSS px; `basis` supplies rem, vw and cqi.
    template <class Number = double>
    [[nodiscard]] Number resolve(const LengthBasisOf<Number>& basis) const {
        return flat_ ? minimum_.resolve(basis) : clamped(slope_.resolve(basis), basis);
    }
    /// `factor` times the font size, in CSS px, as an engine draws it: the term that follows the viewport or
    /// card reduced by `reduction` CSS px, and the constant sizes at the ends of the ramp, times `factor`,
    /// rounded by `drawn`, a function of CSS px. So the result stays linear in the width.
    template <class Number, class Drawn>
    [[nodiscard]] Number resolveDrawn(double factor, const LengthBasisOf<Number>& basis, double reduction,
                                      const Drawn& drawn) const {
        const Number least = drawn(factor * atStart(minimum_.resolve(basis)));
        if (flat_) return least;
        const Number most = drawn(factor * atStart(maximum_.resolve(basis)));
        const Number between = factor * (base_.resolve(basis) + slope_.resolve(basis) - Number(reduction));
        return factor < 0 ? min(least, max(between, most)) : max(least, min(between, most));
    }
    /// Font size in CSS px with the `vw` term truncated to a multiple of `step` CSS px; a `step` of 0 changes
    /// nothing.
    [[nodiscard]] double resolveTruncated(const LengthBasis& basis, double step) const;
    /// Whether the font size with that truncation is less than `size` CSS px, and up to which `t` that stays
    /// so.
    template <class Number>
    [[nodiscard]] Order isTruncatedBelow(const LengthBasisOf<Number>& basis, double step, double size) const {
        if (flat_ || step == 0 || slope_.unit() != Unit::Vw) return order(resolve(basis), Number(size));
        if (size <= atStart(minimum_.resolve(basis))) return {false};
        if (size > atStart(maximum_.resolve(basis))) return {true};
        // Truncation is towards zero. The `vw` term is positive if the size grows, negative if it shrinks.
        const double steps = (size - atStart(base_.resolve(basis))) / step;
        const double whole = std::ceil(steps - 1e-9);
        return order(slope_.resolve(basis), Number((steps > 0 ? whole : whole - 1) * step));
    }
    /// CSS text, such as `clamp(1.125rem, 0.75rem + 1.2vw, 2rem)`; a plain length for a flat ramp.
    [[nodiscard]] std::string css() const;

private:
    template <class Number>
    [[nodiscard]] Number clamped(const Number& growing, const LengthBasisOf<Number>& basis) const {
        const Number between = base_.resolve(basis) + growing;
        return max(minimum_.resolve(basis), min(between, maximum_.resolve(basis)));
    }

    bool flat_ = true;
    Length minimum_;
    Length base_;
    Length slope_;
    Length maximum_;
};

}  // namespace tenter::units
