// Outlines around boxes on device px.
#pragma once

#include "draw/corners.h"
#include "draw/device_grid.h"
#include "draw/drawing.h"

namespace tenter::draw {

/// A ring of `width` device px inside the edge of `box`.
struct DeviceRing {
    DeviceBox box;
    Corners corners;  ///< of the outer edge, device px
    int width = 0;
};

/// The ring that an outline covers. Square corners stay square.
DeviceRing ringOf(const OutlineBox& outline, const DeviceGrid& grid);

}  // namespace tenter::draw
