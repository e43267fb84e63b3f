// Line breaks compared with Unicode's LineBreakTest.txt 15.0.0 (Debian package unicode-data). The file has
// every pair of line-breaking classes, with and without a space or a combining mark between them, and
// sentences. Each deviation of ICU or of an engine's profile is a rule in this test. The file with these
// rules applied must equal the computed breaks at every place of every case.
#include <gtest/gtest.h>
#include <unicode/uchar.h>
#include <unicode/utf16.h>
#include <unicode/uvernum.h>

#include <fstream>
#include <functional>
#include <map>
#include <optional>
#include <sstream>

#include "text/profiles/blink_ascii.h"
#include "text/unicode.h"

namespace tenter::text {
namespace {

/// The line-breaking class of a character, with ambiguous classes resolved. UAX #14 § 6.1, LB1.
ULineBreak classOf(char32_t character) {
    const auto found =
        static_cast<ULineBreak>(u_getIntPropertyValue(static_cast<UChar32>(character), UCHAR_LINE_BREAK));
    switch (found) {
        case U_LB_AMBIGUOUS:
        case U_LB_SURROGATE:
        case U_LB_UNKNOWN:
            return U_LB_ALPHABETIC;
        case U_LB_COMPLEX_CONTEXT: {
            const int8_t category = u_charType(static_cast<UChar32>(character));
            const bool mark = category == U_NON_SPACING_MARK || category == U_COMBINING_SPACING_MARK;
            return mark ? U_LB_COMBINING_MARK : U_LB_ALPHABETIC;
        }
        default:
            return found;
    }
}

struct Case {
    std::u32string text;
    std::vector<bool>
        breaks;        ///< for each character, true if a break is allowed before it; false for the first
    std::string line;  ///< the line of the file, without its comment
    [[nodiscard]] ULineBreak at(std::size_t i) const { return classOf(text[i]); }
    /// Index of the character before `i` to which combining marks in between belong; the text's length if
    /// there is none. LB9.
    [[nodiscard]] std::size_t baseBefore(std::size_t i) const {
        while (i > 0 && at(i - 1) == U_LB_COMBINING_MARK)
            --i;
        return i > 0 ? i - 1 : text.size();
    }
};

const std::vector<Case>& cases() {
    static const std::vector<Case> all = [] {
        std::vector<Case> read;
        std::ifstream file(TENTER_LINE_BREAK_TEST);
        for (std::string line; std::getline(file, line);) {
            Case one;
            one.line = line.substr(0, line.find('#'));
            std::istringstream words(one.line);
            bool mark = false;
            for (std::string word; words >> word;) {
                if (word == "÷" || word == "×") {
                    mark = word == "÷";
                } else {
                    one.text += static_cast<char32_t>(std::stoul(word, nullptr, 16));
                    one.breaks.push_back(mark && one.text.size() > 1);
                }
            }
            if (!one.text.empty()) read.push_back(std::move(one));
        }
        return read;
    }();
    return all;
}

std::u16string toUnits(const std::u32string& text) {
    std::u16string units;
    for (const char32_t character : text) {
        if (character > 0xFFFF) {
            units += static_cast<char16_t>(U16_LEAD(character));
            units += static_cast<char16_t>(U16_TRAIL(character));
        } else {
            units += static_cast<char16_t>(character);
        }
    }
    return units;
}

/// The entries of a map of code units at which a character starts.
std::vector<bool> atCharacters(const std::u32string& text, const BreakMap& map) {
    std::vector<bool> out;
    std::size_t unit = 0;
    for (const char32_t character : text) {
        out.push_back(unit > 0 && map[unit]);
        unit += unitsOf(character);
    }
    return out;
}

/// A deviation from the file: true or false if it decides about a break before character `i`, empty if it
/// does not apply.
struct Departure {
    std::string name;
    std::function<std::optional<bool>(const Case&, std::size_t i)> says;
};

// Deviations of ICU 72.

/// The default LB25 of UAX #14 keeps `,` and a digit together. The file uses the regular expression of § 8.2,
/// example 7, which also requires a digit before the comma.
const Departure separatorBeforeDigit{
    "LB25 without example 7: IS × NU", [](const Case& c, std::size_t i) -> std::optional<bool> {
        const std::size_t base = c.baseBefore(i);
        const bool applies =
            c.at(i) == U_LB_NUMERIC && base < c.text.size() && c.at(base) == U_LB_INFIX_NUMERIC;
        return applies ? std::optional(false) : std::nullopt;
    }};
/// As in `costs .35`: a number that starts with a decimal point may start a line (LB15c of later versions).
const Departure leadingPoint{"a number may start a line with its point: SP ÷ IS NU",
                             [](const Case& c, std::size_t i) -> std::optional<bool> {
                                 const bool applies = i + 1 < c.text.size() && c.at(i - 1) == U_LB_SPACE &&
                                                      c.at(i) == U_LB_INFIX_NUMERIC &&
                                                      c.at(i + 1) == U_LB_NUMERIC;
                                 return applies ? std::optional(true) : std::nullopt;
                             }};
/// A hyphen that starts a word stays with the word: ICU's LB20.09 for CSS (LB20a of later versions).
const Departure leadingHyphen{"a hyphen that starts a word stays with it: sot HY × AL",
                              [](const Case& c, std::size_t i) -> std::optional<bool> {
                                  const bool applies = c.at(i) == U_LB_ALPHABETIC && c.baseBefore(i) == 0 &&
                                                       c.at(0) == U_LB_HYPHEN;
                                  return applies ? std::optional(false) : std::nullopt;
                              }};

const std::vector<Departure> icuRules{separatorBeforeDigit, leadingPoint, leadingHyphen};

/// The breaks of the file with deviations applied, later ones last. Counts the places that each of them
/// changes.
std::vector<bool> expected(const Case& given, const std::vector<Departure>& departures,
                           std::map<std::string, int>& changed) {
    std::vector<bool> out = given.breaks;
    for (std::size_t i = 1; i < out.size(); ++i) {
        for (const Departure& departure : departures) {
            const std::optional<bool> says = departure.says(given, i);
            if (!says || *says == out[i]) continue;
            ++changed[departure.name];
            out[i] = *says;
        }
    }
    return out;
}

std::string shown(const std::vector<bool>& breaks) {
    std::string out;
    for (const bool each : breaks)
        out += each ? "÷" : "×";
    return out;
}

void expectEachUsed(const std::vector<Departure>& departures, const std::map<std::string, int>& changed) {
    for (const Departure& departure : departures)
        EXPECT_TRUE(changed.contains(departure.name)) << departure.name << ": changes nothing";
    for (const auto& [name, times] : changed)
        ::testing::Test::RecordProperty(name, times);
}

TEST(LineBreakTest, has_the_unicode_version_of_icu) {
    EXPECT_EQ(std::string(U_UNICODE_VERSION), "15.0");
    EXPECT_EQ(cases().size(), 7654U);
}

TEST(LineBreakTest, agrees_with_icu_strict_except_for_written_rules) {
    std::map<std::string, int> changed;
    std::size_t agreeing = 0;
    for (const Case& each : cases()) {
        const std::vector<bool> found =
            atCharacters(each.text, icuLineBreaks(toUnits(each.text), "en", LineStrictness::Strict));
        agreeing += found == each.breaks ? 1U : 0U;
        EXPECT_EQ(shown(found), shown(expected(each, icuRules, changed))) << each.line;
    }
    expectEachUsed(icuRules, changed);
    RecordProperty("cases", static_cast<int>(cases().size()));
    RecordProperty("agreeing", static_cast<int>(agreeing));
    EXPECT_EQ(cases().size() - agreeing, 22U);
}

/// The text with small kana (class CJ) written as an ideograph (ID).
std::u32string kanaAsIdeographs(std::u32string text) {
    for (char32_t& character : text)
        if (classOf(character) == U_LB_CONDITIONAL_JAPANESE_STARTER) character = U'\u6F6E';
    return text;
}

// CSS Text 3 § 5.3: with `line-break: normal` a line may start with small kana. UAX #14 treats them as NS by
// default; § 5.2, class CJ, allows ID too.
TEST(LineBreakTest, agrees_with_icu_normal_where_small_kana_count_as_ideographs) {
    std::size_t kana = 0;
    for (const Case& each : cases()) {
        const std::vector<bool> found =
            atCharacters(each.text, icuLineBreaks(toUnits(each.text), "en", LineStrictness::Normal));
        const std::u32string plain = kanaAsIdeographs(each.text);
        kana += plain != each.text ? 1U : 0U;
        const std::vector<bool> strict =
            atCharacters(plain, icuLineBreaks(toUnits(plain), "en", LineStrictness::Strict));
        EXPECT_EQ(shown(found), shown(strict)) << each.line;
    }
    EXPECT_GT(kana, 200U);
}

/// False for text in which CSS differs from UAX #14: characters that white-space processing collapses or that
/// force breaks (CSS Text 3 § 4.1), and classes that `line-break` changes (§ 5.3).
bool isLeftToUnicode(const Case& each) {
    for (std::size_t i = 0; i < each.text.size(); ++i) {
        const ULineBreak kind = each.at(i);
        const bool collapses =
            kind == U_LB_SPACE && (i == 0 || i + 1 == each.text.size() || each.at(i - 1) == U_LB_SPACE);
        if (collapses || each.text[i] < 0x20 || kind == U_LB_MANDATORY_BREAK || kind == U_LB_NEXT_LINE ||
            kind == U_LB_CONDITIONAL_JAPANESE_STARTER)
            return false;
    }
    return true;
}

bool isIn(std::u32string_view set, char32_t character) {
    return set.find(character) != std::u32string_view::npos;
}
bool isDigit(char32_t character) {
    return character >= U'0' && character <= U'9';
}
bool isAlphanumeric(char32_t character) {
    return isDigit(character) || (character >= U'a' && character <= U'z') ||
           (character >= U'A' && character <= U'Z');
}
bool isPrintable(char32_t character) {
    return character >= U'!' && character <= U'~';
}

/// Compares a profile with the file, with the profile's rules applied, in the cases that CSS leaves to UAX
/// #14.
void expectExplained(const BreakProfile& profile, std::vector<Departure> rules) {
    rules.insert(rules.begin(), icuRules.begin(), icuRules.end());
    std::map<std::string, int> changed;
    int agreeing = 0;
    int asked = 0;
    for (const Case& each : cases()) {
        if (!isLeftToUnicode(each)) continue;
        const std::vector<bool> found = atCharacters(each.text, profile.breaks(toUnits(each.text), "en"));
        ++asked;
        agreeing += found == each.breaks ? 1 : 0;
        EXPECT_EQ(shown(found), shown(expected(each, rules, changed))) << each.line;
    }
    expectEachUsed(rules, changed);
    ::testing::Test::RecordProperty("cases", asked);
    ::testing::Test::RecordProperty("agreeing", agreeing);
    EXPECT_GT(asked, 4000);
    EXPECT_GT(agreeing, asked * 3 / 4);
}

/// A run of spaces is always an opportunity, even before closing and after opening punctuation, where UAX #14
/// has none (LB7, LB11, LB13 to LB17). CSS Text 3 § 5.1 leaves it open; Chromium and Firefox both do it.
const Departure afterSpace{"space rule: SP ÷", [](const Case& c, std::size_t i) -> std::optional<bool> {
                               return c.text[i - 1] == U' ' ? std::optional(true) : std::nullopt;
                           }};

/// After a hyphen between two Hebrew letters there is a break in both engines, by LB21a of Unicode 16.
const Departure hebrewHyphen{
    "a hyphen between Hebrew letters: HL HY ÷ HL", [](const Case& c, std::size_t i) -> std::optional<bool> {
        const bool between = i > 1 && c.text[i - 1] == U'-' && c.at(i - 2) == U_LB_HEBREW_LETTER &&
                             c.at(i) == U_LB_HEBREW_LETTER;
        return between ? std::optional(true) : std::nullopt;
    }};

// Measured in Chromium 156; the table is in blink_ascii.cpp, the rules are in blink.cpp. The file has no case
// with a hyphen between a letter and a digit.
TEST(LineBreakTest, differs_under_blink_by_its_space_rule_its_table_and_no_break_spaces) {
    const Departure table{"ASCII table", [](const Case& c, std::size_t i) -> std::optional<bool> {
                              if (!isPrintable(c.text[i - 1]) || !isPrintable(c.text[i])) return std::nullopt;
                              return blinkBreaksBetween(static_cast<char16_t>(c.text[i - 1]),
                                                        static_cast<char16_t>(c.text[i]));
                          }};
    const Departure noBreakSpace{
        "no-break space: none between it and ASCII", [](const Case& c, std::size_t i) -> std::optional<bool> {
            const bool beside = (c.text[i - 1] == U'\u00A0' && isPrintable(c.text[i])) ||
                                (isPrintable(c.text[i - 1]) && c.text[i] == U'\u00A0');
            return beside ? std::optional(false) : std::nullopt;
        }};
    const Departure leadingHebrew{"LB20a of Unicode 16 for Hebrew letters: sot HY × HL",
                                  [](const Case& c, std::size_t i) -> std::optional<bool> {
                                      const bool leads =
                                          i == 1 && c.text[0] == U'-' && c.at(i) == U_LB_HEBREW_LETTER;
                                      return leads ? std::optional(false) : std::nullopt;
                                  }};
    expectExplained(blink(), {afterSpace, table, noBreakSpace, hebrewHyphen, leadingHebrew});
}

// Measured in Firefox 153; the rules are in gecko.cpp. For a slash before a digit, and for a hyphen between a
// letter and a digit, the file has no case or the same result.
TEST(LineBreakTest, differs_under_gecko_by_its_space_rule_its_hyphens_and_signs) {
    const Departure hyphen{"hyphen: a break before letters and signs, at a word's start too",
                           [](const Case& c, std::size_t i) -> std::optional<bool> {
                               const bool opens = isIn(U"#&*<=>@^_`~", c.text[i]) ||
                                                  (isAlphanumeric(c.text[i]) && !isDigit(c.text[i]));
                               return c.text[i - 1] == U'-' && opens ? std::optional(true) : std::nullopt;
                           }};
    const Departure signs{"signs: none between $ % + \\ and brackets",
                          [](const Case& c, std::size_t i) -> std::optional<bool> {
                              const std::u32string_view sign = U"$%+\\";
                              const bool joined = (isIn(sign, c.text[i - 1]) && isIn(U"([{", c.text[i])) ||
                                                  (isIn(U")]}", c.text[i - 1]) && isIn(sign, c.text[i]));
                              return joined ? std::optional(false) : std::nullopt;
                          }};
    expectExplained(gecko(), {afterSpace, hyphen, signs, hebrewHyphen});
}

}  // namespace
}  // namespace tenter::text
