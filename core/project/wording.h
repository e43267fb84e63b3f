// Words of problems.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "project/described.h"

namespace tenter::project {

/// `"text"`, cut if long.
std::string inQuotes(std::string_view text);

/// What a JSON value is: `a number`, `text`, `an object` …
std::string kindOf(const Json& value);

/// `a`, `a or b`, `a, b or c`.
std::string either(const std::vector<std::string>& words);
/// `a`, `a and b`, `a, b and c`.
std::string listed(const std::vector<std::string>& words);

/// The known word most like `word`; empty if none is near.
std::string nearest(std::string_view word, const std::vector<std::string>& known);

}  // namespace tenter::project
