// Wrap points as JSON and as a table.
#pragma once

#include <string>
#include <vector>

#include "sweep/wraps.h"

namespace tenter::emit {

/// `[{"width": 1106.4, "card": 0, "part": 1, "kind": "heading", "below": 2, "above": 1}]`, widths in full
/// double precision.
std::string wrapsJson(const layout::PreparedRow& row, const std::vector<sweep::WrapPoint>& wraps);

/// The same to be read in a terminal, widths to a thousandth of a px; cards and parts are counted from 0
/// there too.
std::string wrapsTable(const layout::PreparedRow& row, const std::vector<sweep::WrapPoint>& wraps);

}  // namespace tenter::emit
