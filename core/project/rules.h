// The numbers, lengths and names that a project file may hold at each place.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "units/length.h"

namespace tenter::project {

// The largest numbers of what a project file lists.
inline constexpr std::size_t mostRoles = 100;
inline constexpr std::size_t mostSelectors = mostRoles + 3;  ///< row, card and picture besides
inline constexpr std::size_t mostCards = 500;
inline constexpr std::size_t mostParts = 50;  ///< of a card
inline constexpr std::size_t mostVariants = 50;
inline constexpr std::size_t mostBands = 50;  ///< of a variant
inline constexpr std::size_t mostPageRanges = 50;
inline constexpr std::size_t mostUnread = 100;
inline constexpr std::size_t mostSentenceValues = 9;
inline constexpr int deepestSentence = 5;  ///< sentences in the values of sentences
inline constexpr std::size_t mostFonts = 100;
inline constexpr std::size_t mostWishes = 1000;
inline constexpr std::size_t mostRuns = 1000;    ///< of the text of a part
inline constexpr std::size_t mostFamilies = 50;  ///< of a list of font families

// The longest texts. The time of the checks grows with the square of the length of a text.
inline constexpr std::size_t longestText = 10000;    ///< characters of the text of a part
inline constexpr std::size_t longestTexts = 200000;  ///< characters of the texts of all cards
inline constexpr std::size_t longestCode = 2U
                                           << 20U;  ///< bytes of the markup, and of the theme, of a given row
inline constexpr std::size_t longestSelectors = 10000;  ///< bytes of a selector list of a given row

/// The range of the numbers at a place.
struct NumberRule {
    std::string_view where;  ///< end of a JSON pointer; `*` matches any one step
    double least = 0;
    double most = 0;
    bool whole = false;
};

/// The units and the range of the lengths at a place.
struct LengthRule {
    std::string_view where;
    unsigned units = 0;  ///< one bit for each unit or keyword, by units::Unit
    double least = 0;
    double most = 0;
    [[nodiscard]] bool allows(units::Unit unit) const {
        return (units >> static_cast<unsigned>(unit) & 1U) != 0;
    }
    /// The units and keywords as CSS writes them.
    [[nodiscard]] std::vector<std::string> words() const;
};

/// The rule for the value at JSON pointer `place`.
const NumberRule& numberRule(std::string_view place);
const LengthRule& lengthRule(std::string_view place);

/// True if `place` ends with the steps of `pattern`.
bool endsWith(std::string_view place, std::string_view pattern);

bool isClassName(std::string_view text);  ///< [A-Za-z][A-Za-z0-9_-]*
bool isRoleName(std::string_view text);   ///< [a-z][a-z0-9-]*, not `card`, `picture` or `x-…`
bool isLanguage(std::string_view text);   ///< the form of a language tag, RFC 5646 § 2.1

// The same rules in messages, after "must be".
inline constexpr const char* classNameRule =
    "a class name: letters, digits, hyphens and underscores, starting with a letter";
inline constexpr const char* roleNameRule =
    "a role name: lower-case letters, digits and hyphens, starting with a letter, except card and picture";
inline constexpr const char* selectorRoleRule =
    "row, card, picture, or the name of a text role: lower-case letters, digits and hyphens, starting with a "
    "letter";

}  // namespace tenter::project
