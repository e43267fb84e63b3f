// The value of a number in CSS.
#pragma once

#include <string_view>

namespace tenter::css {

/// The value of a number with optional sign and exponent. A number too large for a double is the largest
/// double. CSS Syntax 3 § 4.3.13.
double valueOf(std::string_view number);

}  // namespace tenter::css
