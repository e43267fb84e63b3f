// UTF-8, byte by byte. Unicode 15 § 3.9, table 3-7.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace tenter::project {

/// A code point and the bytes it took; an ill-formed byte counts as one, of length 1.
struct Decoded {
    char32_t character = 0;
    std::size_t length = 1;
    bool valid = false;
};

/// The code point at byte `at` of `text`, which must be within it.
Decoded decode(std::string_view text, std::size_t at);

/// The first byte of `text` that is no part of well-formed UTF-8.
std::optional<std::size_t> firstBadByte(std::string_view text);

/// `line L, column C` of byte `at`, both from 1, columns in code points.
std::string lineAndColumn(std::string_view text, std::size_t at);

/// `text` with control, line-separating and direction-changing characters and ill-formed bytes written out.
std::string visible(std::string_view text);

}  // namespace tenter::project
