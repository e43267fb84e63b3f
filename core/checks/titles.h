// The names of checks for people.
#pragma once

#include <string>
#include <string_view>

namespace tenter::checks {

/// The name of a check at the start of a line, in the language in use: `Tight fit` for `tight-fit`.
std::string titleOfCheck(std::string_view name);

}  // namespace tenter::checks
