#include "start/page_colours.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>
#include <utility>

#include "css/longhands.h"
#include "start/colour_spaces.h"
#include "units/scan.h"

namespace tenter::start {

namespace {

using units::Colour;

/// CSS Color 4 § 6.1.
constexpr std::array<std::pair<std::string_view, std::uint32_t>, 148> names{{
    {"aliceblue", 0xf0f8ff},
    {"antiquewhite", 0xfaebd7},
    {"aqua", 0x00ffff},
    {"aquamarine", 0x7fffd4},
    {"azure", 0xf0ffff},
    {"beige", 0xf5f5dc},
    {"bisque", 0xffe4c4},
    {"black", 0x000000},
    {"blanchedalmond", 0xffebcd},
    {"blue", 0x0000ff},
    {"blueviolet", 0x8a2be2},
    {"brown", 0xa52a2a},
    {"burlywood", 0xdeb887},
    {"cadetblue", 0x5f9ea0},
    {"chartreuse", 0x7fff00},
    {"chocolate", 0xd2691e},
    {"coral", 0xff7f50},
    {"cornflowerblue", 0x6495ed},
    {"cornsilk", 0xfff8dc},
    {"crimson", 0xdc143c},
    {"cyan", 0x00ffff},
    {"darkblue", 0x00008b},
    {"darkcyan", 0x008b8b},
    {"darkgoldenrod", 0xb8860b},
    {"darkgray", 0xa9a9a9},
    {"darkgreen", 0x006400},
    {"darkgrey", 0xa9a9a9},
    {"darkkhaki", 0xbdb76b},
    {"darkmagenta", 0x8b008b},
    {"darkolivegreen", 0x556b2f},
    {"darkorange", 0xff8c00},
    {"darkorchid", 0x9932cc},
    {"darkred", 0x8b0000},
    {"darksalmon", 0xe9967a},
    {"darkseagreen", 0x8fbc8f},
    {"darkslateblue", 0x483d8b},
    {"darkslategray", 0x2f4f4f},
    {"darkslategrey", 0x2f4f4f},
    {"darkturquoise", 0x00ced1},
    {"darkviolet", 0x9400d3},
    {"deeppink", 0xff1493},
    {"deepskyblue", 0x00bfff},
    {"dimgray", 0x696969},
    {"dimgrey", 0x696969},
    {"dodgerblue", 0x1e90ff},
    {"firebrick", 0xb22222},
    {"floralwhite", 0xfffaf0},
    {"forestgreen", 0x228b22},
    {"fuchsia", 0xff00ff},
    {"gainsboro", 0xdcdcdc},
    {"ghostwhite", 0xf8f8ff},
    {"gold", 0xffd700},
    {"goldenrod", 0xdaa520},
    {"gray", 0x808080},
    {"green", 0x008000},
    {"greenyellow", 0xadff2f},
    {"grey", 0x808080},
    {"honeydew", 0xf0fff0},
    {"hotpink", 0xff69b4},
    {"indianred", 0xcd5c5c},
    {"indigo", 0x4b0082},
    {"ivory", 0xfffff0},
    {"khaki", 0xf0e68c},
    {"lavender", 0xe6e6fa},
    {"lavenderblush", 0xfff0f5},
    {"lawngreen", 0x7cfc00},
    {"lemonchiffon", 0xfffacd},
    {"lightblue", 0xadd8e6},
    {"lightcoral", 0xf08080},
    {"lightcyan", 0xe0ffff},
    {"lightgoldenrodyellow", 0xfafad2},
    {"lightgray", 0xd3d3d3},
    {"lightgreen", 0x90ee90},
    {"lightgrey", 0xd3d3d3},
    {"lightpink", 0xffb6c1},
    {"lightsalmon", 0xffa07a},
    {"lightseagreen", 0x20b2aa},
    {"lightskyblue", 0x87cefa},
    {"lightslategray", 0x778899},
    {"lightslategrey", 0x778899},
    {"lightsteelblue", 0xb0c4de},
    {"lightyellow", 0xffffe0},
    {"lime", 0x00ff00},
    {"limegreen", 0x32cd32},
    {"linen", 0xfaf0e6},
    {"magenta", 0xff00ff},
    {"maroon", 0x800000},
    {"mediumaquamarine", 0x66cdaa},
    {"mediumblue", 0x0000cd},
    {"mediumorchid", 0xba55d3},
    {"mediumpurple", 0x9370db},
    {"mediumseagreen", 0x3cb371},
    {"mediumslateblue", 0x7b68ee},
    {"mediumspringgreen", 0x00fa9a},
    {"mediumturquoise", 0x48d1cc},
    {"mediumvioletred", 0xc71585},
    {"midnightblue", 0x191970},
    {"mintcream", 0xf5fffa},
    {"mistyrose", 0xffe4e1},
    {"moccasin", 0xffe4b5},
    {"navajowhite", 0xffdead},
    {"navy", 0x000080},
    {"oldlace", 0xfdf5e6},
    {"olive", 0x808000},
    {"olivedrab", 0x6b8e23},
    {"orange", 0xffa500},
    {"orangered", 0xff4500},
    {"orchid", 0xda70d6},
    {"palegoldenrod", 0xeee8aa},
    {"palegreen", 0x98fb98},
    {"paleturquoise", 0xafeeee},
    {"palevioletred", 0xdb7093},
    {"papayawhip", 0xffefd5},
    {"peachpuff", 0xffdab9},
    {"peru", 0xcd853f},
    {"pink", 0xffc0cb},
    {"plum", 0xdda0dd},
    {"powderblue", 0xb0e0e6},
    {"purple", 0x800080},
    {"rebeccapurple", 0x663399},
    {"red", 0xff0000},
    {"rosybrown", 0xbc8f8f},
    {"royalblue", 0x4169e1},
    {"saddlebrown", 0x8b4513},
    {"salmon", 0xfa8072},
    {"sandybrown", 0xf4a460},
    {"seagreen", 0x2e8b57},
    {"seashell", 0xfff5ee},
    {"sienna", 0xa0522d},
    {"silver", 0xc0c0c0},
    {"skyblue", 0x87ceeb},
    {"slateblue", 0x6a5acd},
    {"slategray", 0x708090},
    {"slategrey", 0x708090},
    {"snow", 0xfffafa},
    {"springgreen", 0x00ff7f},
    {"steelblue", 0x4682b4},
    {"tan", 0xd2b48c},
    {"teal", 0x008080},
    {"thistle", 0xd8bfd8},
    {"tomato", 0xff6347},
    {"turquoise", 0x40e0d0},
    {"violet", 0xee82ee},
    {"wheat", 0xf5deb3},
    {"white", 0xffffff},
    {"whitesmoke", 0xf5f5f5},
    {"yellow", 0xffff00},
    {"yellowgreen", 0x9acd32},
}};

/// A component of a colour function and its unit: `50%`, `120deg`, `0.4`.
struct Component {
    double value = 0;
    std::string unit;
};

std::uint8_t byteOf(double share) {
    return static_cast<std::uint8_t>(std::lround(std::clamp(share, 0.0, 1.0) * 255));
}

/// The three or four components between the brackets; empty if there are others.
std::vector<Component> componentsOf(std::string text) {
    const std::size_t open = text.find('(');
    if (open == std::string::npos || !text.ends_with(")")) return {};
    text = text.substr(open + 1, text.size() - open - 2);
    for (char& c : text)
        if (c == ',' || c == '/') c = ' ';
    std::vector<Component> components;
    for (const std::string& word : css::valueParts(text)) {
        const auto number = word == "none" ? std::optional(units::Scanned{0, {}}) : units::scanNumber(word);
        if (!number) return {};
        components.push_back({number->value, std::string(number->rest)});
    }
    return components.size() == 3 || components.size() == 4 ? components : std::vector<Component>{};
}

double alphaOf(const std::vector<Component>& components) {
    if (components.size() < 4) return 1;
    return components[3].unit == "%" ? components[3].value / 100 : components[3].value;
}

std::optional<Colour> rgbIn(const std::vector<Component>& components) {
    const auto share = [](const Component& one) {
        return one.unit == "%" ? one.value / 100 : one.value / 255;
    };
    return Colour{byteOf(share(components[0])), byteOf(share(components[1])), byteOf(share(components[2])),
                  byteOf(alphaOf(components))};
}

/// CSS Color 4 § 7.1.
std::optional<Colour> hslIn(const std::vector<Component>& components) {
    double hue = components[0].value;
    if (components[0].unit == "turn") hue *= 360;
    if (components[0].unit == "rad") hue *= 180 / std::acos(-1.0);
    if (components[0].unit == "grad") hue *= 0.9;
    const double saturation = std::clamp(components[1].value / 100, 0.0, 1.0);
    const double lightness = std::clamp(components[2].value / 100, 0.0, 1.0);
    const double reach = saturation * std::min(lightness, 1 - lightness);
    const auto channel = [&](double offset) {
        const double turned = std::fmod(offset + hue / 30, 12);
        const double at = turned < 0 ? turned + 12 : turned;
        return byteOf(lightness - reach * std::max(-1.0, std::min({at - 3, 9 - at, 1.0})));
    };
    return Colour{channel(0), channel(8), channel(4), byteOf(alphaOf(components))};
}

Colour rounded(const Srgb& colour) {
    return {byteOf(colour.channels[0]), byteOf(colour.channels[1]), byteOf(colour.channels[2]),
            byteOf(colour.alpha)};
}

/// A colour of a mix and its percentage.
struct Mixed {
    Colour colour;
    std::optional<double> percent;
};

std::optional<Mixed> mixedIn(const std::string& argument) {
    Mixed found;
    bool hasColour = false;
    for (const std::string& word : css::valueParts(argument)) {
        if (const auto number = units::scanNumber(word); number && number->rest == "%") {
            found.percent = number->value;
        } else if (const auto colour = colourIn(word); colour && !hasColour) {
            found.colour = *colour;
            hasColour = true;
        } else {
            return std::nullopt;
        }
    }
    return hasColour ? std::optional(found) : std::nullopt;
}

/// CSS Color 5 § 2.
std::optional<Colour> colourMixIn(const std::string& text) {
    const std::vector<std::string> arguments = css::listItems(text);
    if (arguments.size() != 3) return std::nullopt;
    const std::vector<std::string> method = css::valueParts(arguments[0]);
    const auto one = mixedIn(arguments[1]);
    const auto other = mixedIn(arguments[2]);
    if (method.size() < 2 || method[0] != "in" || !one || !other) return std::nullopt;
    const double first = one->percent.value_or(other->percent ? 100 - *other->percent : 50);
    const double second = other->percent.value_or(100 - first);
    if (first + second <= 0) return std::nullopt;
    const auto srgbOf = [](const Colour& colour) {
        return Srgb{{colour.red / 255.0, colour.green / 255.0, colour.blue / 255.0}, colour.alpha / 255.0};
    };
    auto mix = mixed(method[1], srgbOf(one->colour), srgbOf(other->colour), second / (first + second));
    if (!mix) return std::nullopt;
    mix->alpha *= std::min(1.0, (first + second) / 100);
    return rounded(*mix);
}

}  // namespace

std::optional<Colour> colourIn(const std::string& text) {
    if (const auto colour = Colour::parse(text)) return colour;
    const auto* const named =
        std::ranges::find(names, text, &std::pair<std::string_view, std::uint32_t>::first);
    if (named != names.end())
        return Colour{static_cast<std::uint8_t>(named->second >> 16U),
                      static_cast<std::uint8_t>(named->second >> 8U & 0xffU),
                      static_cast<std::uint8_t>(named->second & 0xffU), 255};
    const bool isRgb = text.starts_with("rgb(") || text.starts_with("rgba(");
    if (!isRgb && !text.starts_with("hsl(") && !text.starts_with("hsla(")) {
        // CSS Color 4 § 6.2, in a light scheme.
        if (text == "canvas") return Colour{255, 255, 255, 255};
        if (text == "canvastext") return Colour{0, 0, 0, 255};
        const std::size_t open = text.find('(');
        if (open == std::string::npos || !text.ends_with(")")) return std::nullopt;
        const std::string inside = text.substr(open + 1, text.size() - open - 2);
        if (text.starts_with("color-mix(")) return colourMixIn(inside);
        const auto colour = colourOfFunction(text.substr(0, open), inside);
        return colour ? std::optional(rounded(*colour)) : std::nullopt;
    }
    const std::vector<Component> components = componentsOf(text);
    if (components.empty()) return std::nullopt;
    return isRgb ? rgbIn(components) : hslIn(components);
}

std::optional<Colour> colourAmong(const std::string& text) {
    for (const std::string& part : css::valueParts(text))
        if (const auto found = colourIn(part)) return found;
    return std::nullopt;
}

}  // namespace tenter::start
