// Weights of fonts as CSS computes them.
#pragma once

#include <algorithm>

namespace tenter::text {

/// The weight that `font-weight: bolder` gives inside text of `weight`. CSS Fonts 4 § 2.2.1.
constexpr double bolder(double weight) {
    if (weight < 350) return 400;
    if (weight < 550) return 700;
    return std::max(weight, 900.0);
}

}  // namespace tenter::text
