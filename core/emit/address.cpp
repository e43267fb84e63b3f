#include "emit/address.h"

#include "emit/escape.h"

namespace tenter::emit {

namespace {

bool isLetter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

}  // namespace

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
