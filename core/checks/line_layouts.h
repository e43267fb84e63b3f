// The line breaks of a part over a range of widths.
#pragma once

#include <cstdint>
#include <functional>
#include <vector>

#include "checks/subject.h"

namespace tenter::checks {

/// Calls `found` with each span of the piece that has the same line breaks, and with the clusters at which
/// the lines start. Not called for balanced text, whose breaks cannot be followed this way.
void forEachLineLayout(
    const Subject& subject, const CheckedPart& part, const sweep::Piece& piece,
    const std::function<void(const sweep::Interval&, const std::vector<std::uint32_t>&)>& found);

/// The part's paragraph in the band of the piece.
const text::Paragraph& paragraphIn(const Subject& subject, const CheckedPart& part,
                                   const sweep::Piece& piece);

}  // namespace tenter::checks
