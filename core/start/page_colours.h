// Colours as CSS writes them.
#pragma once

#include <optional>
#include <string>

#include "units/colour.h"

namespace tenter::start {

/// The colour of a CSS value in lower case: hexadecimal, a name, rgb(), hsl(), hwb(), lab(), lch(), oklab(),
/// oklch(), color() or color-mix(). Each channel is clipped to sRGB. Empty for any other text, such as
/// `currentcolor`. CSS Color 4 § 5 to § 10, CSS Color 5 § 2.
std::optional<units::Colour> colourIn(const std::string& text);

/// The first part of a value that is a colour, such as `rgb(0, 0, 0)` of `rgb(0, 0, 0) none`.
std::optional<units::Colour> colourAmong(const std::string& text);

}  // namespace tenter::start
