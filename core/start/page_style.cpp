#include "start/page_style.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <cstdlib>
#include <locale>
#include <sstream>
#include <utility>

#include "css/rules.h"
#include "markup/theme_cascade.h"

namespace tenter::start {

namespace {

using markup::NodeId;
using markup::noNode;
using project::Length;
using units::Colour;
using units::Unit;

/// CSS Color 4 § 6.1: the basic names, as HTML 4 had them.
constexpr std::array<std::pair<std::string_view, std::string_view>, 17> basicColours{{{"black", "#000"},
                                                                                      {"silver", "#c0c0c0"},
                                                                                      {"gray", "#808080"},
                                                                                      {"grey", "#808080"},
                                                                                      {"white", "#fff"},
                                                                                      {"maroon", "#800000"},
                                                                                      {"red", "#f00"},
                                                                                      {"purple", "#800080"},
                                                                                      {"fuchsia", "#f0f"},
                                                                                      {"green", "#008000"},
                                                                                      {"lime", "#0f0"},
                                                                                      {"olive", "#808000"},
                                                                                      {"yellow", "#ff0"},
                                                                                      {"navy", "#000080"},
                                                                                      {"blue", "#00f"},
                                                                                      {"teal", "#008080"},
                                                                                      {"aqua", "#0ff"}}};

std::optional<Colour> rgbIn(const std::string& text) {
    if (!text.starts_with("rgb")) return std::nullopt;
    std::string numbers = text.substr(std::min(text.find('(') + 1, text.size()));
    for (char& c : numbers)
        if (c == ',' || c == '/' || c == ')') c = ' ';
    std::istringstream stream(numbers);
    stream.imbue(std::locale::classic());
    std::array<double, 4> parts{0, 0, 0, 1};
    std::size_t count = 0;
    while (count < parts.size() && stream >> parts[count])
        ++count;
    if (count < 3 || numbers.find('%') != std::string::npos) return std::nullopt;
    const auto byte = [](double value) {
        return static_cast<std::uint8_t>(std::lround(std::clamp(value, 0.0, 255.0)));
    };
    return Colour{byte(parts[0]), byte(parts[1]), byte(parts[2]), byte(parts[3] * 255)};
}

std::optional<Colour> colourIn(const std::string& text) {
    if (const auto colour = Colour::parse(text)) return colour;
    const auto basic =
        std::ranges::find(basicColours, text, &std::pair<std::string_view, std::string_view>::first);
    if (basic != basicColours.end()) return Colour::parse(basic->second);
    return rgbIn(text);
}

/// The first word of a value, such as `1px` of `1px solid #ccc`, for which `read` gives a result.
template <class Read>
auto firstWord(const std::string& text, Read read) -> decltype(read(text)) {
    std::istringstream words(text);
    for (std::string word; words >> word;)
        if (auto found = read(word)) return found;
    return std::nullopt;
}

std::optional<Length> lengthIn(const std::string& text) {
    auto length = Length::parse(text);
    const bool isUsable = length && length->value() >= 0 &&
                          (length->isZero() || length->unit() == Unit::Px || length->unit() == Unit::Rem ||
                           length->unit() == Unit::Em);
    return isUsable ? length : std::nullopt;
}

class StyleReader {
public:
    StyleReader(const markup::GivenRow& row, const std::string& theme, double width)
        : row_(row), sheet_(css::readSheet(theme)), cascade_(row.tree, sheet_, width) {}

    project::Settings settings() {
        project::Settings settings;
        if (!row_.cards.empty()) readCard(settings.card, row_.cards.front().node);
        for (const markup::RoleNodes& role : row_.roles)
            if (role.role != "row" && role.role != "card" && role.role != "picture" && !role.nodes.empty())
                readText(settings.text.of(role.role), role.nodes.front(), role.role == "button");
        return settings;
    }

    [[nodiscard]] int columns() const {
        const markup::ThemeValues values = cascade_.of(row_.row);
        const auto found = values.find("grid-template-columns");
        if (found == values.end()) return 0;
        const std::string& text = found->second;
        if (const std::size_t at = text.find("repeat("); at != std::string::npos) {
            const int count = std::atoi(text.c_str() + at + 7);
            return count >= 1 && count <= 12 ? count : 0;
        }
        if (text.find('(') != std::string::npos || text == "none") return 0;
        std::istringstream words(text);
        int count = 0;
        for (std::string word; words >> word;)
            ++count;
        return count <= 12 ? count : 0;
    }

private:
    [[nodiscard]] static std::string valueOf(const markup::ThemeValues& values, const std::string& property) {
        const auto found = values.find(property);
        return found == values.end() ? std::string() : found->second;
    }
    /// The value of an inherited property: that of the nearest element which declares it.
    [[nodiscard]] std::string inherited(NodeId node, const std::string& property) const {
        for (NodeId at = node; at != noNode; at = row_.tree[at].parent) {
            const std::string value = valueOf(cascade_.of(at), property);
            if (!value.empty() && value != "inherit") return value;
        }
        return {};
    }

    static std::optional<Colour> background(const markup::ThemeValues& values) {
        for (const char* property : {"background-color", "background"})
            if (const auto colour = firstWord(valueOf(values, property), colourIn)) return colour;
        return std::nullopt;
    }

    static void readSides(project::Sides& sides, const markup::ThemeValues& values) {
        sides.top = lengthIn(valueOf(values, "padding-top")).value_or(Length());
        sides.right = lengthIn(valueOf(values, "padding-right")).value_or(Length());
        sides.bottom = lengthIn(valueOf(values, "padding-bottom")).value_or(Length());
        sides.left = lengthIn(valueOf(values, "padding-left")).value_or(Length());
    }

    static void readBorder(project::Border& border, const markup::ThemeValues& values) {
        border.width = Length();
        if (const auto width = firstWord(valueOf(values, "border"), lengthIn)) border.width = *width;
        if (const auto width = firstWord(valueOf(values, "border-top-width"), lengthIn);
            width && values.contains("border-width"))
            border.width = *width;
        for (const char* property : {"border", "border-color"})
            if (const auto colour = firstWord(valueOf(values, property), colourIn)) border.colour = *colour;
    }

    void readCard(project::CardSettings& card, NodeId node) const {
        const markup::ThemeValues values = cascade_.of(node);
        readSides(card.padding, values);
        readBorder(card.border, values);
        card.background = background(values).value_or(Colour{0, 0, 0, 0});
        card.radius = firstWord(valueOf(values, "border-radius"), lengthIn).value_or(Length());
    }

    void readText(project::TextStyle& style, NodeId node, bool isButton) const {
        const markup::ThemeValues values = cascade_.of(node);
        style.colour = firstWord(inherited(node, "color"), colourIn);
        readFamily(style, inherited(node, "font-family"));
        const std::string weight = inherited(node, "font-weight");
        if (weight == "bold") style.weight = 700;
        if (weight == "normal") style.weight = 400;
        double number = 0;
        const auto [end, error] = std::from_chars(weight.data(), weight.data() + weight.size(), number);
        if (error == std::errc() && end == weight.data() + weight.size() && number >= 1 && number <= 1000)
            style.weight = number;
        if (valueOf(values, "text-transform") == "uppercase")
            style.letterCase = project::LetterCase::Uppercase;
        const std::string align = inherited(node, "text-align");
        if (align == "center") style.align = project::Align::Center;
        if (const auto line = units::LineHeight::parse(inherited(node, "line-height"));
            line && line->isNumber() && line->number() >= 1 && line->number() <= 3)
            style.lineHeight = *line;
        if (!isButton) return;
        style.background = background(values).value_or(Colour{0, 0, 0, 0});
        readSides(style.padding, values);
        readBorder(style.border, values);
        style.radius = firstWord(valueOf(values, "border-radius"), lengthIn).value_or(Length());
    }

    static void readFamily(project::TextStyle& style, const std::string& text) {
        std::vector<std::string> families;
        std::istringstream names(text);
        for (std::string name; std::getline(names, name, ',');) {
            std::erase_if(name, [](char c) { return c == '"' || c == '\''; });
            const std::size_t from = name.find_first_not_of(' ');
            if (from == std::string::npos || name.find('(') != std::string::npos) continue;
            families.push_back(name.substr(from, name.find_last_not_of(' ') + 1 - from));
        }
        if (!families.empty()) style.family = std::move(families);
    }

    const markup::GivenRow& row_;
    css::Sheet sheet_;
    markup::ThemeCascade cascade_;
};

}  // namespace

project::Settings pageStyle(const markup::GivenRow& row, const std::string& theme, double width) {
    return StyleReader(row, theme, width).settings();
}

int pageColumns(const markup::GivenRow& row, const std::string& theme, double width) {
    return StyleReader(row, theme, width).columns();
}

}  // namespace tenter::start
