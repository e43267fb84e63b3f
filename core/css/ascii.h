// Letters and digits of CSS: those of ASCII, independent of the locale. CSS Syntax 3 § 4.2.
#pragma once

#include <string>
#include <string_view>

#include "units/ascii.h"

namespace tenter::css {

using units::isDigit;
using units::isLetter;
using units::lowered;
constexpr bool isHexDigit(char c) {
    return isDigit(c) || (c >= 'a' && c <= 'f') || (c >= 'A' && c <= 'F');
}
/// True for line feed, carriage return and form feed, which preprocessing replaces by line feeds. CSS Syntax
/// 3 § 3.3.
constexpr bool isNewline(char c) {
    return c == '\n' || c == '\r' || c == '\f';
}
constexpr bool isSpace(char c) {
    return c == ' ' || c == '\t' || isNewline(c);
}
/// True if the texts are equal except for the case of ASCII letters. CSS Values 4 § 2.
bool sameIgnoringCase(std::string_view one, std::string_view other);
/// `text` without white space at its ends.
std::string_view trimmed(std::string_view text);

/// The number of bytes of the UTF-8 character at byte `at` of `text`; 0 for an ill-formed byte. Unicode 15
/// § 3.9, table 3-7.
std::size_t characterLength(std::string_view text, std::size_t at);

}  // namespace tenter::css
