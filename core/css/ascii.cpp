#include "css/ascii.h"

#include <algorithm>
#include <cstdint>

namespace tenter::css {

namespace {

std::uint8_t byteOf(std::string_view text, std::size_t at) {
    return static_cast<std::uint8_t>(text[at]);
}

bool isContinuation(std::string_view text, std::size_t at) {
    return at < text.size() && (byteOf(text, at) & 0xc0U) == 0x80U;
}

// True if the second byte is valid after the lead byte: no overlong form, no surrogate, at most U+10FFFF.
bool mayFollow(std::uint8_t lead, std::uint8_t second) {
    switch (lead) {
        case 0xe0:
            return second >= 0xa0;
        case 0xed:
            return second < 0xa0;
        case 0xf0:
            return second >= 0x90;
        case 0xf4:
            return second < 0x90;
        default:
            return true;
    }
}

}  // namespace

bool sameIgnoringCase(std::string_view one, std::string_view other) {
    return std::ranges::equal(one, other, [](char a, char b) { return lowered(a) == lowered(b); });
}

std::string_view trimmed(std::string_view text) {
    while (!text.empty() && isSpace(text.front()))
        text.remove_prefix(1);
    while (!text.empty() && isSpace(text.back()))
        text.remove_suffix(1);
    return text;
}

std::size_t characterLength(std::string_view text, std::size_t at) {
    const std::uint8_t lead = byteOf(text, at);
    if (lead < 0x80) return 1;
    if (lead < 0xc2 || lead > 0xf4 || !isContinuation(text, at + 1)) return 0;
    if (!mayFollow(lead, byteOf(text, at + 1))) return 0;
    if (lead < 0xe0) return 2;
    if (!isContinuation(text, at + 2)) return 0;
    if (lead < 0xf0) return 3;
    return isContinuation(text, at + 3) ? 4 : 0;
}

}  // namespace tenter::css
