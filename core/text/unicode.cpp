#include "text/unicode.h"

#include <unicode/brkiter.h>
#include <unicode/casemap.h>
#include <unicode/edits.h>
#include <unicode/locid.h>
#include <unicode/normalizer2.h>
#include <unicode/uchar.h>
#include <unicode/unistr.h>
#include <unicode/uscript.h>
#include <unicode/utext.h>
#include <unicode/utf16.h>

#include <array>
#include <map>
#include <memory>

#include "wording/language.h"

namespace tenter::text {
namespace {

using Iterator = std::unique_ptr<icu::BreakIterator>;

/// Entry i is true if `iterator` has a boundary of `text` at code unit i; both ends are boundaries.
BreakMap boundaries(icu::BreakIterator* iterator, std::u16string_view text) {
    BreakMap map(text.size() + 1, false);
    if (iterator == nullptr) return map;
    UErrorCode status = U_ZERO_ERROR;
    UText* utext = utext_openUChars(nullptr, text.data(), static_cast<std::int64_t>(text.size()), &status);
    if (U_SUCCESS(status)) iterator->setText(utext, status);
    if (U_SUCCESS(status))
        for (int at = iterator->first(); at != icu::BreakIterator::DONE; at = iterator->next())
            map[static_cast<std::size_t>(at)] = true;
    // The iterator must not keep a pointer to text that the caller will free.
    UErrorCode cleared = U_ZERO_ERROR;
    UText* nothing = utext_openUChars(nullptr, u"", 0, &cleared);
    iterator->setText(nothing, cleared);
    utext_close(nothing);
    utext_close(utext);
    return map;
}

/// True for a virama that links consonants into one grapheme cluster. UAX #29, rule GB9c, property
/// Indic_Conjunct_Break (Unicode 15.1). Browsers have the rule, ICU 72 does not.
bool linksConsonants(char32_t character) {
    switch (character) {
        case 0x094D:  // Devanagari
        case 0x09CD:  // Bengali
        case 0x0ACD:  // Gujarati
        case 0x0B4D:  // Oriya
        case 0x0C4D:  // Telugu
        case 0x0D4D:  // Malayalam
            return true;
        default:
            return false;
    }
}

bool isLinkedConsonant(char32_t character) {
    const auto point = static_cast<UChar32>(character);
    if (u_getIntPropertyValue(point, UCHAR_INDIC_SYLLABIC_CATEGORY) != U_INSC_CONSONANT) return false;
    UErrorCode status = U_ZERO_ERROR;
    switch (uscript_getScript(point, &status)) {
        case USCRIPT_DEVANAGARI:
        case USCRIPT_BENGALI:
        case USCRIPT_GUJARATI:
        case USCRIPT_ORIYA:
        case USCRIPT_TELUGU:
        case USCRIPT_MALAYALAM:
            return true;
        default:
            return false;
    }
}

/// Removes from `map` the starts that GB9c joins to the grapheme cluster before: a consonant, marks with at
/// least one virama, a consonant.
void joinConjuncts(std::u16string_view text, BreakMap& map) {
    constexpr char32_t joiner = 0x200D;
    bool afterConsonant = false;
    bool linked = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char32_t character = text[i];  // these scripts are in the Basic Multilingual Plane
        if (isLinkedConsonant(character)) {
            if (linked) map[i] = false;
            afterConsonant = true;
            linked = false;
        } else if (afterConsonant && linksConsonants(character)) {
            linked = true;
        } else if (character != joiner && u_getCombiningClass(static_cast<UChar32>(character)) == 0) {
            afterConsonant = linked = false;
        }
    }
}

}  // namespace

BreakMap icuLineBreaks(std::u16string_view text, const std::string& language, LineStrictness strictness) {
    // Creating an iterator takes far longer than using one.
    thread_local std::map<std::pair<std::string, LineStrictness>, Iterator> made;
    Iterator& iterator = made[{language, strictness}];
    if (!iterator) {
        UErrorCode status = U_ZERO_ERROR;
        icu::Locale locale(language.c_str());
        locale.setKeywordValue("lb", strictness == LineStrictness::Strict ? "strict" : "normal", status);
        iterator.reset(icu::BreakIterator::createLineInstance(locale, status));
    }
    return boundaries(iterator.get(), text);
}

BreakMap icuGraphemes(std::u16string_view text) {
    thread_local Iterator iterator;
    UErrorCode status = U_ZERO_ERROR;
    if (!iterator)
        iterator.reset(icu::BreakIterator::createCharacterInstance(icu::Locale::getRoot(), status));
    BreakMap map = boundaries(iterator.get(), text);
    joinConjuncts(text, map);
    return map;
}

BreakMap icuWords(std::u16string_view text, const std::string& language) {
    thread_local std::map<std::string, Iterator> made;
    Iterator& iterator = made[language];
    UErrorCode status = U_ZERO_ERROR;
    if (!iterator)
        iterator.reset(icu::BreakIterator::createWordInstance(icu::Locale(language.c_str()), status));
    return boundaries(iterator.get(), text);
}

std::string scriptOf(char32_t character) {
    UErrorCode status = U_ZERO_ERROR;
    const UScriptCode script = uscript_getScript(static_cast<UChar32>(character), &status);
    const bool ofOne = U_SUCCESS(status) && script != USCRIPT_COMMON && script != USCRIPT_INHERITED &&
                       script != USCRIPT_UNKNOWN;
    if (!ofOne) return {};
    const std::string language(wording::languageInUse());
    if (language == "en") return uscript_getName(script);
    const std::string locale = std::string("und_") + uscript_getShortName(script);
    icu::UnicodeString name;
    icu::Locale(locale.c_str()).getDisplayScript(icu::Locale(language.c_str()), name);
    std::string out;
    return name.toUTF8String(out);
}

bool isHanOrKana(char32_t character) {
    UErrorCode status = U_ZERO_ERROR;
    const UScriptCode script = uscript_getScript(static_cast<UChar32>(character), &status);
    return U_SUCCESS(status) &&
           (script == USCRIPT_HAN || script == USCRIPT_HIRAGANA || script == USCRIPT_KATAKANA);
}

bool isCursive(hb_script_t script) {
    switch (script) {
        case HB_SCRIPT_ARABIC:
        case HB_SCRIPT_HANIFI_ROHINGYA:
        case HB_SCRIPT_MANDAIC:
        case HB_SCRIPT_MONGOLIAN:
        case HB_SCRIPT_NKO:
        case HB_SCRIPT_PHAGS_PA:
        case HB_SCRIPT_SYRIAC:
            return true;
        default:
            return false;
    }
}

bool mayBeCursive(char32_t character) {
    const auto point = static_cast<UChar32>(character);
    for (const UScriptCode script : {USCRIPT_ARABIC, USCRIPT_HANIFI_ROHINGYA, USCRIPT_MANDAEAN,
                                     USCRIPT_MONGOLIAN, USCRIPT_NKO, USCRIPT_PHAGS_PA, USCRIPT_SYRIAC})
        if (uscript_hasScript(point, script) != 0) return true;
    return false;
}

BreakMap capitalizedWords(std::u16string_view text, const std::string& language) {
    BreakMap words = icuWords(text, language);
    for (std::size_t i = 1; i < text.size(); ++i) {
        const bool digit = text[i] >= u'0' && text[i] <= u'9';
        words[i] = words[i] || ((text[i - 1] == u'.' || text[i - 1] == u'@') && !digit);
    }
    return words;
}

CaseEdits icuUppercase(std::u16string_view text, const std::string& language) {
    CaseEdits edits;
    std::u16string out(text.size() * 3 + 16, u'\0');
    icu::Edits told;
    UErrorCode status = U_ZERO_ERROR;
    icu::CaseMap::toUpper(language.c_str(), 0, text.data(), static_cast<int>(text.size()), out.data(),
                          static_cast<int>(out.size()), &told, status);
    if (U_FAILURE(status)) return edits;
    icu::Edits::Iterator change = told.getFineChangesIterator();
    while (change.next(status) && U_SUCCESS(status))
        edits.push_back({static_cast<std::uint32_t>(change.sourceIndex()),
                         static_cast<std::uint32_t>(change.oldLength()),
                         out.substr(static_cast<std::size_t>(change.destinationIndex()),
                                    static_cast<std::size_t>(change.newLength()))});
    return edits;
}

char32_t codePointAt(std::u16string_view text, std::size_t at) {
    UChar32 character = 0;
    U16_GET(text, 0, at, text.size(), character);
    return static_cast<char32_t>(character);
}

bool isHebrewLetter(char32_t character) {
    return u_getIntPropertyValue(static_cast<UChar32>(character), UCHAR_LINE_BREAK) == U_LB_HEBREW_LETTER;
}

bool isIdeographic(char32_t character) {
    const int width = u_getIntPropertyValue(static_cast<UChar32>(character), UCHAR_EAST_ASIAN_WIDTH);
    const bool wide = width == U_EA_WIDE || width == U_EA_FULLWIDTH || width == U_EA_HALFWIDTH;
    const UBlockCode block = ublock_getCode(static_cast<UChar32>(character));
    return wide && block != UBLOCK_HANGUL_SYLLABLES && block != UBLOCK_HANGUL_JAMO;
}

bool breaksByDictionary(std::u16string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        const char32_t character = codePointAt(text, at);
        const int breaks = u_getIntPropertyValue(static_cast<UChar32>(character), UCHAR_LINE_BREAK);
        if (breaks == U_LB_COMPLEX_CONTEXT) return true;
        at += unitsOf(character);
    }
    return false;
}

bool holdsEmoji(std::u16string_view text) {
    constexpr char32_t asEmoji = 0xFE0F;
    for (std::size_t at = 0; at < text.size();) {
        const char32_t character = codePointAt(text, at);
        if (character == asEmoji ||
            u_hasBinaryProperty(static_cast<UChar32>(character), UCHAR_EMOJI_PRESENTATION) != 0)
            return true;
        at += unitsOf(character);
    }
    return false;
}

std::set<char32_t> charactersShaped(std::u16string_view text) {
    std::set<char32_t> found;
    const auto add = [&found](const icu::UnicodeString& characters) {
        for (std::int32_t i = 0; i < characters.length(); i = characters.moveIndex32(i, 1))
            found.insert(static_cast<char32_t>(characters.char32At(i)));
    };
    const icu::UnicodeString own(text.data(), static_cast<std::int32_t>(text.size()));
    add(own);
    for (const auto& instance : {&icu::Normalizer2::getNFDInstance, &icu::Normalizer2::getNFCInstance}) {
        UErrorCode status = U_ZERO_ERROR;
        const icu::Normalizer2* normalizer = instance(status);
        if (U_SUCCESS(status)) add(normalizer->normalize(own, status));
    }
    for (const char32_t vowel : {U'\u0E33', U'\u0EB3'})
        if (found.contains(vowel)) found.insert({vowel - 1, vowel == U'\u0E33' ? U'\u0E4D' : U'\u0ECD'});
    // A no-break hyphen is drawn with a hyphen (HarfBuzz), both with a hyphen-minus (Firefox 153).
    if (found.contains(noBreakHyphen)) found.insert(plainHyphen);
    if (found.contains(plainHyphen)) found.insert(U'-');
    return found;
}

std::u16string toUtf16(std::string_view text) {
    const icu::UnicodeString converted =
        icu::UnicodeString::fromUTF8(icu::StringPiece(text.data(), static_cast<int>(text.size())));
    std::u16string out(converted.getBuffer(), static_cast<std::size_t>(converted.length()));
    for (char16_t& unit : out)
        if (unit == 0) unit = u'\uFFFD';
    return out;
}

std::string toUtf8(std::u16string_view text) {
    std::string out;
    icu::UnicodeString(false, text.data(), static_cast<int>(text.size())).toUTF8String(out);
    return out;
}

}  // namespace tenter::text
