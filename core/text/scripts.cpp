#include "text/scripts.h"

#include <unicode/uchar.h>
#include <unicode/uscript.h>

#include <algorithm>
#include <array>

#include "text/unicode.h"

namespace tenter::text {
namespace {

struct OpenBracket {
    UChar32 closing;
    hb_script_t script;
};

bool isCommon(hb_script_t script) {
    return script == HB_SCRIPT_COMMON || script == HB_SCRIPT_INHERITED;
}

}  // namespace

std::vector<hb_script_t> scriptsOf(std::u16string_view text) {
    std::vector<hb_script_t> scripts(text.size(), HB_SCRIPT_COMMON);
    hb_unicode_funcs_t* unicode = hb_unicode_funcs_get_default();
    hb_script_t current = HB_SCRIPT_COMMON;
    std::vector<OpenBracket> open;
    for (std::size_t i = 0; i < text.size();) {
        const char32_t character = codePointAt(text, i);
        const auto asIcu = static_cast<UChar32>(character);
        const hb_script_t script = hb_unicode_script(unicode, character);
        if (!isCommon(script)) {
            if (current == HB_SCRIPT_COMMON) {
                std::fill(scripts.begin(), scripts.begin() + static_cast<long>(i), script);
                for (OpenBracket& bracket : open)
                    bracket.script = script;
            }
            current = script;
        }
        const int bracket = u_getIntPropertyValue(asIcu, UCHAR_BIDI_PAIRED_BRACKET_TYPE);
        if (bracket == U_BPT_OPEN) {
            open.push_back({u_getBidiPairedBracket(asIcu), current});
        } else if (bracket == U_BPT_CLOSE) {
            const auto matching = std::find_if(open.rbegin(), open.rend(),
                                               [&](const OpenBracket& one) { return one.closing == asIcu; });
            if (matching != open.rend()) {
                current = matching->script;
                open.erase(std::prev(matching.base()), open.end());
            }
        }
        for (std::size_t unit = 0; unit < unitsOf(character); ++unit)
            scripts[i + unit] = current;
        i += unitsOf(character);
    }
    return scripts;
}

hb_script_t scriptOfLanguage(const std::string& language) {
    std::array<UScriptCode, 8> codes{};
    UErrorCode status = U_ZERO_ERROR;
    const int count =
        uscript_getCode(language.c_str(), codes.data(), static_cast<int>(codes.size()), &status);
    if (U_FAILURE(status) || count < 1) return HB_SCRIPT_COMMON;
    return hb_script_from_string(uscript_getShortName(codes.front()), -1);
}

}  // namespace tenter::text
