// Remedies as JSON and as lines for a terminal.
#pragma once

#include <string>
#include <vector>

#include "remedy/remedies.h"

namespace tenter::emit {

/// A JSON array of the remedies of finding `number` (from 1). Each has the name that `remedy` takes, such as
/// `2.1`.
std::string remediesJson(const project::Project& project, std::size_t number,
                         const std::vector<remedy::Remedy>& remedies);

/// The same as lines, each remedy with what else it does; empty if there is none. Shares are of `shareOf`.
std::vector<std::string> remedyLines(const project::Project& project, std::size_t number,
                                     const std::vector<remedy::Remedy>& remedies, const std::string& shareOf);

}  // namespace tenter::emit
