// Another language for the length of a test.
#pragma once

#include <map>
#include <mutex>
#include <string>
#include <string_view>

#include "wording/language.h"

namespace tenter::test {

/// The language while it is alive; English afterwards.
class Speaking {
public:
    explicit Speaking(wording::Translate translate) { wording::useTranslation(translate); }
    explicit Speaking(std::string_view code) { wording::useLanguage(code); }
    ~Speaking() { wording::useTranslation(nullptr); }
    Speaking(const Speaking&) = delete;
    Speaking& operator=(const Speaking&) = delete;
};

/// Pseudo-translation: each letter of a text becomes its full-width form (U+FF21 and on), so that plain
/// letters in a sentence are those of values, or of text that nobody translates.
inline std::optional<std::string_view> fullWidth(std::string_view source, std::size_t /*count*/) {
    static std::mutex mutex;
    static std::map<std::string, std::string, std::less<>> made;
    const std::lock_guard lock(mutex);
    const auto known = made.find(source);
    if (known != made.end()) return known->second;
    std::string wide;
    for (std::size_t i = 0; i < source.size(); ++i) {
        const char c = source[i];
        const bool isLetter = (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
        const bool isCount = c == 'n' && i > 0 && source[i - 1] == '%';
        if (!isLetter || isCount)
            wide += c;
        else if (c <= 'Z')
            wide += std::string("\xEF\xBC") + static_cast<char>(0xA1 + (c - 'A'));
        else
            wide += std::string("\xEF\xBD") + static_cast<char>(0x81 + (c - 'a'));
    }
    return made.emplace(std::string(source), std::move(wide)).first->second;
}

}  // namespace tenter::test
