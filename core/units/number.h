// Numbers as CSS prints them.
#pragma once

#include <string>

namespace tenter::units {

/// Decimals kept in every number that is emitted. At root size 16 px and a viewport of 3840 px the last
/// kept digit moves a size by less than 0.003 px.
inline constexpr int emittedDecimals = 4;

/// `value` rounded to `decimals` places, ties away from zero; never −0. 0 if it is not finite.
double rounded(double value, int decimals = emittedDecimals);

/// The shortest decimal text of `value` rounded to `decimals` places: no exponent, no trailing zero, no
/// `-0`. CSS Syntax 3 § 4.3.12 reads it back to the same number.
std::string number(double value, int decimals = emittedDecimals);

}  // namespace tenter::units
