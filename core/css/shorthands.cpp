#include "css/shorthands.h"

#include <algorithm>
#include <array>

#include "css/ascii.h"
#include "css/token_cursor.h"

namespace tenter::css {

namespace {

using Words = std::vector<std::string>;

const Words sideNames = {"top", "right", "bottom", "left"};

Words namesWith(std::string_view before, const Words& words, std::string_view after) {
    Words result;
    for (const std::string& word : words)
        result.push_back(std::string(before) + word + std::string(after));
    return result;
}

Words sidesOfBorder(const Words& sides) {
    Words result;
    for (const char* what : {"-width", "-style", "-color"}) {
        const Words some = namesWith("border-", sides, what);
        result.insert(result.end(), some.begin(), some.end());
    }
    return result;
}

// Shorthands with one value for each of four sides or two axes. CSS Box 4, CSS Position 3, CSS Overflow 3,
// CSS Align 3.
Words split(std::string_view property) {
    if (property == "margin" || property == "padding")
        return namesWith(std::string(property) + "-", sideNames, "");
    if (property == "inset") return sideNames;
    if (property == "overflow") return {"overflow-x", "overflow-y"};
    if (property == "gap") return {"row-gap", "column-gap"};
    for (const char* what : {"width", "style", "color"}) {
        if (property == std::string("border-") + what)
            return namesWith("border-", sideNames, std::string("-") + what);
    }
    return {};
}

// Shorthands whose values are recognised by their type. CSS Flexbox 1 § 7.1, CSS Backgrounds 3 § 2.10 and
// § 3.4.
Words together(std::string_view property) {
    if (property == "flex") return {"flex-grow", "flex-shrink", "flex-basis"};
    if (property == "background")
        return namesWith("background-",
                         {"color", "image", "position", "size", "repeat", "origin", "clip", "attachment"},
                         "");
    if (property == "border") {
        Words all = sidesOfBorder(sideNames);
        const Words image = namesWith("border-image-", {"source", "slice", "width", "outset", "repeat"}, "");
        all.insert(all.end(), image.begin(), image.end());
        return all;
    }
    for (const std::string& side : sideNames) {
        if (property == "border-" + side) return sidesOfBorder({side});
    }
    return {};
}

// The values, if they are separated by white space only and each is complete.
std::optional<Words> componentsOf(std::string_view value) {
    Words parts;
    TokenCursor cursor(value);
    for (cursor.skipSpaces(); !cursor.is(TokenKind::End); cursor.skipSpaces()) {
        const Token first = cursor.token();
        if (first.is(TokenKind::Comma) || first.isDelim('/') || first.isFunction("var")) return std::nullopt;
        const bool single = closerOf(first.kind) == TokenKind::End;
        if (single) {
            cursor.step();
        } else {
            cursor.skipBlock();
        }
        const std::size_t end = single ? first.end : cursor.token().begin;
        parts.emplace_back(trimmed(value.substr(first.begin, end - first.begin)));
        if (parts.size() > 4) return std::nullopt;
    }
    return parts;
}

bool isForAllProperties(std::string_view word) {
    constexpr std::array<std::string_view, 5> words = {"inherit", "initial", "unset", "revert",
                                                       "revert-layer"};
    return std::ranges::any_of(words, [&](std::string_view each) { return sameIgnoringCase(word, each); });
}

// The index of the value for each side: top, right, bottom, left. Two axes use the first two.
std::size_t placeAmong(std::size_t values, std::size_t side) {
    if (side < values) return side;
    return side == 3 && values >= 2 ? 1 : 0;
}

}  // namespace

std::vector<Longhand> longhandsOf(std::string_view property, std::string_view value) {
    const std::string name = lowered(property);
    const Words splitNames = split(name);
    const Words names = splitNames.empty() ? together(name) : splitNames;
    const std::optional<Words> parts = componentsOf(value);
    const bool same = parts && parts->size() == 1 && isForAllProperties(parts->front());
    const bool divides = !splitNames.empty() && parts && !parts->empty() && parts->size() <= names.size();
    std::vector<Longhand> result;
    for (std::size_t i = 0; i < names.size(); ++i) {
        Longhand longhand{names[i], {}};
        if (same) longhand.value = parts->front();
        if (!same && divides) longhand.value = (*parts)[placeAmong(parts->size(), i)];
        result.push_back(std::move(longhand));
    }
    return result;
}

}  // namespace tenter::css
