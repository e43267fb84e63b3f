// The curves of a part that do not depend on neighbouring cards.
#pragma once

#include "sweep/curves.h"

namespace tenter::sweep {

/// The curves of widths, sizes, measure and line count; those of heights stay empty.
PartCurves straightCurves(const PartPieces& pieces, project::PartRef place, bool picture);

}  // namespace tenter::sweep
