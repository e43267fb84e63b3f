// Wrap points as JSON and as a table for a terminal.
#pragma once

#include <string>
#include <vector>

#include "sweep/wraps.h"

namespace tenter::emit {

/// `[{"width": 1106.4, "card": 0, "part": 1, "kind": "heading", "below": 2, "above": 1}]`, widths in full
/// double precision.
std::string wrapsJson(const layout::PreparedRow& row, const std::vector<sweep::WrapPoint>& wraps);

/// A table for a terminal: widths to two decimals, line counts just below and just above, cards counted
/// from 1.
std::string wrapsTable(const project::Project& project, const layout::PreparedRow& row,
                       const std::vector<sweep::WrapPoint>& wraps);

}  // namespace tenter::emit
