#include "wording/language.h"

#include <array>
#include <unordered_map>

#include "wording/catalogue.h"
#include "wording/translation.h"

namespace tenter::wording {

namespace {

Translate current = nullptr;
std::string_view currentCode = "en";
thread_local bool inEnglish = false;

std::optional<std::string_view> inGerman(std::string_view source, std::size_t count) {
    static const std::unordered_map<std::string_view, const Entry*> entries = [] {
        std::unordered_map<std::string_view, const Entry*> made;
        for (const Entry& entry : germanCatalogue())
            made.emplace(entry.source, &entry);
        return made;
    }();
    const auto found = entries.find(source);
    if (found == entries.end()) return std::nullopt;
    const Entry& entry = *found->second;
    return count == 1 || entry.many.empty() ? entry.one : entry.many;
}

constexpr std::array<std::string_view, 1> codes{"de"};

}  // namespace

void useTranslation(Translate translate) {
    current = translate;
    currentCode = "en";
}

std::span<const std::string_view> languages() {
    return codes;
}

bool useLanguage(std::string_view code) {
    if (code != "de" && code != "en") return false;
    currentCode = code == "de" ? "de" : "en";
    current = code == "de" ? inGerman : nullptr;
    return true;
}

std::string_view languageInUse() {
    return inEnglish ? "en" : currentCode;
}

bool isTranslating() {
    return current != nullptr && !inEnglish;
}

std::optional<std::string_view> translated(std::string_view source, std::size_t count) {
    return isTranslating() ? current(source, count) : std::nullopt;
}

InEnglish::InEnglish() : before_(inEnglish) {
    inEnglish = true;
}

InEnglish::~InEnglish() {
    inEnglish = before_;
}

}  // namespace tenter::wording
