#include "project/utf8.h"

#include <algorithm>

namespace tenter::project {

namespace {

std::uint8_t byteAt(std::string_view text, std::size_t at) {
    return static_cast<std::uint8_t>(text[at]);
}

// The length of the sequence that the lead byte starts; 0 for a byte that cannot start one.
std::size_t lengthOf(std::uint8_t lead) {
    if (lead < 0x80) return 1;
    if (lead >= 0xc2 && lead < 0xe0) return 2;
    if (lead >= 0xe0 && lead < 0xf0) return 3;
    if (lead >= 0xf0 && lead < 0xf5) return 4;
    return 0;
}

bool isScalarOfLength(char32_t character, std::size_t length) {
    if (length == 3) return character >= 0x800 && (character < 0xd800 || character > 0xdfff);
    if (length == 4) return character >= 0x10000 && character <= 0x10ffff;
    return true;
}

bool isHidden(char32_t c) {
    const bool control = c < 0x20 || (c >= 0x7f && c < 0xa0);
    const bool separator = c == 0x2028 || c == 0x2029;
    const bool direction =
        c == 0x200e || c == 0x200f || (c >= 0x202a && c <= 0x202e) || (c >= 0x2066 && c <= 0x2069);
    return control || separator || direction;
}

std::string hexadecimal(char32_t value, int digits) {
    std::string text;
    for (int i = digits - 1; i >= 0; --i)
        text += "0123456789abcdef"[(value >> (4 * i)) & 15U];
    return text;
}

}  // namespace

Decoded decode(std::string_view text, std::size_t at) {
    const std::uint8_t lead = byteAt(text, at);
    const std::size_t length = lengthOf(lead);
    if (length == 1) return {lead, 1, true};
    const Decoded bad{lead, 1, false};
    if (length == 0 || at + length > text.size()) return bad;
    char32_t character = lead & (0x7fU >> length);
    for (std::size_t i = 1; i < length; ++i) {
        const std::uint8_t next = byteAt(text, at + i);
        if ((next & 0xc0U) != 0x80U) return bad;
        character = character << 6U | (next & 0x3fU);
    }
    return isScalarOfLength(character, length) ? Decoded{character, length, true} : bad;
}

std::optional<std::size_t> firstBadByte(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        const Decoded decoded = decode(text, at);
        if (!decoded.valid) return at;
        at += decoded.length;
    }
    return std::nullopt;
}

std::size_t characterCount(std::string_view text) {
    // Every byte but those that continue a character.
    return static_cast<std::size_t>(std::ranges::count_if(
        text, [](char byte) { return (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U; }));
}

std::string lineAndColumn(std::string_view text, std::size_t at) {
    const std::string_view before = text.substr(0, at);
    const auto line = std::count(before.begin(), before.end(), '\n') + 1;
    const std::size_t feed = before.rfind('\n');
    std::size_t column = 1;
    for (std::size_t i = feed == std::string_view::npos ? 0 : feed + 1; i < before.size(); ++column) {
        i += decode(before, i).length;
    }
    return std::to_string(line) + ":" + std::to_string(column);
}

std::string visible(std::string_view text) {
    std::string result;
    for (std::size_t at = 0; at < text.size();) {
        const Decoded decoded = decode(text, at);
        if (!decoded.valid) {
            result += "\\x" + hexadecimal(decoded.character, 2);
        } else if (decoded.character == U'\n') {
            result += "\\n";
        } else if (decoded.character == U'\t') {
            result += "\\t";
        } else if (isHidden(decoded.character)) {
            result += "\\u" + hexadecimal(decoded.character, 4);
        } else {
            result += text.substr(at, decoded.length);
        }
        at += decoded.length;
    }
    return result;
}

}  // namespace tenter::project
