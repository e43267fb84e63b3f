// Heights over a range of widths: of lines, pictures and cards.
#pragma once

#include "sweep/curves.h"

namespace tenter::sweep {

/// Adds every curve of `curves` that is on the engine's grid.
void addHeights(const layout::PreparedRow& row, const std::vector<PartPieces>& pieces, double least,
                double most, Curves& curves);

}  // namespace tenter::sweep
