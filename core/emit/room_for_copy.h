// Room for copy as JSON and as a table to be read.
#pragma once

#include <string>
#include <vector>

#include "checks/room_for_copy.h"

namespace tenter::emit {

/// A JSON array, one part a line; widths in full double precision.
std::string roomJson(const project::Project& project, const std::vector<checks::RoomForCopy>& rooms);

/// What the table below tells, in a sentence.
std::string roomSentence();

/// A line for each part; `rooms` has at least one.
std::string roomTable(const project::Project& project, const std::vector<checks::RoomForCopy>& rooms);

}  // namespace tenter::emit
