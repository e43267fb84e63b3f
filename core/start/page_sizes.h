// Ramps from the font sizes of a page.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "start/page_piece.h"
#include "units/ramp.h"

namespace tenter::start {

/// The ramp of each role in each piece.
using RoleSizes = std::map<std::string, std::vector<units::Ramp>>;

/// Ramps that have the sizes of all pieces, to 0.01 px. Neighbouring pieces have the same ramp as far as one
/// ramp has their sizes.
RoleSizes roleSizes(const std::vector<PieceReading>& pieces);

}  // namespace tenter::start
