// Which part of a file is cut out.
#pragma once

#include "pictures/slots.h"

namespace tenter::pictures {

/// A rectangle of whole pixels within a file.
struct Crop {
    int left = 0;
    int top = 0;
    int width = 0;
    int height = 0;
    friend bool operator==(const Crop&, const Crop&) = default;
};

/// The largest part of `file` with `ratio` (width over height). What is cut off is shared between the sides
/// as `object-position` shares it: the focal point `focusX`, `focusY` (shares of the file from the left and
/// from the top) stays at that share of the part. CSS Images 3 § 5.6.
Crop cropOf(const PixelSize& file, double ratio, double focusX, double focusY);

/// The height of a file of `width` pixels with `ratio`, at least 1.
int heightFor(int width, double ratio);

}  // namespace tenter::pictures
