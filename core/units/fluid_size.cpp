#include <algorithm>
#include <cmath>

#include "units/number.h"
#include "units/ramp.h"

namespace tenter::units {

FluidSize FluidSize::from(const Ramp& ramp, const RootSize& root, Unit unit, Unit slope) {
    const bool inRem = unit == Unit::Rem && !root.isFluid();
    const double rem = root.resolve(usualReaderSize, 0.0);
    const auto inUnit = [&](double pixels) { return inRem ? Length::rem(pixels / rem) : Length::px(pixels); };
    FluidSize result;
    result.minimum_ = inUnit(std::min(ramp.from().size, ramp.to().size));
    result.maximum_ = inUnit(std::max(ramp.from().size, ramp.to().size));
    result.base_ = result.minimum_;
    result.flat_ = result.minimum_ == result.maximum_;
    if (result.flat_) return result;
    const double rise = (ramp.to().size - ramp.from().size) /
                        (ramp.to().width - ramp.from().width);  // px for each px of width
    result.base_ = inUnit(ramp.from().size - rise * ramp.from().width);
    result.slope_ = slope == Unit::Cqi ? Length::cqi(100 * rise) : Length::vw(100 * rise);
    return result;
}

double FluidSize::resolveTruncated(const LengthBasis& basis, double step) const {
    if (flat_) return minimum_.resolve(basis);
    double growing = slope_.resolve(basis);
    // The number before `vw` is a float, the viewport a whole number of steps. Measured in Firefox 153:
    // -0.2375vw of 800 px is 1/60 px less than 1.9 px.
    if (step > 0 && slope_.unit() == Unit::Vw)
        growing = std::trunc(static_cast<float>(slope_.value()) * std::round(basis.vw / step) / 100) * step;
    return clamped(growing, basis);
}

std::string FluidSize::css() const {
    if (flat_) return minimum_.css();
    // In a calculation a bare `0` is a number, which cannot be added to a length, so a zero term is left out.
    std::string between;
    if (!base_.isZero() || slope_.isZero()) between = base_.isZero() ? "0px" : base_.css();
    if (!slope_.isZero()) {
        const bool falls = slope_.value() < 0;
        if (between.empty()) {
            between = slope_.css();
        } else {
            between += falls ? " - " : " + ";
            between += units::number(falls ? -slope_.value() : slope_.value());
            between += suffix(slope_.unit());
        }
    }
    return "clamp(" + minimum_.css() + ", " + between + ", " + maximum_.css() + ")";
}

}  // namespace tenter::units
