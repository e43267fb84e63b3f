// The sizes that wishes allow, as JSON.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "solve/allowed.h"

namespace tenter::emit {

/// `{"heading": {"most": [[[WIDTH, SIZE], …], …], "least": […]}, …}`: runs of vertices, CSS px, by role.
std::string allowedJson(const std::vector<std::pair<std::string, solve::Allowed>>& roles);

}  // namespace tenter::emit
