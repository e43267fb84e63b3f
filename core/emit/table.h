// Tables for a terminal.
#pragma once

#include <string>
#include <vector>

namespace tenter::emit {

using Cells = std::vector<std::string>;

/// A table with columns as wide as their widest cell, aligned to the right. All lines have the length of the
/// first, which exists.
std::string table(const std::vector<Cells>& lines);

/// Text from a user on one line: control characters become spaces, invalid UTF-8 is repaired.
std::string oneLine(const std::string& text);

}  // namespace tenter::emit
