#include "markup/class_words.h"
#include "units/ascii.h"

#include <algorithm>
#include <array>

namespace tenter::markup {

namespace {

using units::isLowerLetter;
using units::isUpperLetter;

// The pieces between hyphens and underscores.
std::vector<std::string_view> pieces(std::string_view name) {
    std::vector<std::string_view> out;
    for (std::size_t at = 0; at < name.size();) {
        const std::size_t end = std::min(name.find_first_of("-_", at), name.size());
        if (end > at) out.push_back(name.substr(at, end - at));
        at = end + 1;
    }
    return out;
}

bool looksMade(std::string_view piece) {
    std::size_t digits = 0;
    std::size_t run = 0;
    std::size_t longest = 0;
    std::size_t humps = 0;
    for (std::size_t i = 0; i < piece.size(); ++i) {
        run = units::isDigit(piece[i]) ? run + 1 : 0;
        longest = std::max(longest, run);
        if (units::isDigit(piece[i])) ++digits;
        if (i > 0 && isUpperLetter(piece[i]) && !isUpperLetter(piece[i - 1])) ++humps;
    }
    const bool mixed = digits > 0 && digits < piece.size() && piece.size() >= 5;
    return longest >= 4 || mixed || (humps >= 2 && piece.size() <= 8);
}

constexpr std::array<std::string_view, 17> stateWords{
    "active", "current", "disabled", "even", "first", "focus",    "hidden",  "hover",  "is",
    "last",   "loaded",  "loading",  "odd",  "open",  "selected", "visible", "visited"};

}  // namespace

std::vector<std::string> wordsOf(std::string_view className) {
    std::vector<std::string> words;
    for (const std::string_view piece : pieces(className)) {
        for (std::size_t i = 0; i < piece.size(); ++i) {
            const char c = piece[i];
            if (i == 0 || (isUpperLetter(c) && isLowerLetter(piece[i - 1]))) words.emplace_back();
            words.back() += isUpperLetter(c) ? static_cast<char>(c - 'A' + 'a') : c;
        }
    }
    return words;
}

bool hasWord(const Node& node, std::initializer_list<std::string_view> words) {
    for (const std::string_view name : node.classes())
        for (const std::string& word : wordsOf(name))
            if (std::ranges::find(words, word) != words.end()) return true;
    return false;
}

bool isStable(std::string_view className) {
    if (className.empty() || !std::ranges::all_of(className, units::isWordCharacter)) return false;
    if (!isUpperLetter(className[0]) && !isLowerLetter(className[0])) return false;
    if (std::ranges::any_of(pieces(className), looksMade)) return false;
    return std::ranges::none_of(wordsOf(className), [](const std::string& word) {
        return std::ranges::find(stateWords, word) != stateWords.end();
    });
}

bool isHidden(const Node& node) {
    if (node.find("hidden") != nullptr) return true;
    for (const std::string_view name : node.classes()) {
        const std::vector<std::string> words = wordsOf(name);
        const auto has = [&](std::string_view word) { return std::ranges::find(words, word) != words.end(); };
        if ((has("screen") && has("reader")) || (has("visually") && has("hidden")) ||
            (has("sr") && has("only")))
            return true;
    }
    return false;
}

}  // namespace tenter::markup
