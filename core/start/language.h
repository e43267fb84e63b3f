// The language of a new row: guessed from its script; its direction and its fonts.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "start/pasted_text.h"

namespace tenter::start {

/// The main language of the script that most letters of `text` have: `ar` for Arabic, `en` for Latin and for
/// a text without letters. ISO 639-1.
std::string languageOfScript(std::string_view text);
/// The language that the HTML states if its script is that of most letters, else that of this script.
std::string languageOf(const PastedText& text);

/// True if text of the language runs from right to left. CLDR, likely subtags.
bool runsRightToLeft(const std::string& language);

/// How the text of a script is set: families with its letters, and figures that its letters need.
struct ScriptSetting {
    std::string serif, sans;     ///< families of the packages that Tenter needs; empty: none
    bool comesFirst = false;     ///< the families stand before those of the look, which lack the letters
    double leastLineHeight = 0;  ///< as a factor of the size
    double enlargement = 1;      ///< of sizes, for small letters
    bool isCursive = false;      ///< letters join: letter spacing would tear them
};
/// The setting for the language's script. Common practice, no source.
ScriptSetting scriptSettingOf(const std::string& language);

/// Languages to choose from: their tags, and their names in English. Sorted by name.
struct LanguageName {
    std::string tag, name;
};
const std::vector<LanguageName>& commonLanguages();

}  // namespace tenter::start
