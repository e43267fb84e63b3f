// Wrap points, tight fits and curves of a row over all widths.
#pragma once

#include "sweep/curves.h"
#include "sweep/wraps.h"

namespace tenter::sweep {

struct Sweep {
    double least = 0;              ///< first viewport width, CSS px
    double most = 0;               ///< last viewport width, CSS px
    std::vector<WrapPoint> wraps;  ///< by width, then card, then part
    std::vector<TightFit> tight;   ///< by card, then part, then width
    Curves curves;
};

/// The sweep of a row from `least` to `most` (CSS px, least < most). Fast enough for every frame of a drag;
/// the time is proportional to the number of cards.
Sweep sweep(const layout::PreparedRow& row, double least, double most, double tightness = text::tightSlack);

}  // namespace tenter::sweep
