// The sizes that the wishes allow, as JSON.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "solve/allowed.h"

namespace tenter::emit {

/// `{"heading": {"most": [[[WIDTH, SIZE], …], …], "least": […]}, …}`: by role, the bounds as lists of curves;
/// each curve is a list of vertices, CSS px.
std::string allowedJson(const std::vector<std::pair<std::string, solve::Allowed>>& roles);

}  // namespace tenter::emit
