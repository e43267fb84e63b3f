// ASCII letters and digits, independent of the locale.
#pragma once

#include <string>
#include <string_view>

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
constexpr char lowered(char c) {
    return isUpperLetter(c) ? static_cast<char>(c - 'A' + 'a') : c;
}
/// `text` with ASCII letters in lower case.
inline std::string lowered(std::string_view text) {
    std::string result(text);
    for (char& c : result)
        c = lowered(c);
    return result;
}
/// `text` with each run of characters for which `isKept` is false as one hyphen, and no hyphen at the end.
template <class IsKept>
std::string hyphenated(std::string_view text, const IsKept& isKept) {
    std::string out;
    for (const char c : text) {
        if (isKept(c))
            out += c;
        else if (!out.empty() && out.back() != '-')
            out += '-';
    }
    while (!out.empty() && out.back() == '-')
        out.pop_back();
    return out;
}

}  // namespace tenter::units
