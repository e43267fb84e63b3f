// Heights over a range of widths: of lines, pictures and cards.
#pragma once

#include "sweep/curves.h"

namespace tenter::sweep {

/// Adds to `curves` every curve that is on the grid of the engine.
void addHeights(const layout::PreparedRow& row, const std::vector<PartPieces>& pieces, double least,
                double most, Curves& curves);

}  // namespace tenter::sweep
