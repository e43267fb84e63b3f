#include "start/page_style.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <cstdlib>
#include <locale>
#include <sstream>
#include <utility>

#include "css/ascii.h"
#include "css/cascade.h"
#include "css/longhands.h"
#include "markup/browser_sheet.h"
#include "markup/matching.h"

namespace tenter::start {

namespace {

using markup::NodeId;
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

/// The first part of a value, such as `rgb(0, 0, 0)` of `rgb(0, 0, 0) none`, for which `read` gives a result.
template <class Read>
auto firstPart(const std::string& text, Read read) -> decltype(read(text)) {
    for (const std::string& part : css::valueParts(text))
        if (auto found = read(part)) return found;
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
        : row_(row),
          theme_(theme),
          sheet_(css::readSheet(theme)),
          elements_(row.tree),
          rules_(elements_, markup::browserSheet(), sheet_),
          styles_(rules_, width, width, false) {}

    project::Settings settings() {
        project::Settings settings;
        if (!row_.cards.empty()) readCard(settings.card, row_.cards.front().node);
        for (const markup::RoleNodes& role : row_.roles)
            if (role.role != "row" && role.role != "card" && role.role != "picture" && !role.nodes.empty())
                readText(settings.text.of(role.role), role.nodes.front(), role.role == "button");
        return settings;
    }

    int columns() {
        const std::string text = styles_.value(row_.row, "grid-template-columns");
        int count = 0;
        if (const std::size_t at = text.find("repeat("); at != std::string::npos) {
            count = std::atoi(text.c_str() + at + 7);
        } else if (text.find('(') == std::string::npos && text != "none") {
            std::istringstream words(text);
            for (std::string word; words >> word;)
                ++count;
        }
        return count <= mostColumns ? count : 0;
    }

private:
    static constexpr int mostColumns = 12;

    std::optional<Colour> colour(NodeId node, const char* property) {
        return colourIn(styles_.value(node, property));
    }
    std::optional<Length> length(NodeId node, const std::string& property) {
        return lengthIn(styles_.value(node, property));
    }
    std::optional<Colour> background(NodeId node) {
        // Of the shorthand `background` the whole value is known.
        return firstPart(styles_.value(node, "background-color"), colourIn);
    }

    void readSides(project::Sides& sides, NodeId node) {
        sides.top = length(node, "padding-top").value_or(Length());
        sides.right = length(node, "padding-right").value_or(Length());
        sides.bottom = length(node, "padding-bottom").value_or(Length());
        sides.left = length(node, "padding-left").value_or(Length());
    }

    void readBorder(project::Border& border, NodeId node) {
        const std::string whole = styles_.value(node, "border-top");
        border.width = length(node, "border-top-width");
        if (!border.width) border.width = firstPart(whole, lengthIn).value_or(Length());
        border.colour = colour(node, "border-top-color");
        if (!border.colour) border.colour = firstPart(whole, colourIn);
    }

    void readBox(project::Sides& padding, project::Border& border, std::optional<Length>& radius,
                 NodeId node) {
        readSides(padding, node);
        readBorder(border, node);
        radius = length(node, "border-top-left-radius");
        if (!radius) radius = firstPart(styles_.value(node, "border-radius"), lengthIn).value_or(Length());
    }

    void readCard(project::CardSettings& card, NodeId node) {
        readBox(card.padding, card.border, card.radius, node);
        card.background = background(node).value_or(Colour{0, 0, 0, 0});
    }

    void readText(project::TextStyle& style, NodeId node, bool isButton) {
        style.colour = colour(node, "color");
        readFamily(style, styles_.value(node, "font-family"));
        const std::string weight = styles_.value(node, "font-weight");
        if (weight == "bold" || weight == "bolder") style.weight = 700;
        if (weight == "normal") style.weight = 400;
        double number = 0;
        const auto [end, error] = std::from_chars(weight.data(), weight.data() + weight.size(), number);
        if (error == std::errc() && end == weight.data() + weight.size() && number >= 1 && number <= 1000)
            style.weight = number;
        if (styles_.value(node, "text-transform") == "uppercase")
            style.letterCase = project::LetterCase::Uppercase;
        if (styles_.value(node, "text-align") == "center") style.align = project::Align::Center;
        if (const auto line = units::LineHeight::parse(styles_.value(node, "line-height"));
            line && line->isNumber() && line->number() >= 1 && line->number() <= 3)
            style.lineHeight = *line;
        if (!isButton) return;
        style.background = background(node).value_or(Colour{0, 0, 0, 0});
        readBox(style.padding, style.border, style.radius, node);
    }

    /// The name as the theme spells it. Values are in lower case, in which CSS compares families.
    [[nodiscard]] std::string spelled(const std::string& family) const {
        const std::size_t at = css::lowered(theme_).find(family);
        return at == std::string::npos ? family : theme_.substr(at, family.size());
    }

    void readFamily(project::TextStyle& style, const std::string& text) {
        std::vector<std::string> families;
        std::istringstream names(text);
        for (std::string name; std::getline(names, name, ',');) {
            std::erase_if(name, [](char c) { return c == '"' || c == '\''; });
            const std::size_t from = name.find_first_not_of(' ');
            if (from == std::string::npos || name.find('(') != std::string::npos) continue;
            families.push_back(spelled(name.substr(from, name.find_last_not_of(' ') + 1 - from)));
        }
        if (!families.empty()) style.family = std::move(families);
    }

    const markup::GivenRow& row_;
    std::string theme_;
    css::Sheet sheet_;
    markup::TreeElements elements_;
    css::StyleRules rules_;
    css::Styles styles_;
};

}  // namespace

project::Settings pageStyle(const markup::GivenRow& row, const std::string& theme, double width) {
    return StyleReader(row, theme, width).settings();
}

int pageColumns(const markup::GivenRow& row, const std::string& theme, double width) {
    return StyleReader(row, theme, width).columns();
}

}  // namespace tenter::start
