#include "start/language.h"

#include <unicode/uchar.h>
#include <unicode/uloc.h>
#include <unicode/uscript.h>

#include <algorithm>
#include <array>
#include <map>

#include "project/utf8.h"

namespace tenter::start {

namespace {

/// The script in which a language is usually written. CLDR, likely subtags.
std::string scriptCodeOf(const std::string& language) {
    std::array<char, ULOC_FULLNAME_CAPACITY> locale{};
    std::array<char, ULOC_FULLNAME_CAPACITY> full{};
    std::array<char, ULOC_SCRIPT_CAPACITY> script{};
    UErrorCode error = U_ZERO_ERROR;
    uloc_forLanguageTag(language.c_str(), locale.data(), static_cast<int32_t>(locale.size()), nullptr,
                        &error);
    uloc_addLikelySubtags(locale.data(), full.data(), static_cast<int32_t>(full.size()), &error);
    uloc_getScript(full.data(), script.data(), static_cast<int32_t>(script.size()), &error);
    return U_SUCCESS(error) && script[0] != 0 ? std::string(script.data()) : std::string("Latn");
}

/// The script of most letters; empty if there are none.
std::string scriptOfText(std::string_view text) {
    std::map<UScriptCode, std::size_t> counts;
    for (std::size_t at = 0; at < text.size();) {
        const project::Decoded one = project::decode(text, at);
        at += one.length;
        UErrorCode error = U_ZERO_ERROR;
        const auto character = static_cast<UChar32>(one.character);
        if (!one.valid || u_isalpha(character) == 0) continue;
        const UScriptCode script = uscript_getScript(character, &error);
        if (U_SUCCESS(error) && script > USCRIPT_INHERITED) ++counts[script];
    }
    if (counts.empty()) return {};
    // Japanese is written in three scripts; Han alone is Chinese.
    for (const UScriptCode kana : {USCRIPT_HIRAGANA, USCRIPT_KATAKANA})
        if (counts.contains(kana)) return "Jpan";
    const auto most = std::ranges::max_element(
        counts, {}, [](const std::pair<const UScriptCode, std::size_t>& one) { return one.second; });
    return uscript_getShortName(most->first);
}

std::string languageOfCode(const std::string& script) {
    static const std::map<std::string, std::string> languages{
        {"Arab", "ar"}, {"Hebr", "he"}, {"Thai", "th"}, {"Deva", "hi"}, {"Grek", "el"}, {"Cyrl", "ru"},
        {"Hang", "ko"}, {"Jpan", "ja"}, {"Hani", "zh"}, {"Beng", "bn"}, {"Taml", "ta"}, {"Armn", "hy"},
        {"Geor", "ka"}, {"Ethi", "am"}, {"Khmr", "km"}, {"Laoo", "lo"}, {"Mymr", "my"}};
    const auto at = languages.find(script);
    return at == languages.end() ? "en" : at->second;
}

/// Scripts that are written with the same letters count as one.
std::string letterGroup(const std::string& script) {
    if (script == "Hans" || script == "Hant") return "Hani";
    return script == "Kore" ? "Hang" : script;
}

}  // namespace

std::string languageOfScript(std::string_view text) {
    return languageOfCode(scriptOfText(text));
}

std::string languageOf(const PastedText& text) {
    std::string all;
    for (const PastedCard& card : text.cards)
        for (const project::TextPart& part : card.parts)
            all += project::plainText(part.copy) + '\n';
    const std::string script = scriptOfText(all);
    if (!text.language.empty() &&
        (script.empty() || letterGroup(scriptCodeOf(text.language)) == letterGroup(script)))
        return text.language;
    return languageOfCode(script);
}

bool runsRightToLeft(const std::string& language) {
    return uloc_isRightToLeft(
               scriptCodeOf(language) == "Latn" ? "en" : ("und_" + scriptCodeOf(language)).c_str()) != 0;
}

ScriptSetting scriptSettingOf(const std::string& language) {
    static const std::map<std::string, ScriptSetting> settings{
        {"Arab", {"Noto Naskh Arabic", "Noto Sans Arabic", true, 1.7, 1.06, true}},
        {"Hebr", {"Noto Serif Hebrew", "Noto Sans Hebrew", true, 1.4, 1.03, false}},
        {"Thai", {"Noto Serif Thai", "Noto Sans Thai", true, 1.55, 1.03, false}},
        {"Deva", {"Noto Serif Devanagari", "Noto Sans Devanagari", true, 1.55, 1.03, false}},
        {"Beng", {"Noto Serif Bengali", "Noto Sans Bengali", true, 1.55, 1.03, false}},
        {"Taml", {"Noto Serif Tamil", "Noto Sans Tamil", true, 1.55, 1, false}},
        {"Armn", {"Noto Serif Armenian", "Noto Sans Armenian", true, 1.3, 1, false}},
        {"Geor", {"Noto Serif Georgian", "Noto Sans Georgian", true, 1.3, 1, false}},
        {"Ethi", {"Noto Serif Ethiopic", "Noto Sans Ethiopic", true, 1.5, 1, false}},
        {"Grek", {"Noto Serif", "Noto Sans", false, 1.2, 1, false}},
        {"Cyrl", {"Noto Serif", "Noto Sans", false, 1.2, 1, false}}};
    const auto at = settings.find(scriptCodeOf(language));
    return at == settings.end() ? ScriptSetting{} : at->second;
}

const std::vector<LanguageName>& commonLanguages() {
    static const std::vector<LanguageName> languages{
        {"ar", "Arabic"},     {"bn", "Bengali"},   {"zh", "Chinese"}, {"cs", "Czech"},
        {"da", "Danish"},     {"nl", "Dutch"},     {"en", "English"}, {"fi", "Finnish"},
        {"fr", "French"},     {"de", "German"},    {"el", "Greek"},   {"he", "Hebrew"},
        {"hi", "Hindi"},      {"hu", "Hungarian"}, {"it", "Italian"}, {"ja", "Japanese"},
        {"ko", "Korean"},     {"nb", "Norwegian"}, {"fa", "Persian"}, {"pl", "Polish"},
        {"pt", "Portuguese"}, {"ro", "Romanian"},  {"ru", "Russian"}, {"es", "Spanish"},
        {"sv", "Swedish"},    {"th", "Thai"},      {"tr", "Turkish"}, {"uk", "Ukrainian"},
        {"ur", "Urdu"},       {"vi", "Vietnamese"}};
    return languages;
}

}  // namespace tenter::start
