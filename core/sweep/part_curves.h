// The curves of a part that no card beside it changes.
#pragma once

#include "sweep/curves.h"

namespace tenter::sweep {

/// Widths, sizes, measure and line counts; heights are left empty.
PartCurves straightCurves(const PartPieces& pieces, std::size_t card, std::size_t part, bool picture);

}  // namespace tenter::sweep
