// The widths of the files of a `srcset`.
#pragma once

#include <span>
#include <vector>

#include "pictures/demand.h"

namespace tenter::pictures {

/// Files of one picture at several widths.
struct Candidates {
    std::vector<int> widths;  ///< px, rising
    double surplus = 0;       ///< pixels that a visit loads beyond those it shows, on average
    double needed = 0;        ///< pixels that a visit shows, on average; at most those of the largest file
};

/// At most `count` widths that serve `demand` (rising) with the smallest expected surplus. A browser loads
/// the narrowest file that is wide enough (HTML § 4.8.4.2.2), or the widest if none is. Files have `ratio`
/// (width over height). No file is wider than `mostWidth` px, the width of the cut source: it serves all
/// demand beyond it. The result has fewer widths if more would not help. Dynamic programming over the
/// demanded widths; exact.
Candidates bestCandidates(std::span<const Demand> demand, int count, double ratio, int mostWidth);

/// The surplus of given widths (rising, not empty), for comparison.
Candidates evaluated(std::vector<int> widths, std::span<const Demand> demand, double ratio);

}  // namespace tenter::pictures
