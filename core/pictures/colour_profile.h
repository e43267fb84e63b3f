// Colour profiles of pictures.
#pragma once

#include <string_view>

namespace tenter::pictures {

/// True if `profile` (ICC.1) describes sRGB: an RGB profile of matrix and curves with the primaries and the
/// curve of IEC 61966-2-1. Converting by such a profile would change nothing and take most of the time.
bool isSrgbProfile(std::string_view profile);

/// The value of light (0 to 1) of an sRGB component (0 to 1), and back. IEC 61966-2-1.
double linearOfSrgb(double component);
double srgbOfLinear(double light);

}  // namespace tenter::pictures
