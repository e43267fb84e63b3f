// What ICU knows, in the shapes the profiles and paragraphs use.
#pragma once

#include <hb.h>

#include <string>
#include <string_view>
#include <vector>

#include "text/profile.h"

namespace tenter::text {

/// How strictly Chinese and Japanese lines start and end. CSS Text 3 § 5.3; UAX #14, class CJ.
enum class LineStrictness { Normal, Strict };

/// UAX #14 by ICU, tailored by language: entry i is true if a line may break before unit i.
BreakMap icuLineBreaks(std::u16string_view text, const std::string& language, LineStrictness strictness);
/// UAX #29 by ICU: entry i is true if a grapheme cluster, or a word, starts at unit i. One entry more than
/// units.
BreakMap icuGraphemes(std::u16string_view text);
BreakMap icuWords(std::u16string_view text, const std::string& language);
/// The script's name, as `Latin`; empty for a character that is of no one script. UAX #24.
std::string scriptOf(char32_t character);
/// True for a character of the scripts Han, Hiragana or Katakana. UAX #24.
bool isHanOrKana(char32_t character);

/// True for a script whose letters join. CSS Text 3 § 8.2.
bool isCursive(hb_script_t script);
/// True for a character of several scripts of which some is cursive. UAX #24, Script_Extensions.
bool mayBeCursive(char32_t character);

/// Starts of what `capitalize` takes for words: ICU's, and letters after `.` or `@`, which ICU counts on
/// (measured in Chromium 156 and Firefox 153). CSS Text 3 § 2.1.1 leaves words to the engine.
BreakMap capitalizedWords(std::u16string_view text, const std::string& language);

/// Full uppercase by language, as edits. Unicode 15 § 3.13, SpecialCasing.txt.
CaseEdits icuUppercase(std::u16string_view text, const std::string& language);

inline constexpr char16_t noBreakSpace = u'\u00A0';
inline bool isAsciiDigit(char16_t unit) {
    return unit >= u'0' && unit <= u'9';
}
inline bool isAsciiLetter(char16_t unit) {
    return (unit >= u'a' && unit <= u'z') || (unit >= u'A' && unit <= u'Z');
}
inline bool isAsciiAlphanumeric(char16_t unit) {
    return isAsciiDigit(unit) || isAsciiLetter(unit);
}

/// The code point that starts at `at`; half a pair stands for itself.
char32_t codePointAt(std::u16string_view text, std::size_t at);
/// How many units it takes.
inline std::size_t unitsOf(char32_t character) {
    return character > 0xFFFF ? 2 : 1;
}
bool isHebrewLetter(char32_t character);  ///< UAX #14, class HL
bool isIdeographic(char32_t character);   ///< Han, Hiragana, Katakana, and their punctuation
/// True if `text` holds a script whose lines break by a dictionary: Thai, Lao, Khmer, Burmese and their kin.
/// UAX #14, class SA.
bool breaksByDictionary(std::u16string_view text);
/// True if `text` holds a character that is shown as an emoji of its own accord, or is asked to be. UTS #51.
bool holdsEmoji(std::u16string_view text);
/// UTF-8 to UTF-16; bytes that are not UTF-8, and NUL, become U+FFFD. WHATWG Encoding § 4.
std::u16string toUtf16(std::string_view text);
std::string toUtf8(std::u16string_view text);

}  // namespace tenter::text
