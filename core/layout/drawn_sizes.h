// The values with which an engine breaks the text of a part at one viewport width, on the engine's grid.
#pragma once

#include "layout/prepared.h"
#include "text/lines.h"

namespace tenter::layout {

/// Inline sizes of container, row and cards of `interval` at viewport width `width` (CSS px), each rounded to
/// the engine's grid, for a card in column `column`. All in CSS px.
InlineSizes<double> drawnSizesAt(const IntervalPlan& interval, double width, int column);

/// Width in CSS px of the slot of a picture above the text, in a card of the sizes `card`.
double drawnPictureWidth(const BandPlan& band, const InlineSizes<double>& card);

/// Letter or word spacing in CSS px as the engine computes it. `basis.em` is the truncated font size.
double drawnSpacing(const RolePlan& role, const units::Length& spacing, const units::LengthBasis& basis);

/// A line query in the engine's numbers.
struct DrawnQuery {
    text::LineQuery query;
    bool fitsLabel = false;  ///< true if the part's text on one line decides the width of its box
    bool fitsWord = false;   ///< true if a word that is not cut decides that width
};

/// The values that `paragraph` in `role` is broken with, in a card of the sizes `card`. `positions` receives
/// what the query points to.
DrawnQuery drawnQuery(const RolePlan& role, const text::Paragraph& paragraph, const InlineSizes<double>& card,
                      text::DrawnPositions& positions);

}  // namespace tenter::layout
