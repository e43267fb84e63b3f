// sRGB colours.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace tenter::units {

/// An sRGB colour, 8 bits a channel, with alpha. CSS Color 4 § 5.2 (hexadecimal notation).
struct Colour {
    std::uint8_t red = 0;
    std::uint8_t green = 0;
    std::uint8_t blue = 0;
    std::uint8_t alpha = 255;

    /// The colour written as `#rgb`, `#rgba`, `#rrggbb`, `#rrggbbaa` or `transparent`; empty for other text.
    static std::optional<Colour> parse(std::string_view text);
    [[nodiscard]] bool isTransparent() const { return alpha == 0; }
    /// The shortest hexadecimal form in lower case; `transparent` for alpha 0.
    [[nodiscard]] std::string css() const;
    friend bool operator==(const Colour&, const Colour&) = default;
};

}  // namespace tenter::units
