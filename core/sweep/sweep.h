// Everything that is known of a row over all widths, by one walk.
#pragma once

#include "sweep/curves.h"
#include "sweep/wraps.h"

namespace tenter::sweep {

struct Sweep {
    double least = 0;  ///< viewport widths it covers, CSS px
    double most = 0;
    std::vector<WrapPoint> wraps;  ///< by width, then card, then part
    std::vector<TightFit> tight;   ///< by card, then part, then width
    Curves curves;
};

/// Sweeps a row from `least` to `most` (CSS px, least < most). Quick enough for every tick of a drag; takes
/// time in proportion to cards.
Sweep sweep(const layout::PreparedRow& row, double least, double most, double tightness = text::tightSlack);

}  // namespace tenter::sweep
