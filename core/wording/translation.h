// How `say` finds the translation of a text.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

namespace tenter::wording {

/// The text in the language in use, for `count`; empty in English, or if it has no translation.
std::optional<std::string_view> translated(std::string_view source, std::size_t count);

}  // namespace tenter::wording
