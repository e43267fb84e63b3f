#include "draw/device_ring.h"

#include <cmath>

namespace tenter::draw {

DeviceRing ringOf(const OutlineBox& outline, const DeviceGrid& grid) {
    const int width = grid.borderWidth(outline.width);
    const int out = static_cast<int>(std::lround(outline.offset * grid.scale)) + width;
    const DeviceBox box = grid.snapped(outline.box);
    const double radius = outline.corners.topLeft * grid.scale;
    return {{box.x - out, box.y - out, box.width + 2 * out, box.height + 2 * out},
            Corners::all(radius > 0 ? radius + out : 0),
            width};
}

}  // namespace tenter::draw
