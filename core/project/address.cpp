#include "project/address.h"
#include "units/ascii.h"

#include <algorithm>
#include <array>

namespace tenter::project {

namespace {

bool isSchemeCharacter(char c) {
    return units::isLetter(c) || units::isDigit(c) || c == '+' || c == '-' || c == '.';
}

}  // namespace

std::optional<std::string> addressScheme(std::string_view address) {
    std::string name;
    bool started = false;
    for (const char c : address) {
        const auto byte = static_cast<unsigned char>(c);
        if (c == '\t' || c == '\n' || c == '\r' || (!started && byte <= 0x20)) continue;
        started = true;
        if (c == ':') return name.empty() ? std::nullopt : std::optional(name);
        if (!isSchemeCharacter(c) || (name.empty() && !units::isLetter(c))) return std::nullopt;
        name += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    }
    return std::nullopt;
}

bool isSafeAddress(std::string_view address) {
    static constexpr std::array<std::string_view, 4> safe{"http", "https", "mailto", "tel"};
    const std::optional<std::string> name = addressScheme(address);
    return !name || std::ranges::find(safe, *name) != safe.end();
}

}  // namespace tenter::project
