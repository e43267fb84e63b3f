// The script of each character of a text, for shaping.
#pragma once

#include <hb.h>

#include <string>
#include <string_view>
#include <vector>

namespace tenter::text {

/// The script of each code unit of `text`. A character of no script of its own has the script of the text
/// before it, at the start that of the first character that has one. A closing bracket has the script of its
/// opening bracket. `HB_SCRIPT_COMMON` if no character has a script. UAX #24 § 5.1 and 5.2.
std::vector<hb_script_t> scriptsOf(std::u16string_view text);

/// The script in which `language`, such as `ar`, is usually written, the first if it has several;
/// `HB_SCRIPT_COMMON` for an unknown language.
hb_script_t scriptOfLanguage(const std::string& language);

}  // namespace tenter::text
