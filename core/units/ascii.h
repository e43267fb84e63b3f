// ASCII letters and digits, independent of the locale.
#pragma once

namespace tenter::units {

constexpr bool isDigit(char c) {
    return c >= '0' && c <= '9';
}
constexpr bool isLowerLetter(char c) {
    return c >= 'a' && c <= 'z';
}
constexpr bool isUpperLetter(char c) {
    return c >= 'A' && c <= 'Z';
}
constexpr bool isLetter(char c) {
    return isLowerLetter(c) || isUpperLetter(c);
}
/// True for a character of a plain name in CSS, HTML and URLs: a letter, a digit, `-` or `_`.
constexpr bool isWordCharacter(char c) {
    return isLetter(c) || isDigit(c) || c == '-' || c == '_';
}

}  // namespace tenter::units
