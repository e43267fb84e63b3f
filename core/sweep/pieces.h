// A row's parts as pieces of straight lines over viewport widths: the walk from event to event.
#pragma once

#include <algorithm>
#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

#include "layout/prepared.h"
#include "units/linear.h"

namespace tenter::sweep {

/// Viewport widths between two, CSS px.
struct Interval {
    double from = 0;
    double to = 0;
    friend bool operator==(const Interval&, const Interval&) = default;
};

/// Events nearer than this are one: no screen tells them apart, and the walk gets on. CSS px.
inline constexpr double leastStep = 1e-9;

/// Walks from event to event. Where lengths are so great that their rounding makes an event of every least
/// step, each such step is twice the one before, so that a walk ends whatever the lengths are.
class Stride {
public:
    /// The width to go on from: `until` past `from` (CSS px), but at most `to`.
    double next(double from, double until, double to) {
        least_ = until > least_ ? leastStep : 2 * least_;
        return std::min(to, from + std::max(until, least_));
    }

private:
    double least_ = leastStep;
};

/// Walks the row's bands from `least` to `most` (CSS px): `step(band, from, to)` looks at widths past `from`
/// of a band that ends at `to`, and says the width to go on from.
template <class Step>
void overBands(const layout::PreparedRow& row, double least, double most, Step&& step) {
    double from = least;
    for (std::size_t band = 0; band < row.bandCount(); ++band) {
        const std::optional<double> upTo = row.band(band).upTo;
        const bool last = band + 1 == row.bandCount() || !upTo;
        const double to = last ? most : std::min(most, *upTo);
        // A band holds its upper breakpoint, so at the range's start it may hold that one width alone.
        while (from < to)
            from = step(band, from, to);
        if (last) break;
    }
}

/// Widths from `from` to `to` (CSS px, of one band) within which all of a part's measures across the page are
/// straight lines, starting at `from`, and its number of lines stays.
struct Piece {
    double from = 0;
    double to = 0;
    std::size_t band = 0;
    bool kink = true;       ///< false if only the number of lines differs from the piece before
    units::Linear width;    ///< content width; of a picture its slot's
    units::Linear size;     ///< font size
    units::Linear advance;  ///< the whole text's on one line
    std::uint32_t graphemes = 0;
    std::uint32_t lines = 0;
};

struct PartPieces {
    std::vector<Piece> pieces;    ///< rising, without gaps
    std::vector<Interval> tight;  ///< where slack is under the share, rising, apart from one another
};

/// Follows part `part` of card `card` from `least` to `most` (CSS px, least < most). Everything it steps to
/// has a closed form: ends of ramps and of maxima, whole px of borders, and lines that begin or cease to fit.
PartPieces follow(const layout::PreparedRow& row, std::size_t card, std::size_t part, double least,
                  double most, double tightness = text::tightSlack);

/// The same for the content box of cards, without text.
PartPieces followCard(const layout::PreparedRow& row, double least, double most);

}  // namespace tenter::sweep
