// Decoding of UTF-8. Unicode 15 § 3.9, table 3-7.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace tenter::project {

/// A code point and its length in bytes. An ill-formed byte is one of length 1, with `valid` false.
struct Decoded {
    char32_t character = 0;
    std::size_t length = 1;
    bool valid = false;
};

/// The code point that starts at byte `at` of `text`; `at` is less than the size.
Decoded decode(std::string_view text, std::size_t at);

/// The index of the first byte of `text` that is not part of well-formed UTF-8; empty if there is none.
std::optional<std::size_t> firstBadByte(std::string_view text);

/// The number of characters (code points) of well-formed UTF-8.
std::size_t characterCount(std::string_view text);
/// `LINE:COLUMN` of byte `at`, both from 1, columns in code points.
std::string lineAndColumn(std::string_view text, std::size_t at);

/// `text` with escapes (`\n`, `\u202e`, `\xff`) for control characters, line separators, marks that change
/// the direction, and ill-formed bytes.
std::string visible(std::string_view text);

}  // namespace tenter::project
