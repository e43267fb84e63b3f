// The list of all checks.
#pragma once

#include <string_view>
#include <vector>

#include "checks/check.h"

namespace tenter::checks {

/// Every check, in the order of checks.def.
const std::vector<const Check*>& registry();

/// The names of all checks, each once, sorted.
const std::vector<std::string_view>& checkNames();

/// True if a check has that name.
bool isCheckName(std::string_view name);

}  // namespace tenter::checks
