// Phrases that messages are made of.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "project/members.h"

namespace tenter::project {

/// `"text"`, cut after 60 bytes.
std::string inQuotes(std::string_view text);

/// A JSON value in a message: numbers and texts themselves, `a list` or `an object` for those.
std::string shown(const Json& value);

/// `a`, `a or b`, `a, b or c`.
std::string either(const std::vector<std::string>& words);
/// `a`, `a and b`, `a, b and c`, in the language in use.
std::string listed(const std::vector<std::string>& words);

/// `Warning: …`: a sentence of a report that people must act on, in the language in use.
std::string warning(std::string_view sentence);
/// True for what `warning` returns.
bool isWarning(std::string_view line);

/// The known word with the fewest letters changed from `word`; empty if more than a third differ.
std::string nearest(std::string_view word, const std::vector<std::string>& known);

}  // namespace tenter::project
