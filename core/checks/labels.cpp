#include "checks/labels.h"

#include <unicode/unistr.h>

#include "text/unicode.h"

namespace tenter::checks {

std::string plainLabel(std::string_view text) {
    const std::u16string wide = text::toUtf16(text);
    icu::UnicodeString folded(wide.data(), static_cast<std::int32_t>(wide.size()));
    folded.foldCase();
    std::u16string plain;
    for (std::int32_t i = 0; i < folded.length(); ++i) {
        const char16_t unit = folded.charAt(i);
        if (unit == u'\u00AD' || unit == u'\u200B' || unit == u'\u2060') continue;
        const bool blank = unit <= u' ' || unit == u'\u00A0' || unit == u'\u202F' || unit == u'\u3000' ||
                           (unit >= u'\u2000' && unit <= u'\u200A');
        if (!blank)
            plain += unit;
        else if (!plain.empty() && plain.back() != u' ')
            plain += u' ';
    }
    if (!plain.empty() && plain.back() == u' ') plain.pop_back();
    return text::toUtf8(plain);
}

std::string nameOf(const project::TextPart& part) {
    return part.name.empty() ? project::plainText(part.copy) : part.name;
}

}  // namespace tenter::checks
