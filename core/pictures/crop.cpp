#include "pictures/crop.h"

#include <algorithm>
#include <cmath>

namespace tenter::pictures {

namespace {

/// The part of a side: its length, and where it starts.
void cutSide(int whole, double part, double focus, int& start, int& length) {
    length = std::clamp(static_cast<int>(std::lround(part)), 1, whole);
    start = static_cast<int>(std::lround(std::clamp(focus, 0.0, 1.0) * (whole - length)));
}

}  // namespace

Crop cropOf(const PixelSize& file, double ratio, double focusX, double focusY) {
    Crop crop{0, 0, file.width, file.height};
    if (file.width < 1 || file.height < 1 || !(ratio > 0)) return crop;
    if (ratio * file.height < file.width)
        cutSide(file.width, ratio * file.height, focusX, crop.left, crop.width);
    else
        cutSide(file.height, file.width / ratio, focusY, crop.top, crop.height);
    return crop;
}

int heightFor(int width, double ratio) {
    return static_cast<int>(std::max(1L, std::lround(width / ratio)));
}

}  // namespace tenter::pictures
