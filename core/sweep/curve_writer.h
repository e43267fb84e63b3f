// Adds vertices to curves.
#pragma once

#include <cmath>

#include "sweep/curves.h"

namespace tenter::sweep {

/// Adds a vertex. If the last vertex then lies on the straight line between its neighbours, it is replaced.
inline void add(Curve& curve, double width, double value) {
    constexpr double same = 1e-10;
    const std::size_t count = curve.size();
    if (count > 0 && curve[count - 1] == Vertex{width, value}) return;
    if (count > 1) {
        const Vertex& a = curve[count - 2];
        Vertex& b = curve[count - 1];
        if (a.width < b.width && b.width < width) {
            const double straight = a.value + (value - a.value) * (b.width - a.width) / (width - a.width);
            if (std::abs(straight - b.value) <= same * std::max(1.0, std::abs(b.value))) {
                b = {width, value};
                return;
            }
        }
    }
    curve.push_back({width, value});
}

}  // namespace tenter::sweep
