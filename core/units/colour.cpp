#include "units/colour.h"

#include <array>
#include <charconv>

namespace tenter::units {

namespace {

std::optional<std::uint8_t> digit(char c) {
    std::uint8_t value = 0;
    const auto [stop, error] = std::from_chars(&c, &c + 1, value, 16);
    if (error != std::errc()) return std::nullopt;
    return value;
}

bool isDoubled(std::uint8_t channel) {
    return channel % 17 == 0;
}

}  // namespace

std::optional<Colour> Colour::parse(std::string_view text) {
    if (text == "transparent") return Colour{0, 0, 0, 0};
    if (!text.starts_with('#')) return std::nullopt;
    const std::string_view digits = text.substr(1);
    const bool isShort = digits.size() == 3 || digits.size() == 4;
    if (!isShort && digits.size() != 6 && digits.size() != 8) return std::nullopt;

    std::array<std::uint8_t, 4> channels{0, 0, 0, 255};
    for (std::size_t i = 0; i < digits.size(); ++i) {
        const std::optional<std::uint8_t> value = digit(digits[i]);
        if (!value) return std::nullopt;
        if (isShort) {
            channels[i] = static_cast<std::uint8_t>(*value * 17);
        } else if (i % 2 == 0) {
            channels[i / 2] = static_cast<std::uint8_t>(*value * 16);
        } else {
            channels[i / 2] = static_cast<std::uint8_t>(channels[i / 2] + *value);
        }
    }
    if (channels[3] == 0) return Colour{0, 0, 0, 0};
    return Colour{channels[0], channels[1], channels[2], channels[3]};
}

std::string Colour::css() const {
    if (isTransparent()) return "transparent";
    constexpr std::string_view hex = "0123456789abcdef";
    const bool isShort = isDoubled(red) && isDoubled(green) && isDoubled(blue) && isDoubled(alpha);
    std::string text = "#";
    for (const std::uint8_t channel : {red, green, blue, alpha}) {
        text += hex[channel >> 4U];
        if (!isShort) text += hex[channel & 15U];
    }
    if (alpha == 255) text.resize(isShort ? 4 : 7);
    return text;
}

}  // namespace tenter::units
