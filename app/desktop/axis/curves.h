// The curves of the plots: font size and measure over the whole range of widths.
#pragma once

#include <QPointF>
#include <QVector>
#include <optional>
#include <string>
#include <vector>

#include "layout/layout.h"
#include "project/project.h"

namespace tenter::desktop::axis {

/// Points (viewport width in CSS px, value in the curve's unit). One piece per band, because values can jump
/// at a breakpoint.
using Pieces = std::vector<QVector<QPointF>>;

/// The range of viewport widths (CSS px) divided at the breakpoints.
struct Bands {
    double least = 320;
    double most = 1920;
    std::vector<double> breakpoints;
    /// First and last width of band `band` within the range, CSS px.
    [[nodiscard]] double first(std::size_t band) const;
    [[nodiscard]] double last(std::size_t band) const;
    [[nodiscard]] std::size_t count() const { return breakpoints.size() + 1; }
    /// The next (+1) or previous (−1) end of a band, seen from `width`: a breakpoint, or the first whole px
    /// above it; `width` if there is none.
    [[nodiscard]] double endBeside(double width, int direction) const;
    static Bands of(const project::Project& project, std::size_t variant);
};

struct SizeCurve {
    std::uint32_t style = 0;
    std::string role;
    Pieces pieces;  ///< font size in CSS px
};

/// One curve for each role of the variant.
std::vector<SizeCurve> sizeCurves(const layout::PreparedRow& row, const Bands& bands);

struct MeasureCurve {
    std::size_t card = 0;
    std::size_t part = 0;  ///< in the card's parts
    Pieces pieces;         ///< measure: characters on a full line
};

/// One curve without points for the paragraph text of each card: the first `most` cards, and `selectedCard`.
std::vector<MeasureCurve> measuredParts(const project::Project& project, std::size_t most,
                                        std::optional<std::size_t> selectedCard);

/// Fills in the points of the curves. Lays the row out at about `samples` widths and on both sides of every
/// breakpoint.
void measure(const layout::PreparedRow& row, const Bands& bands, std::size_t samples,
             std::vector<MeasureCurve>& curves);

/// `points` without those that are closer than `tolerance` to the straight line between their neighbours.
QVector<QPointF> simplified(const QVector<QPointF>& points, double tolerance);

}  // namespace tenter::desktop::axis
