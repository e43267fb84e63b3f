// Room for text as JSON and as a table for a terminal.
#pragma once

#include <string>
#include <vector>

#include "checks/room_for_copy.h"

namespace tenter::emit {

/// A JSON array with one part per line; widths in full double precision.
std::string roomJson(const project::Project& project, const std::vector<checks::RoomForCopy>& rooms);

/// One sentence that explains the table.
std::string roomSentence();

/// A table with one line per part; `rooms` is not empty.
std::string roomTable(const project::Project& project, const std::vector<checks::RoomForCopy>& rooms);

}  // namespace tenter::emit
