// A part's lines over a run of widths, stretch by stretch.
#pragma once

#include <cstdint>
#include <functional>
#include <vector>

#include "checks/subject.h"

namespace tenter::checks {

/// Calls `found` for each stretch of the piece within which the part's lines stay the same, with the clusters
/// at which they start. Balanced lines are about even and have no such walk: nothing is found of them.
void overLaidLines(
    const Subject& subject, const PartSeen& part, const sweep::Piece& piece,
    const std::function<void(const sweep::Interval&, const std::vector<std::uint32_t>&)>& found);

/// The part's paragraph as the piece's band has it.
const text::Paragraph& paragraphIn(const Subject& subject, const PartSeen& part, const sweep::Piece& piece);

}  // namespace tenter::checks
