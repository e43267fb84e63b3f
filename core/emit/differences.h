// The differences of two projects as sentences and as JSON.
#pragma once

#include <string>
#include <vector>

#include "project/differences/difference.h"

namespace tenter::emit {

/// One sentence per line, then their number.
std::string differencesList(const std::vector<project::Difference>& differences);

/// A JSON array with one difference per line: its kind, its JSON pointers in the old and the new file, the
/// values there, and its sentence.
std::string differencesJson(const std::vector<project::Difference>& differences);

}  // namespace tenter::emit
