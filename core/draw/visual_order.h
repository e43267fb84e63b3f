// The visual order of the clusters of a line.
#pragma once

#include <cstdint>
#include <vector>

#include "text/paragraph.h"

namespace tenter::draw {

/// Writes the indices of the clusters [first, end) of `paragraph` into `order`, from left to right. UAX #9,
/// rule L2.
void visualOrder(const text::Paragraph& paragraph, std::uint32_t first, std::uint32_t end,
                 std::vector<std::uint32_t>& order);

}  // namespace tenter::draw
