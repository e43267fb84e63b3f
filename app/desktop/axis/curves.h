// What the plots show, read off the row over its whole range of widths.
#pragma once

#include <QPointF>
#include <QVector>
#include <string>
#include <vector>

#include "layout/layout.h"
#include "project/project.h"

namespace tenter::desktop::axis {

/// Points (width, value), in CSS px and the curve's own unit, one piece for each band: curves jump at
/// breakpoints.
using Pieces = std::vector<QVector<QPointF>>;

/// The range of widths, cut at the breakpoints.
struct Bands {
    double least = 320;
    double most = 1920;
    std::vector<double> breakpoints;
    /// First and last width of band `band` that lie in the range.
    [[nodiscard]] double first(std::size_t band) const;
    [[nodiscard]] double last(std::size_t band) const;
    [[nodiscard]] std::size_t count() const { return breakpoints.size() + 1; }
    static Bands of(const project::Project& project, std::size_t variant);
};

struct SizeCurve {
    std::uint32_t style = 0;
    std::string role;
    Pieces pieces;  ///< font size in CSS px
};

/// The font size of every role of the variant.
std::vector<SizeCurve> sizeCurves(const layout::PreparedRow& row, const Bands& bands);

struct MeasureCurve {
    std::size_t card = 0;
    std::size_t part = 0;  ///< in the card's parts
    Pieces pieces;         ///< characters to a line of full width
};

/// Parts of running text by card: at most `most` of them, `selectedCard`'s among them.
std::vector<MeasureCurve> measuredParts(const project::Project& project, std::size_t most, int selectedCard);

/// Fills in the curves by laying the row out at about `samples` widths, and on both sides of every
/// breakpoint.
void measure(const layout::PreparedRow& row, const Bands& bands, std::size_t samples,
             std::vector<MeasureCurve>& curves);

/// `points` without those that lie within `tolerance` of the line through their neighbours.
QVector<QPointF> simplified(const QVector<QPointF>& points, double tolerance);

}  // namespace tenter::desktop::axis
