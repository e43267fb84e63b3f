// JSON text: reading and writing.
#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <vector>

#include "project/members.h"
#include "project/problem.h"

namespace tenter::project {

/// The size in bytes of the largest file that is read.
inline constexpr std::size_t largestFile = 10U << 20U;
/// The deepest nesting of objects and lists that is read.
inline constexpr std::size_t deepestNesting = 64;

/// The value of a JSON text (RFC 8259) in which no object has a key twice. Empty, with one problem that has
/// line and column, if the text is anything else.
std::optional<Json> parseJson(const std::string& text, const std::string& file, Problems& problems);

/// `LINE:COLUMN`, both from 1, of the value at each JSON pointer (RFC 6901) in `text`, which must be valid
/// JSON: of a member the start of its key. A pointer that leads nowhere has the position of its nearest
/// ancestor.
std::vector<std::string> positionsOf(const std::string& text, const std::vector<std::string>& pointers);

/// JSON on one line. Never throws: bad UTF-8 becomes U+FFFD.
std::string compactJson(const Json& json);

/// JSON with two spaces of indent. A value of at most three levels that fits into 100 columns stays on one
/// line. Never throws: bad UTF-8 becomes U+FFFD.
std::string prettyJson(const Json& json);

}  // namespace tenter::project
