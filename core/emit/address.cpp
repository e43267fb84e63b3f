#include "emit/address.h"

#include <algorithm>
#include <array>

#include "emit/escape.h"

namespace tenter::emit {

namespace {

bool isLetter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}
bool isSchemeCharacter(char c) {
    return isLetter(c) || (c >= '0' && c <= '9') || c == '+' || c == '-' || c == '.';
}

/// What stands before the first colon, in lower case, if it has the shape of a scheme.
std::optional<std::string> scheme(std::string_view address) {
    std::string name;
    bool started = false;
    for (const char c : address) {
        const auto byte = static_cast<unsigned char>(c);
        if (c == '\t' || c == '\n' || c == '\r' || (!started && byte <= 0x20)) continue;
        started = true;
        if (c == ':') return name.empty() ? std::nullopt : std::optional(name);
        if (!isSchemeCharacter(c) || (name.empty() && !isLetter(c))) return std::nullopt;
        name += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    }
    return std::nullopt;
}

}  // namespace

bool isSafeAddress(std::string_view address) {
    static constexpr std::array<std::string_view, 4> safe{"http", "https", "mailto", "tel"};
    const std::optional<std::string> name = scheme(address);
    return !name || std::ranges::find(safe, *name) != safe.end();
}

std::string pathAddress(std::string_view path) {
    static constexpr std::string_view plain = "-._~/!$'()*+,;=@";
    static constexpr char hex[] = "0123456789ABCDEF";
    std::string out;
    for (const char c : repaired(path)) {
        if (c == '\\') {
            out += '/';
        } else if (isLetter(c) || (c >= '0' && c <= '9') || plain.find(c) != std::string_view::npos) {
            out += c;
        } else {
            const auto byte = static_cast<unsigned char>(c);
            out += '%';
            out += hex[byte >> 4];
            out += hex[byte & 0xF];
        }
    }
    return out;
}

}  // namespace tenter::emit
