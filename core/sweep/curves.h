// Measures of parts and cards over a range of viewport widths, as curves of straight pieces.
#pragma once

#include <vector>

#include "sweep/pieces.h"

namespace tenter::sweep {

struct Vertex {
    double width = 0;  ///< of the viewport, CSS px
    double value = 0;
    friend bool operator==(const Vertex&, const Vertex&) = default;
};

/// Vertices by rising width, joined by straight lines. A jump has two vertices at the same width: the value
/// just below it, then the value just above.
using Curve = std::vector<Vertex>;

/// The curve's value at viewport width `width` (CSS px). At a jump the value below, because a breakpoint
/// belongs to the band below it. Outside the curve's widths its nearest value; 0 for an empty curve.
double valueAt(const Curve& curve, double width);

/// The curves of one part, in CSS px unless stated. A picture has only the slot's curves, a text all others.
/// The measure is a quotient of straight lines; its curve is accurate to 0.01 characters, or to 0.01 % of its
/// largest value between two kinks if that is more.
struct PartCurves {
    project::PartRef place;
    bool picture = false;
    Curve fontSize;
    Curve lineHeight;  ///< on the engine's grid
    Curve measure;     ///< characters that fit on a line
    Curve lines;       ///< line count
    Curve available;   ///< width at which lines are broken
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

/// The curves of a row from `least` to `most` (CSS px). `pieces` are those of its parts there, by card, then
/// part.
///
/// Heights are on the grid of an engine and so change in small steps. Their vertices are read from layouts on
/// both sides of every event, and of every width at which another card becomes the tallest of its line of
/// cards; the straight line between them is accurate to one step of the grid.
Curves curvesOf(const layout::PreparedRow& row, const std::vector<PartPieces>& pieces, double least,
                double most);

}  // namespace tenter::sweep
