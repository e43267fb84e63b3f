// Colours as CSS writes them.
#pragma once

#include <optional>
#include <string>

#include "units/colour.h"

namespace tenter::start {

/// The colour of a CSS value in lower case: hexadecimal, a name, rgb() or hsl(). Empty for any other text,
/// such as `currentcolor` or oklch(). CSS Color 4 § 5 to § 7.
std::optional<units::Colour> colourIn(const std::string& text);

/// The first part of a value that is a colour, such as `rgb(0, 0, 0)` of `rgb(0, 0, 0) none`.
std::optional<units::Colour> colourAmong(const std::string& text);

}  // namespace tenter::start
