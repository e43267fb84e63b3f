// JSON text in and out.
#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <string>

#include "project/described.h"
#include "project/problem.h"

namespace tenter::project {

/// Bytes of the largest file that is read.
inline constexpr std::size_t largestFile = 16U << 20U;
/// Objects and lists within each other.
inline constexpr std::size_t deepestNesting = 64;

/// Reads JSON (RFC 8259), no key twice in an object. Empty with one problem, at its line and column.
std::optional<Json> parseJson(const std::string& text, const std::string& file, Problems& problems);

/// JSON on one line. Never throws: bad UTF-8 becomes U+FFFD.
std::string compactJson(const Json& json);

/// JSON with two spaces of indent; what is short and shallow stays on one line. Never throws: bad UTF-8
/// becomes U+FFFD.
std::string prettyJson(const Json& json);

}  // namespace tenter::project
