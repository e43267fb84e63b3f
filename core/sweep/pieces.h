// Divides viewport widths at events, so that a part's measures are straight lines between two events.
#pragma once

#include <algorithm>
#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

#include "layout/linear_sizes.h"
#include "units/linear.h"

namespace tenter::sweep {

/// A range of viewport widths, CSS px.
struct Interval {
    double from = 0;
    double to = 0;
    friend bool operator==(const Interval&, const Interval&) = default;
};

/// Events closer than this are one event: no screen shows them apart. The smallest step of a walk. CSS px.
inline constexpr double leastStep = 1e-9;

/// The step from one event to the next. With very large lengths rounding can make every smallest step an
/// event; then each step is twice the one before, so that a walk always ends.
class Stride {
public:
    /// The width of the next event: `from` + `until`, at most `to`. CSS px.
    double next(double from, double until, double to) {
        least_ = until > least_ ? leastStep : 2 * least_;
        return std::min(to, from + std::max(until, least_));
    }

private:
    double least_ = leastStep;
};

/// Walks through the intervals of a row from `least` to `most` (CSS px). `step(index, from, to)` handles
/// widths past `from` in an interval that ends at `to`, and returns the width at which the next step starts.
template <class Step>
void walkIntervals(const layout::PreparedRow& row, double least, double most, Step&& step) {
    double from = least;
    for (std::size_t index = 0; index < row.intervalCount(); ++index) {
        // The end of an interval belongs to the interval below it. At the start of the range an interval may
        // consist of only that.
        const double to = std::min(most, row.interval(index).upTo.value_or(most));
        while (from < to)
            from = step(index, from, to);
    }
}

/// The same for bands, for steps that do not depend on the page.
template <class Step>
void walkBands(const layout::PreparedRow& row, double least, double most, Step&& step) {
    double from = least;
    for (std::size_t band = 0; band < row.bandCount(); ++band) {
        const std::optional<double> upTo = row.band(band).upTo;
        const bool last = band + 1 == row.bandCount() || !upTo;
        const double to = last ? most : std::min(most, *upTo);
        // A breakpoint belongs to the band below it. At the start of the range a band may consist of only
        // that.
        while (from < to)
            from = step(band, from, to);
        if (last) break;
    }
}

/// A range of widths within one interval (CSS px) in which a part's inline measures are straight lines and
/// its line count is constant. The lines start at `from`.
struct Piece {
    double from = 0;
    double to = 0;
    std::size_t band = 0;
    std::size_t interval = 0;
    bool kink = true;       ///< false if only the line count differs from the piece before
    units::Linear width;    ///< content width, or width of a picture's slot
    units::Linear size;     ///< font size
    units::Linear advance;  ///< of the whole text on one line
    std::uint32_t graphemes = 0;
    std::uint32_t lines = 0;
};

struct PartPieces {
    std::vector<Piece> pieces;    ///< rising, without gaps
    std::vector<Interval> tight;  ///< tight fits: ranges with less slack than asked, rising, without overlaps
};

/// The pieces of the part at `place` from `least` to `most` (CSS px, least < most). Slack below
/// `tightness` is a tight fit. Every event has a closed form: ends of ramps and of maximum widths, whole px
/// of borders, and widths at which a line starts or stops to fit.
PartPieces partPieces(const layout::LinearSizes& sizes, project::PartRef place, double least, double most,
                      double tightness = text::tightSlack);

/// The pieces of the content box of cards, without text.
PartPieces cardContentPieces(const layout::LinearSizes& sizes, double least, double most);

}  // namespace tenter::sweep
