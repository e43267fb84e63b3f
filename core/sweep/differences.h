// Where break profiles make another number of lines, over a range of widths.
#pragma once

#include <cstdint>
#include <functional>
#include <vector>

#include "layout/layout.h"

namespace tenter::sweep {

/// Neighbouring widths at which one part has these numbers of lines, not all the same.
struct Stretch {
    double first = 0;                  ///< the narrowest, CSS px
    double last = 0;                   ///< the widest
    std::size_t card = 0;              ///< in the project's cards
    std::size_t part = 0;              ///< in the card's parts
    std::vector<std::uint32_t> lines;  ///< under each row compared, in their order
    friend bool operator==(const Stretch&, const Stretch&) = default;
};

/// Neighbouring widths at which any part differs.
struct Span {
    double first = 0;  ///< CSS px
    double last = 0;
    friend bool operator==(const Span&, const Span&) = default;
};

/// Lays out at every whole width from `least` to `most` (CSS px) and at both of them. `rows` are one variant
/// made ready under several profiles. Stretches come by their first width, then by card and part. `goOn` is
/// asked before each width: on false everything is left off, and nothing is returned.
std::vector<Stretch> lineDifferences(const std::vector<const layout::PreparedRow*>& rows, double least,
                                     double most, const std::function<bool()>& goOn = {});

/// The widths of `stretches`, overlapping and neighbouring ones joined, rising.
std::vector<Span> spansOf(const std::vector<Stretch>& stretches);

/// The widths that `lineDifferences` lays out at, rising. CSS px.
std::vector<double> wholeWidths(double least, double most);

}  // namespace tenter::sweep
