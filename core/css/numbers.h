// What a written number is worth.
#pragma once

#include <string_view>

namespace tenter::css {

/// The value of a number as CSS writes it, sign and exponent included; what is too large for a double is the
/// largest there is. CSS Syntax 3 § 4.3.13.
double valueOf(std::string_view number);

}  // namespace tenter::css
