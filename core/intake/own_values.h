// Values of one property as Tenter writes them: numbers, four sides, sums of lengths.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>

#include "intake/sheet_values.h"
#include "units/length.h"

namespace tenter::intake {

/// The value of a property; `usual` if it is not set.
std::string valueOf(const Values& values, const std::string& property, const std::string& usual);

/// The number that `text` is as a whole.
std::optional<double> numberIn(std::string_view text);

/// The four values of a margin, padding or radius of one to four values: top, right, bottom, left; of a
/// radius the corners from the top left one clockwise. CSS Box 4 § 4.2, CSS Backgrounds 3 § 4.2.
std::array<std::string, 4> sidesIn(const std::string& value);

/// A sum of lengths, by units::Unit.
using Sum = std::array<double, 6>;

/// `1.5em` or `calc(2em + 40%)` as a sum; empty if it is neither.
std::optional<Sum> sumIn(std::string_view text);

/// The only term of a sum as a length; empty if it has several.
std::optional<units::Length> single(const Sum& sum);

/// The sum as a length, or as `calc()` of several.
std::string sumCss(const Sum& sum);

/// True if both values are sums that differ by no more than the rounding of the numbers in a stylesheet.
bool areSameSum(const std::string& one, const std::string& other);

}  // namespace tenter::intake
