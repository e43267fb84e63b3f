// Tables to be read in a terminal.
#pragma once

#include <string>
#include <vector>

namespace tenter::emit {

using Cells = std::vector<std::string>;

/// Columns as wide as their widest cell, numbers to the right. `lines` has at least one, all as long as it.
std::string table(const std::vector<Cells>& lines);

/// User text on one line of a terminal: any bytes are taken.
std::string oneLine(const std::string& text);

}  // namespace tenter::emit
