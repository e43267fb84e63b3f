// What parts and cards measure over a range of viewport widths, as curves of straight pieces.
#pragma once

#include <vector>

#include "sweep/pieces.h"

namespace tenter::sweep {

struct Vertex {
    double width = 0;  ///< of the viewport, CSS px
    double value = 0;
    friend bool operator==(const Vertex&, const Vertex&) = default;
};

/// Vertices by rising width, joined by straight lines. At a jump two stand at one width: the value just below
/// it, then the value just above.
using Curve = std::vector<Vertex>;

/// The curve's value at viewport width `width`; at a jump the lower side's, as a band holds its upper
/// breakpoint. Outside the curve's widths the nearest value; 0 if it has none.
double valueAt(const Curve& curve, double width);

/// A text part has all but the slot's, a picture only those. CSS px, unless said otherwise. The measure is a
/// quotient of straight lines: its curve is within 0.01 characters of it, or within 0.01 % of the most it is
/// between two kinks, if that is more.
struct PartCurves {
    std::size_t card = 0;
    std::size_t part = 0;
    bool picture = false;
    Curve fontSize;
    Curve lineHeight;  ///< on the engine's grid
    Curve measure;     ///< comfortable-line figure in characters
    Curve lines;       ///< how many
    Curve available;   ///< width lines are broken at
    Curve slotWidth;
    Curve slotHeight;  ///< on the engine's grid
};

struct CardCurves {
    Curve height;  ///< on the engine's grid
    Curve spare;   ///< height above the first part that an automatic top margin pushes down; 0 if none is
};

struct Curves {
    std::vector<CardCurves> cards;
    std::vector<PartCurves> parts;  ///< by card, then part
};

/// The curves of a row from `least` to `most` (CSS px) whose parts' pieces there are `pieces`, by card, then
/// part. Heights stand on an engine's grid
/// (`BreakProfile::stacked`, `lineHeight`, `extent`) and so climb in small steps: their vertices are read off
/// layouts on both sides of every event, and of every width at which another card becomes the tallest of its
/// line, and the straight line between is right within that grid.
Curves curvesOf(const layout::PreparedRow& row, const std::vector<PartPieces>& pieces, double least,
                double most);

}  // namespace tenter::sweep
