#include "css/longhands.h"

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

#include "css/ascii.h"
#include "css/token_cursor.h"

namespace tenter::css {

namespace {

using Words = std::vector<std::string>;

template <std::size_t n>
bool isIn(const std::array<std::string_view, n>& words, std::string_view word) {
    return std::ranges::any_of(words, [&](std::string_view each) { return sameIgnoringCase(each, word); });
}

constexpr std::array<std::string_view, 5> forAll{"inherit", "initial", "unset", "revert", "revert-layer"};
constexpr std::array<std::string_view, 10> borderStyles{"none",   "hidden", "dotted", "dashed", "solid",
                                                        "double", "groove", "ridge",  "inset",  "outset"};

struct Sides {
    std::string_view logical;
    std::string_view first;   ///< in text from left to right
    std::string_view second;  ///< the other side; empty for a property of one side
};

/// CSS Logical 1 § 4, in horizontal text.
constexpr std::array<Sides, 50> logicalSides{{
    {"inline-size", "width", ""},
    {"block-size", "height", ""},
    {"min-inline-size", "min-width", ""},
    {"min-block-size", "min-height", ""},
    {"max-inline-size", "max-width", ""},
    {"max-block-size", "max-height", ""},
    {"margin-inline", "margin-left", "margin-right"},
    {"margin-inline-start", "margin-left", "start"},
    {"margin-inline-end", "margin-right", "end"},
    {"margin-block", "margin-top", "margin-bottom"},
    {"margin-block-start", "margin-top", ""},
    {"margin-block-end", "margin-bottom", ""},
    {"padding-inline", "padding-left", "padding-right"},
    {"padding-inline-start", "padding-left", "start"},
    {"padding-inline-end", "padding-right", "end"},
    {"padding-block", "padding-top", "padding-bottom"},
    {"padding-block-start", "padding-top", ""},
    {"padding-block-end", "padding-bottom", ""},
    {"inset-inline", "left", "right"},
    {"inset-inline-start", "left", "start"},
    {"inset-inline-end", "right", "end"},
    {"inset-block", "top", "bottom"},
    {"inset-block-start", "top", ""},
    {"inset-block-end", "bottom", ""},
    {"border-inline-width", "border-left-width", "border-right-width"},
    {"border-inline-start-width", "border-left-width", "start"},
    {"border-inline-end-width", "border-right-width", "end"},
    {"border-inline-style", "border-left-style", "border-right-style"},
    {"border-inline-start-style", "border-left-style", "start"},
    {"border-inline-end-style", "border-right-style", "end"},
    {"border-block-width", "border-top-width", "border-bottom-width"},
    {"border-block-start-width", "border-top-width", ""},
    {"border-block-end-width", "border-bottom-width", ""},
    {"border-block-style", "border-top-style", "border-bottom-style"},
    {"border-block-start-style", "border-top-style", ""},
    {"border-block-end-style", "border-bottom-style", ""},
    {"border-inline-color", "border-left-color", "border-right-color"},
    {"border-inline-start-color", "border-left-color", "start"},
    {"border-inline-end-color", "border-right-color", "end"},
    {"border-block-color", "border-top-color", "border-bottom-color"},
    {"border-block-start-color", "border-top-color", ""},
    {"border-block-end-color", "border-bottom-color", ""},
    {"overflow-inline", "overflow-x", ""},
    {"overflow-block", "overflow-y", ""},
    {"border-inline", "border-left", "border-right"},
    {"border-block", "border-top", "border-bottom"},
    {"border-block-start", "border-top", ""},
    {"border-block-end", "border-bottom", ""},
    {"border-inline-start", "border-left", "start"},
    {"border-inline-end", "border-right", "end"},
}};

std::string mirrored(std::string_view property) {
    std::string out(property);
    for (const auto& [from, to] : {std::pair<std::string_view, std::string_view>{"left", "right"},
                                   std::pair<std::string_view, std::string_view>{"right", "left"}}) {
        const std::size_t at = property.find(from);
        if (at == std::string_view::npos) continue;
        out.replace(at, from.size(), to);
        break;
    }
    return out;
}

/// Shorthands of two longhands that are separated by white space; one value is for both.
constexpr std::array<Sides, 6> pairs{{
    {"place-items", "align-items", "justify-items"},
    {"place-content", "align-content", "justify-content"},
    {"place-self", "align-self", "justify-self"},
    {"grid-gap", "row-gap", "column-gap"},
    {"grid-row-gap", "row-gap", ""},
    {"grid-column-gap", "column-gap", ""},
}};

bool isNumber(std::string_view word) {
    Tokeniser tokeniser(word);
    const Token token = tokeniser.next();
    return token.is(TokenKind::Number) && tokeniser.next().is(TokenKind::End);
}

std::vector<Longhand> known(std::initializer_list<std::pair<const char*, std::string>> values) {
    std::vector<Longhand> out;
    for (const auto& [property, value] : values)
        out.push_back({property, value});
    return out;
}

/// CSS Flexbox 1 § 7.1.
std::vector<Longhand> flexOf(const Words& words) {
    std::string grow = "1";
    std::string shrink = "1";
    std::string basis = "0%";
    if (words.size() == 1 && sameIgnoringCase(words[0], "none")) {
        grow = shrink = "0";
        basis = "auto";
    } else if (words.size() == 1 && sameIgnoringCase(words[0], "auto")) {
        basis = "auto";
    } else {
        int numbers = 0;
        for (const std::string& word : words) {
            if (!isNumber(word) || numbers == 2) {
                basis = word;
                continue;
            }
            (numbers == 0 ? grow : shrink) = word;
            ++numbers;
        }
    }
    return known({{"flex-grow", grow}, {"flex-shrink", shrink}, {"flex-basis", basis}});
}

std::vector<Longhand> flexFlowOf(const Words& words) {
    std::string direction = "row";
    std::string wrap = "nowrap";
    for (const std::string& word : words) {
        const bool isWrap = lowered(word).find("wrap") != std::string::npos;
        (isWrap ? wrap : direction) = word;
    }
    return known({{"flex-direction", direction}, {"flex-wrap", wrap}});
}

/// The size, and the line height after `/`. CSS Fonts 4 § 2.8.
std::vector<Longhand> fontOf(const Words& words) {
    constexpr std::array<std::string_view, 10> sizes{"xx-small",  "x-small", "small",    "medium",
                                                     "large",     "x-large", "xx-large", "larger",
                                                     "xxx-large", "smaller"};
    std::vector<Longhand> out;
    std::string style = "normal";
    std::string weight = "normal";
    for (std::size_t i = 0; i < words.size(); ++i) {
        Tokeniser tokeniser(words[i]);
        const Token token = tokeniser.next();
        const bool isSize = token.is(TokenKind::Dimension) || token.is(TokenKind::Percentage) ||
                            token.is(TokenKind::Function) || isIn(sizes, words[i]);
        if (!isSize || token.isFunction("oblique")) {
            if (isIn(std::array<std::string_view, 2>{"italic", "oblique"}, words[i])) style = words[i];
            if (token.is(TokenKind::Number) ||
                isIn(std::array<std::string_view, 3>{"bold", "bolder", "lighter"}, words[i]))
                weight = words[i];
            continue;
        }
        out.push_back({"font-size", words[i]});
        const bool hasLine = i + 2 < words.size() && words[i + 1] == "/";
        out.push_back({"line-height", hasLine ? words[i + 2] : "normal"});
        std::string family;
        for (std::size_t rest = i + (hasLine ? 3 : 1); rest < words.size(); ++rest)
            family.append(family.empty() ? "" : " ").append(words[rest]);
        out.push_back({"font-family", family});
        out.push_back({"font-style", style});
        out.push_back({"font-weight", weight});
        return out;
    }
    for (const char* property : {"font-family", "font-style", "font-weight"})
        out.push_back({property, {}});
    out.push_back({"font-size", {}});
    out.push_back({"line-height", {}});
    return out;
}

/// CSS Backgrounds 3 § 3.4.
std::vector<Longhand> borderOf(const Words& sides, const Words& words) {
    std::string style = "none";
    std::string width = "medium";
    std::string colour = "currentcolor";
    for (const std::string& word : words) {
        Tokeniser tokeniser(word);
        const Token token = tokeniser.next();
        const bool isCalculation = token.isFunction("calc") || token.isFunction("min") ||
                                   token.isFunction("max") || token.isFunction("clamp");
        if (isIn(borderStyles, word))
            style = word;
        else if (token.is(TokenKind::Dimension) || token.is(TokenKind::Number) || isCalculation ||
                 isIn(std::array<std::string_view, 3>{"thin", "medium", "thick"}, word))
            width = word;
        else
            colour = word;
    }
    std::vector<Longhand> out;
    for (const std::string& side : sides) {
        out.push_back({"border-" + side + "-width", width});
        out.push_back({"border-" + side + "-style", style});
        out.push_back({"border-" + side + "-color", colour});
    }
    return out;
}

/// CSS Grid 2 § 8.4. A missing end is the same name as the start, or automatic.
std::vector<Longhand> gridPlacesOf(std::string_view name, const Words& words) {
    Words lines(1);
    for (const std::string& word : words) {
        if (word == "/")
            lines.emplace_back();
        else
            lines.back().append(lines.back().empty() ? "" : " ").append(word);
    }
    const bool isArea = name == "grid-area";
    const auto lineAt = [&](std::size_t i, std::size_t opposite) -> std::string {
        if (i < lines.size()) return lines[i];
        const std::string& other = lines[std::min(opposite, lines.size() - 1)];
        const bool isName = !other.empty() && (isLetter(other[0]) || other[0] == '_' || other[0] == '-') &&
                            !other.starts_with("span") && other != "auto" && !isNumber(other);
        return isName ? other : "auto";
    };
    if (!isArea)
        return {{std::string(name) + "-start", lineAt(0, 0)}, {std::string(name) + "-end", lineAt(1, 0)}};
    return {{"grid-row-start", lineAt(0, 0)},
            {"grid-column-start", lineAt(1, 0)},
            {"grid-row-end", lineAt(2, 0)},
            {"grid-column-end", lineAt(3, 1)}};
}

/// CSS Grid 2 § 7.4 and § 7.8: rows, strings with the areas of each row, and columns after `/`.
std::vector<Longhand> gridTemplateOf(const Words& words) {
    std::string areas;
    std::string rows;
    std::string columns;
    bool isPast = false;
    for (const std::string& word : words) {
        const bool isString = word[0] == '"' || word[0] == '\'';
        if (word == "/")
            isPast = true;
        else if (isString && !isPast)
            areas.append(areas.empty() ? "" : " ").append(word);
        else
            (isPast ? columns : rows).append((isPast ? columns : rows).empty() ? "" : " ").append(word);
    }
    const auto orNone = [](const std::string& text) { return text.empty() ? std::string("none") : text; };
    // Rows or columns that `auto-flow` makes are not explicit ones.
    if (columns.find("auto-flow") != std::string::npos) columns.clear();
    if (rows.find("auto-flow") != std::string::npos) rows.clear();
    return known({{"grid-template-columns", orNone(columns)},
                  {"grid-template-rows", orNone(rows)},
                  {"grid-template-areas", orNone(areas)}});
}

bool refersToVariables(std::string_view value) {
    return lowered(value).find("var(") != std::string::npos;
}

/// The longhands of shorthands whose values need their own reading; empty for every other property.
std::vector<Longhand> readOnes(std::string_view name, const Words& words) {
    if (name == "flex") return flexOf(words);
    if (name == "flex-flow") return flexFlowOf(words);
    if (name == "font") return fontOf(words);
    if (name == "container") {
        const auto slash = std::ranges::find(words, "/");
        std::string names;
        for (auto word = words.begin(); word != slash; ++word)
            names.append(names.empty() ? "" : " ").append(*word);
        return known(
            {{"container-name", names},
             {"container-type", slash == words.end() || slash + 1 == words.end() ? "normal" : *(slash + 1)}});
    }
    if (name == "grid-template" || name == "grid") return gridTemplateOf(words);
    if (name == "grid-column" || name == "grid-row" || name == "grid-area") return gridPlacesOf(name, words);
    if (name == "border") return borderOf({"top", "right", "bottom", "left"}, words);
    for (const char* side : {"top", "right", "bottom", "left"})
        if (name == std::string("border-") + side) return borderOf({side}, words);
    return {};
}

Longhand withValue(std::string property, const std::optional<std::string>& value) {
    return {std::move(property), value};
}

}  // namespace

std::vector<std::string> valueParts(std::string_view value) {
    std::vector<std::string> parts;
    TokenCursor cursor(value);
    for (cursor.skipSpaces(); !cursor.is(TokenKind::End); cursor.skipSpaces()) {
        const Token first = cursor.token();
        std::size_t end = first.end;
        if (closerOf(first.kind) == TokenKind::End) {
            cursor.step();
        } else {
            cursor.step();
            const TokenKind closer = closerOf(first.kind);
            cursor.skipUntil([closer](const Token& token) { return token.is(closer); });
            end = cursor.token().end;
            cursor.step();
        }
        parts.emplace_back(value.substr(first.begin, end - first.begin));
    }
    return parts;
}

std::vector<std::string> listItems(std::string_view list) {
    std::vector<std::string> items{""};
    int depth = 0;
    for (const char c : list) {
        depth += c == '(' ? 1 : c == ')' ? -1 : 0;
        if (c == ',' && depth == 0)
            items.emplace_back();
        else
            items.back() += c;
    }
    return items;
}

std::vector<Longhand> physicalLonghands(std::string_view property, std::string_view value, bool rightToLeft) {
    const std::string name = lowered(property);
    const Words words = valueParts(value);
    const bool same = words.size() == 1 && isIn(forAll, words.front());
    const bool isHidden = refersToVariables(value);
    for (const Sides& sides : logicalSides) {
        if (sides.logical != name) continue;
        const bool oneSide = sides.second == "start" || sides.second == "end";
        const std::string first = oneSide && rightToLeft ? mirrored(sides.first) : std::string(sides.first);
        if (first.starts_with("border-") && first.find('-', 7) == std::string::npos) {
            // A border of one or two sides.
            std::vector<Longhand> out = physicalLonghands(first, value, rightToLeft);
            if (!oneSide && !sides.second.empty()) {
                const std::vector<Longhand> other = physicalLonghands(sides.second, value, rightToLeft);
                out.insert(out.end(), other.begin(), other.end());
            }
            return out;
        }
        if (oneSide || sides.second.empty()) return {withValue(first, std::string(value))};
        std::optional<std::string> one;
        std::optional<std::string> two;
        const bool isWhole = same || (words.size() == 1 && !words.front().starts_with("var("));
        if (isWhole ||
            (words.size() == 2 && !words[0].starts_with("var(") && !words[1].starts_with("var("))) {
            one = words.front();
            two = words.back();
        }
        const bool mirrors = rightToLeft && name.find("inline") != std::string::npos;
        if (mirrors) std::swap(one, two);
        return {withValue(first, one), withValue(std::string(sides.second), two)};
    }
    for (const Sides& both : pairs) {
        if (both.logical != name) continue;
        if (both.second.empty()) return {withValue(std::string(both.first), std::string(value))};
        const bool isKnown = !isHidden && (words.size() == 1 || words.size() == 2);
        return {withValue(std::string(both.first), isKnown ? std::optional(words.front()) : std::nullopt),
                withValue(std::string(both.second), isKnown ? std::optional(words.back()) : std::nullopt)};
    }
    std::vector<Longhand> read = readOnes(name, words);
    if (!read.empty()) {
        for (Longhand& longhand : read) {
            if (same) longhand.value = words.front();
            if (!same && isHidden) longhand.value.reset();
        }
        return read;
    }
    std::vector<Longhand> longhands = longhandsOf(name, value);
    if (longhands.empty()) return {{name, std::string(value)}};
    if (name == "background" && !same && !isHidden)
        for (Longhand& longhand : longhands)
            if (longhand.property == "background-color") longhand.value = std::string(value);
    return longhands;
}

bool isInherited(std::string_view property) {
    constexpr std::array<std::string_view, 24> inherited{
        "font-size",       "line-height",    "font-family",  "font-style",  "font-weight",   "direction",
        "color",           "letter-spacing", "word-spacing", "text-indent", "text-align",    "text-transform",
        "white-space",     "visibility",     "hyphens",      "word-break",  "overflow-wrap", "line-break",
        "list-style-type", "writing-mode",   "quotes",       "tab-size",    "text-wrap",     "font-kerning"};
    return property.starts_with("--") || isIn(inherited, property);
}

}  // namespace tenter::css
