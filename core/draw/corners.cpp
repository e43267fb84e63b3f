#include "draw/corners.h"

#include <algorithm>

namespace tenter::draw {

Corners Corners::fitted(double width, double height) const {
    double share = 1;
    const auto keep = [&share](double side, double sum) {
        if (sum > side && sum > 0) share = std::min(share, std::max(0.0, side) / sum);
    };
    keep(width, topLeft + topRight);
    keep(width, bottomLeft + bottomRight);
    keep(height, topLeft + bottomLeft);
    keep(height, topRight + bottomRight);
    return scaled(share);
}

Corners Corners::inset(double inset) const {
    const auto less = [inset](double radius) { return std::max(0.0, radius - inset); };
    return {less(topLeft), less(topRight), less(bottomRight), less(bottomLeft)};
}

}  // namespace tenter::draw
