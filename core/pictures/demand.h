// How many pixels visits ask of a picture: over an audience and the pixel ratios of its screens.
#pragma once

#include <span>
#include <utility>
#include <vector>

#include "pictures/slots.h"

namespace tenter::pictures {

/// A device pixel ratio and the share of screens that have it.
struct RatioShare {
    double ratio = 1;
    double share = 1;
    friend bool operator==(const RatioShare&, const RatioShare&) = default;
};

/// A viewport width in CSS px with its visits, as in an audience.
using Visit = std::pair<double, double>;

/// The pixel ratios of screens with a viewport of `width` CSS px: 2 and 3 below 768 px, else 1 and 2, in
/// equal shares. Common practice, no source.
std::vector<RatioShare> usualRatios(double width);

/// A share of visits that a file of `width` pixels serves without enlarging it.
struct Demand {
    int width = 0;  ///< of the cut file, px
    double share = 0;
    friend bool operator==(const Demand&, const Demand&) = default;
};

/// The demand of `slots` that show the same cut file, rising by width, each width once; the shares add up to
/// 1. Without `visits` every whole viewport width from `least` to `most` (CSS px) counts the same; without
/// `ratios` those of `usualRatios`. Every slot counts the same.
std::vector<Demand> demandOf(std::span<const Slot* const> slots, std::span<const Visit> visits, double least,
                             double most, std::span<const RatioShare> ratios = {});

}  // namespace tenter::pictures
