// Unicode properties and algorithms, from ICU.
#pragma once

#include <hb.h>

#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "text/profile.h"

namespace tenter::text {

/// Strictness of the rules for Chinese and Japanese line ends. CSS Text 3 § 5.3; UAX #14, class CJ.
enum class LineStrictness { Normal, Strict };

/// Line break opportunities of `text` by UAX #14, tailored to the language.
BreakMap icuLineBreaks(std::u16string_view text, const std::string& language, LineStrictness strictness);
/// Entry i is true if a grapheme cluster, or a word, starts at code unit i. The map has one entry more than
/// the text has code units. UAX #29.
BreakMap icuGraphemes(std::u16string_view text);
BreakMap icuWords(std::u16string_view text, const std::string& language);
/// Name of the character's script in the language in use, such as `Latin`; empty for a character that several
/// scripts use. UAX #24.
std::string scriptOf(char32_t character);
/// True for a character of the script Han, Hiragana or Katakana. UAX #24.
bool isHanOrKana(char32_t character);

/// True for a script with joining letters. CSS Text 3 § 8.2.
bool isCursive(hb_script_t script);
/// True for a character of which at least one script is cursive. UAX #24, Script_Extensions.
bool mayBeCursive(char32_t character);

/// Entry i is true if `text-transform: capitalize` treats code unit i as the start of a word: at ICU's word
/// starts, and after `.` and `@` (measured in Chromium 156). CSS Text 3 § 2.1.1 leaves words to the engine.
BreakMap capitalizedWords(std::u16string_view text, const std::string& language);

/// The replacements that turn `text` into upper case by the rules of the language. Unicode 15 § 3.13,
/// SpecialCasing.txt.
CaseEdits icuUppercase(std::u16string_view text, const std::string& language);

inline constexpr char16_t noBreakSpace = u'\u00A0';
inline constexpr char16_t plainHyphen = u'\u2010';
inline constexpr char16_t noBreakHyphen = u'\u2011';
inline bool isAsciiDigit(char16_t unit) {
    return unit >= u'0' && unit <= u'9';
}
inline bool isAsciiLetter(char16_t unit) {
    return (unit >= u'a' && unit <= u'z') || (unit >= u'A' && unit <= u'Z');
}
inline bool isAsciiAlphanumeric(char16_t unit) {
    return isAsciiDigit(unit) || isAsciiLetter(unit);
}

/// The code point at code unit `at`; an unpaired surrogate is returned as it is.
char32_t codePointAt(std::u16string_view text, std::size_t at);
/// The number of UTF-16 code units of `character`: 1 or 2.
inline std::size_t unitsOf(char32_t character) {
    return character > 0xFFFF ? 2 : 1;
}
/// True for class HL of UAX #14.
bool isHebrewLetter(char32_t character);
/// True for Han, Hiragana, Katakana and their punctuation.
bool isIdeographic(char32_t character);
/// True if `text` has a character of a script whose lines break by a dictionary, such as Thai, Lao, Khmer or
/// Burmese. UAX #14, class SA.
bool breaksByDictionary(std::u16string_view text);
/// True if `text` has a character with emoji presentation, by default or by a variation selector. UTS #51.
bool holdsEmoji(std::u16string_view text);
/// The characters that shaping may look up in a face for `text`: its own, their canonical decompositions and
/// compositions (UAX #15), the two parts of SARA AM in Thai and Lao, which HarfBuzz splits, and the hyphens
/// that engines draw for one that the face lacks.
std::set<char32_t> charactersShaped(std::u16string_view text);
/// `text` from UTF-8 to UTF-16; bytes that are not UTF-8, and NUL, become U+FFFD. WHATWG Encoding § 4.
std::u16string toUtf16(std::string_view text);
/// `text` from UTF-16 to UTF-8.
std::string toUtf8(std::u16string_view text);

}  // namespace tenter::text
