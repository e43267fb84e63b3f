// The order in which a line's clusters stand, left to right.
#pragma once

#include <cstdint>
#include <vector>

#include "text/paragraph.h"

namespace tenter::desktop::row {

/// Clusters [first, end) of `paragraph` from left to right, into `order`. UAX #9, rule L2.
void visualOrder(const text::Paragraph& paragraph, std::uint32_t first, std::uint32_t end,
                 std::vector<std::uint32_t>& order);

}  // namespace tenter::desktop::row
