// Sentences for people, in the language of the reader. English is the language of the source.
//
// `lupdate` collects the texts that stand inside `wording::say(…)`, `wording::noted(…)` and
// `wording::sayCount(…)`; it does not read other expressions, such as a choice between two texts. A text is a
// whole sentence or a noun phrase with a name of its own, because other languages order words differently.
#pragma once

#include <cstddef>
#include <initializer_list>
#include <span>
#include <string>
#include <string_view>

namespace tenter::wording {

/// `source` in the language in use, with `%1` to `%9` replaced by `values`. A value is inserted as it is,
/// even if it holds `%1`. A text without a translation stays English.
std::string say(std::string_view source, std::initializer_list<std::string_view> values = {});

/// The same with up to nine values of a list.
std::string say(std::string_view source, std::span<const std::string_view> values);

/// The same for a count: `one` in English if it is 1, else `many`. `%n` is the count. A translation has as
/// many forms as its language. Catalogues list it under `one`.
std::string sayCount(std::string_view one, std::string_view many, std::size_t count,
                     std::initializer_list<std::string_view> values = {});

/// `source` itself: marks a text of a table for catalogues. It is translated by `say` where it is shown.
constexpr std::string_view noted(std::string_view source) {
    return source;
}

}  // namespace tenter::wording
