// Colours in other notations than sRGB, as sRGB.
#pragma once

#include <array>
#include <optional>
#include <string>

namespace tenter::start {

/// The red, green and blue of a colour and its alpha, each from 0 to 1; outside of that for colours that sRGB
/// does not have.
struct Srgb {
    std::array<double, 3> channels{};
    double alpha = 1;
};

/// The colour of `hwb()`, `lab()`, `lch()`, `oklab()`, `oklch()` or `color()` with its arguments in lower
/// case. Empty for another function or arguments that are not of its grammar. CSS Color 4 § 8 to § 10.
std::optional<Srgb> colourOfFunction(const std::string& function, const std::string& arguments);

/// The mix of two colours, `share` of it the second (0 to 1), with premultiplied alpha. `space`: srgb,
/// srgb-linear, hsl, hwb, lab, lch, oklab, oklch or an xyz space; polar spaces take the shorter arc of hue,
/// and hsl, hwb and lab are mixed in srgb, srgb and oklab. Empty for another space. CSS Color 5 § 2, CSS
/// Color 4 § 12.
std::optional<Srgb> mixed(const std::string& space, const Srgb& one, const Srgb& other, double share);

}  // namespace tenter::start
