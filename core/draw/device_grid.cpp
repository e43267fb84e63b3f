#include "draw/device_grid.h"

#include <algorithm>
#include <cmath>

namespace tenter::draw {

DeviceBox DeviceGrid::snapped(const layout::Box& box) const {
    const auto whole = [](double value) { return static_cast<int>(std::lround(value)); };
    const int fromX = whole(x(box.x));
    const int fromY = whole(y(box.y));
    return {fromX, fromY, whole(x(box.right())) - fromX, whole(y(box.bottom())) - fromY};
}

int DeviceGrid::borderWidth(double css) const {
    const double device = css * scale;
    if (device <= 0) return 0;
    return std::max(1, static_cast<int>(std::floor(device + 1e-6)));
}

// Browser engines round the ascent and descent of a face to whole device px, and Chromium rounds down the
// space above (measured with Chromium 156: without this, every third line is one pixel off). The layout does
// the same for a scale of 1; at another scale the baseline is computed again.
int DeviceGrid::baseline(const layout::LaidPart& part, const layout::LaidLine& line) const {
    if (scale == 1 || part.paragraph == nullptr || !part.paragraph->strut())
        return static_cast<int>(std::lround(y(line.baseline)));
    const text::Face& face = *part.paragraph->strut();
    const double size = part.glyphSize * scale;
    const double height = part.lineHeight * scale;
    const double above = y(line.baseline - line.extent.above);
    const double ascent = std::round(face.ascent() * size);
    const double descent = std::round(face.descent() * size);
    return static_cast<int>(std::lround(above + std::floor((height - ascent - descent) / 2) + ascent));
}

}  // namespace tenter::draw
