// Sums of lengths in different units.
#pragma once

#include <array>
#include <string>

#include "units/length.h"

namespace tenter::emit {

/// A sum of lengths, printed as the plain length it is or as a `calc()`. CSS Values 4 § 10.1.
class LengthSum {
public:
    LengthSum() = default;
    explicit LengthSum(const units::Length& length) { add(length); }
    /// Adds `factor` times `length`; keywords add nothing.
    LengthSum& add(const units::Length& length, double factor = 1);
    LengthSum& add(const LengthSum& other, double factor = 1);
    /// The sum in one unit.
    [[nodiscard]] double of(units::Unit unit) const { return values_[static_cast<std::size_t>(unit)]; }
    [[nodiscard]] bool hasPercent() const { return of(units::Unit::Percent) != 0; }
    [[nodiscard]] bool isZero() const;
    /// `0`, `1.5em`, `calc(2em + 40%)`.
    [[nodiscard]] std::string css() const;
    /// The same for use inside a `calc()`: `1.5em`, `(2em + 40%)`.
    [[nodiscard]] std::string term() const;

private:
    [[nodiscard]] std::string terms(int& count) const;
    std::array<double, 6> values_{};  ///< by units::Unit, without keywords
};

}  // namespace tenter::emit
