// Differences in line counts between break profiles, over a range of widths.
#pragma once

#include <cstdint>
#include <functional>
#include <vector>

#include "layout/layout.h"

namespace tenter::sweep {

/// A range of widths at which one part has different line counts under several profiles.
struct LineDifference {
    double first = 0;  ///< the narrowest width, CSS px
    double last = 0;   ///< the widest width, CSS px
    project::PartRef place;
    std::vector<std::uint32_t> lines;  ///< line counts, one for each compared row, in order
    friend bool operator==(const LineDifference&, const LineDifference&) = default;
};

/// A range of viewport widths, both ends included.
struct WidthRange {
    double first = 0;  ///< CSS px
    double last = 0;
    friend bool operator==(const WidthRange&, const WidthRange&) = default;
};

/// The differences that are not caused by rounding alone (text::roundingSlack) at `least`, at `most` (CSS px)
/// and at every whole width between them, sorted by first width, card and part. `rows` are one variant
/// prepared under several profiles. `goOn` is called before each width; if it returns false the search stops
/// and the result is empty.
std::vector<LineDifference> lineDifferences(const std::vector<const layout::PreparedRow*>& rows, double least,
                                            double most, const std::function<bool()>& goOn = {});

/// The ranges of `differences`, rising; overlapping and neighbouring ranges are joined.
std::vector<WidthRange> widthRangesOf(const std::vector<LineDifference>& differences);

/// The widths at which `lineDifferences` lays out, rising, CSS px.
std::vector<double> wholeWidths(double least, double most);

}  // namespace tenter::sweep
