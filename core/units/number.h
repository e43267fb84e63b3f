// Rounding and printing numbers for CSS.
#pragma once

#include <string>

namespace tenter::units {

/// Number of decimals in every number of the stylesheet. With a root size of 16 px and a viewport of 3840 px,
/// the last digit changes a size by less than 0.003 px.
inline constexpr int emittedDecimals = 4;

/// `value` rounded to `decimals` decimals, ties away from zero; never −0. 0 if `value` is not finite.
double rounded(double value, int decimals = emittedDecimals);

/// CSS text of `value` rounded to `decimals` decimals: the shortest form, without exponent, trailing zeros or
/// `-0`. CSS Syntax 3 § 4.3.12 reads the same number from it.
std::string number(double value, int decimals = emittedDecimals);

}  // namespace tenter::units
