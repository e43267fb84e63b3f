#include "css/attribute_match.h"

#include <algorithm>
#include <array>

#include "css/ascii.h"

namespace tenter::css {

namespace {

// HTML Living Standard, "Case-sensitivity of selectors": the values of these are compared ASCII
// case-insensitively.
constexpr std::array<std::string_view, 46> caselessAttributes = {
    "accept",     "accept-charset", "align",     "alink",    "axis",     "bgcolor", "charset",
    "checked",    "clear",          "codetype",  "color",    "compact",  "declare", "defer",
    "dir",        "direction",      "disabled",  "enctype",  "face",     "frame",   "hreflang",
    "http-equiv", "lang",           "language",  "link",     "media",    "method",  "multiple",
    "nohref",     "noresize",       "noshade",   "nowrap",   "readonly", "rel",     "rev",
    "rules",      "scope",          "scrolling", "selected", "shape",    "target",  "text",
    "type",       "valign",         "valuetype", "vlink"};

// `equal` compares two texts.
template <class Equal>
bool isAmongWords(std::string_view actual, std::string_view word, Equal equal) {
    // A value that is empty or contains white space is not a word. § 6.1.
    if (word.empty() || std::ranges::any_of(word, isSpace)) return false;
    while (true) {
        actual = trimmed(actual);
        const auto end = std::ranges::find_if(actual, isSpace);
        const auto length = static_cast<std::size_t>(end - actual.begin());
        if (equal(actual.substr(0, length), word)) return true;
        if (length == actual.size()) return false;
        actual.remove_prefix(length);
    }
}

template <class Equal>
bool isAsAsked(Comparison comparison, std::string_view actual, std::string_view value, Equal equal) {
    const auto partIs = [&](std::size_t from, std::size_t length) {
        return from + length <= actual.size() && equal(actual.substr(from, length), value);
    };
    const std::size_t length = value.size();
    switch (comparison) {
        case Comparison::Exists:
            return true;
        case Comparison::Equals:
            return equal(actual, value);
        case Comparison::Includes:
            return isAmongWords(actual, value, equal);
        case Comparison::DashMatches:
            return partIs(0, length) && (actual.size() == length || actual[length] == '-');
        // With an empty value these three match nothing. § 6.2.
        case Comparison::StartsWith:
            return length > 0 && partIs(0, length);
        case Comparison::EndsWith:
            return length > 0 && length <= actual.size() && partIs(actual.size() - length, length);
        case Comparison::Contains:
            break;
    }
    const auto sameCharacter = [&](char a, char b) {
        return equal(std::string_view(&a, 1), std::string_view(&b, 1));
    };
    return length > 0 && std::search(actual.begin(), actual.end(), value.begin(), value.end(),
                                     sameCharacter) != actual.end();
}

}  // namespace

bool attributeMatches(const Simple& asked, std::string_view actual) {
    const bool ignoresCase = asked.ignoresCase.value_or(std::ranges::find(caselessAttributes, asked.name) !=
                                                        caselessAttributes.end());
    if (ignoresCase) return isAsAsked(asked.comparison, actual, asked.value, sameIgnoringCase);
    return isAsAsked(asked.comparison, actual, asked.value, std::equal_to<>());
}

bool hasWord(std::string_view actual, std::string_view word) {
    return isAmongWords(actual, word, std::equal_to<>());
}

}  // namespace tenter::css
