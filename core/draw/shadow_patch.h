// A blurred shadow as nine pieces that fit boxes of any size.
#pragma once

#include <cstdint>
#include <vector>

#include "draw/drawing.h"

namespace tenter::draw {

/// The opacity of the shadow of a square with rounded corners, in device px. Its corners are those of every
/// box of that radius and blur; between them is one row and one column that can be stretched.
struct ShadowPatch {
    int side = 0;                       ///< width and height, px
    int corner = 0;                     ///< size of a corner piece, px
    int margin = 0;                     ///< px that the blur extends beyond the box that casts the shadow
    std::vector<std::uint8_t> opacity;  ///< `side` rows of `side` px, 0 to 255
};

/// `radius` and `blur` in device px. The blur is a Gaussian with a standard deviation of half of `blur`.
ShadowPatch shadowPatch(double radius, double blur);

/// The largest blur that is drawn, device px.
inline constexpr double mostBlur = 400;

/// The box that casts the shadow, in CSS px: moved by the offsets and enlarged by the spread. Its radius is
/// in `radius`. CSS Backgrounds 3 § 6.1.1.
struct CastingBox {
    layout::Box box;
    double radius = 0;
};
CastingBox castingBox(const CastShadow& shadow);

}  // namespace tenter::draw
