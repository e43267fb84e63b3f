#include "css/media.h"

#include <algorithm>
#include <array>
#include <optional>
#include <string>
#include <vector>

#include "css/ascii.h"
#include "css/math.h"
#include "css/token_cursor.h"

namespace tenter::css {

namespace {

constexpr int deepestCondition = 32;
constexpr std::size_t longestQueries = 100'000;

Truth truth(bool value) {
    return value ? Truth::True : Truth::False;
}
Truth opposite(Truth value) {
    return static_cast<Truth>(2 - static_cast<int>(value));
}

// A length in px at that width.
std::optional<double> lengthIn(std::string_view text, double width) {
    CalculationBasis basis;
    basis.least = basis.most = width;
    Problems problems;
    const std::optional<Calculated> value = calculate(text, basis, problems);
    if (!value || (value->isNumber && value->number != 0)) return std::nullopt;
    return value->isNumber ? 0 : value->length.at(width);
}

std::optional<bool> compared(double one, std::string_view sign, double other) {
    if (sign == "<") return one < other;
    if (sign == "<=") return one <= other;
    if (sign == ">") return one > other;
    if (sign == ">=") return one >= other;
    if (sign == "=") return one == other;
    return std::nullopt;
}

// Here and below, lengths that the width is compared with are added to `lengths`.
// Ranges such as `400px <= width < 700px` or `width < 700px`. § 2.4.3.
Truth rangeHolds(std::string_view feature, double width, std::vector<double>& lengths) {
    std::vector<std::string_view> parts;
    std::vector<std::string_view> signs;
    std::size_t start = 0;
    while (true) {
        const std::size_t at = std::min(feature.find_first_of("<>=", start), feature.size());
        parts.push_back(trimmed(feature.substr(start, at - start)));
        if (at == feature.size()) break;
        const std::size_t length = feature.substr(at + 1).starts_with('=') && feature[at] != '=' ? 2 : 1;
        signs.push_back(feature.substr(at, length));
        start = at + length;
    }
    const bool two = signs.size() == 2 && signs[0][0] == signs[1][0] && signs[0][0] != '=';
    if (signs.size() != 1 && !two) return Truth::Unknown;
    bool holds = true;
    bool named = false;
    std::vector<double> values;
    for (const std::string_view part : parts) {
        const bool isWidth = sameIgnoringCase(part, "width");
        const std::optional<double> value = isWidth ? width : lengthIn(part, width);
        if (!value || (isWidth && named)) return Truth::Unknown;
        named = named || isWidth;
        if (!isWidth) lengths.push_back(*value);
        values.push_back(*value);
    }
    if (!named || (two && !sameIgnoringCase(parts[1], "width"))) return Truth::Unknown;
    for (std::size_t i = 0; i < signs.size(); ++i)
        holds = holds && compared(values[i], signs[i], values[i + 1]).value_or(false);
    return truth(holds);
}

constexpr double assumedHeight = 900;

// A condition on anything but the width, on the screen of `holdsOnScreen`.
Truth onScreen(std::string_view feature) {
    struct Known {
        std::string_view name;
        std::string_view value;
    };
    constexpr std::array<Known, 17> known{{{"hover", "hover"},
                                           {"any-hover", "hover"},
                                           {"pointer", "fine"},
                                           {"any-pointer", "fine"},
                                           {"orientation", "landscape"},
                                           {"prefers-color-scheme", "light"},
                                           {"prefers-reduced-motion", "no-preference"},
                                           {"prefers-reduced-transparency", "no-preference"},
                                           {"prefers-contrast", "no-preference"},
                                           {"prefers-reduced-data", "no-preference"},
                                           {"forced-colors", "none"},
                                           {"inverted-colors", "none"},
                                           {"update", "fast"},
                                           {"scripting", "enabled"},
                                           {"display-mode", "browser"},
                                           {"color-gamut", "srgb"},
                                           {"grid", "0"}}};
    const std::size_t colon = feature.find(':');
    const std::string name = lowered(trimmed(feature.substr(0, colon)));
    if (colon == std::string_view::npos) {
        if (name == "color" || name == "height") return Truth::True;
        const auto* const found = std::ranges::find(known, name, &Known::name);
        const bool isOff = found != known.end() &&
                           (found->value == "none" || found->value == "0" || found->value == "no-preference");
        return truth(found != known.end() && !isOff);
    }
    const std::string value = lowered(trimmed(feature.substr(colon + 1)));
    if (name == "min-height" || name == "max-height") {
        const std::optional<double> length = lengthIn(value, 0);
        if (!length) return Truth::False;
        return truth(name == "min-height" ? assumedHeight >= *length : assumedHeight <= *length);
    }
    const auto* const found = std::ranges::find(known, name, &Known::name);
    return truth(found != known.end() && found->value == value);
}

// A condition in parentheses.
Truth featureHolds(std::string_view feature, double width, std::vector<double>& lengths) {
    const std::size_t colon = feature.find(':');
    if (colon == std::string_view::npos) {
        if (sameIgnoringCase(feature, "width")) return truth(width != 0);
        return feature.find_first_of("<>=") == std::string_view::npos ? Truth::Unknown
                                                                      : rangeHolds(feature, width, lengths);
    }
    const std::string name = lowered(trimmed(feature.substr(0, colon)));
    if (name != "width" && name != "min-width" && name != "max-width") return Truth::Unknown;
    const std::optional<double> length = lengthIn(feature.substr(colon + 1), width);
    if (!length) return Truth::Unknown;
    lengths.push_back(*length);
    if (name == "width") return truth(width == *length);
    return truth(name == "min-width" ? width >= *length : width <= *length);
}

class MediaReader {
public:
    MediaReader(std::string_view text, double width, bool onScreen = false)
        : text_(text), width_(width), onScreen_(onScreen), cursor_(text) {}

    [[nodiscard]] const std::vector<double>& lengths() const { return lengths_; }

    // § 3: one true query is enough; an empty list is always true.
    Truth read() {
        cursor_.skipSpaces();
        if (cursor_.is(TokenKind::End)) return Truth::True;
        Truth any = Truth::False;
        while (true) {
            cursor_.skipSpaces();
            const std::optional<Truth> query = readQuery();
            cursor_.skipSpaces();
            const bool whole = cursor_.is(TokenKind::Comma) || cursor_.is(TokenKind::End);
            any = std::max(any, query && whole ? *query : Truth::False);
            cursor_.skipUntil([](const Token& token) { return token.is(TokenKind::Comma); });
            if (cursor_.is(TokenKind::End)) return any;
            cursor_.step();
        }
    }

private:
    [[nodiscard]] bool isWord(std::string_view word) const { return cursor_.token().isIdent(word); }

    std::optional<Truth> readQuery() {
        if (!cursor_.is(TokenKind::Ident)) return readCondition(true);
        const bool negated = isWord("not");
        if (negated || isWord("only")) {
            cursor_.step();
            cursor_.skipSpaces();
            if (negated && !cursor_.is(TokenKind::Ident)) {
                const std::optional<Truth> inside = readParentheses();
                return inside ? std::optional(opposite(*inside)) : std::nullopt;
            }
        }
        for (const char* word : {"not", "only", "and", "or", "layer"}) {
            if (isWord(word)) return std::nullopt;
        }
        if (!cursor_.is(TokenKind::Ident)) return std::nullopt;
        Truth holds = truth(isWord("all") || isWord("screen"));
        cursor_.step();
        cursor_.skipSpaces();
        if (isWord("and")) {
            cursor_.step();
            cursor_.skipSpaces();
            const std::optional<Truth> condition = readCondition(false);
            if (!condition) return std::nullopt;
            holds = std::min(holds, *condition);
        }
        return negated ? opposite(holds) : holds;
    }

    std::optional<Truth> readCondition(bool mayHaveOr) {
        if (isWord("not")) {
            cursor_.step();
            cursor_.skipSpaces();
            const std::optional<Truth> inside = readParentheses();
            return inside ? std::optional(opposite(*inside)) : std::nullopt;
        }
        std::optional<Truth> holds = readParentheses();
        cursor_.skipSpaces();
        const bool either = isWord("or");
        if (either && !mayHaveOr) return std::nullopt;
        while (holds && isWord(either ? "or" : "and")) {
            cursor_.step();
            cursor_.skipSpaces();
            const std::optional<Truth> next = readParentheses();
            if (!next) return std::nullopt;
            holds = either ? std::max(*holds, *next) : std::min(*holds, *next);
            cursor_.skipSpaces();
        }
        return holds;
    }

    std::optional<Truth> readParentheses() {
        if (cursor_.is(TokenKind::Function)) {
            cursor_.skipBlock();
            return Truth::Unknown;
        }
        if (!cursor_.is(TokenKind::OpenRound)) return std::nullopt;
        const Token open = cursor_.token();
        if (depth_ < deepestCondition) {
            ++depth_;
            const std::optional<Truth> nested = readNested();
            --depth_;
            if (nested) return nested;
            cursor_.returnTo(open);
        }
        cursor_.step();
        const std::size_t begin = cursor_.token().begin;
        cursor_.skipUntil([](const Token& token) { return token.is(TokenKind::CloseRound); });
        const std::string_view feature = trimmed(text_.substr(begin, cursor_.token().begin - begin));
        cursor_.step();
        const Truth holds = featureHolds(feature, width_, lengths_);
        return holds == Truth::Unknown && onScreen_ ? onScreen(feature) : holds;
    }

    // A nested condition in parentheses; empty for anything else.
    std::optional<Truth> readNested() {
        cursor_.step();
        cursor_.skipSpaces();
        if (!cursor_.is(TokenKind::OpenRound) && !isWord("not")) return std::nullopt;
        const std::optional<Truth> condition = readCondition(true);
        cursor_.skipSpaces();
        if (!condition || (!cursor_.is(TokenKind::CloseRound) && !cursor_.is(TokenKind::End)))
            return std::nullopt;
        cursor_.step();
        return condition;
    }

    std::string_view text_;
    double width_;
    bool onScreen_;
    std::vector<double> lengths_;
    TokenCursor cursor_;
    int depth_ = 0;
};

}  // namespace

Truth mediaHolds(std::string_view queries, double width) {
    if (queries.size() > longestQueries) return Truth::Unknown;
    return MediaReader(queries, width).read();
}

bool dependsOnHeight(std::string_view queries) {
    constexpr std::array<std::string_view, 3> features{"height", "orientation", "aspect-ratio"};
    const std::string text = lowered(queries);
    const bool isNamed = std::ranges::any_of(
        features, [&](std::string_view name) { return text.find(name) != std::string::npos; });
    if (!isNamed) return false;
    std::vector<double> widths{1};
    for (const double width : mediaWidths(queries)) {
        widths.push_back(width);
        widths.push_back(width + 0.01);
    }
    return std::ranges::any_of(widths,
                               [&](double width) { return mediaHolds(queries, width) == Truth::Unknown; });
}

bool holdsOnScreen(std::string_view queries, double width) {
    if (queries.size() > longestQueries) return false;
    return MediaReader(queries, width, true).read() == Truth::True;
}

std::vector<double> mediaWidths(std::string_view queries) {
    if (queries.size() > longestQueries) return {};
    MediaReader reader(queries, 0);
    reader.read();
    std::vector<double> widths = reader.lengths();
    std::ranges::sort(widths);
    widths.erase(std::unique(widths.begin(), widths.end()), widths.end());
    // Far smaller than any difference of page widths, far larger than rounding errors.
    constexpr double beside = 1.0 / 1024;
    std::erase_if(widths, [&](double width) {
        const Truth there = mediaHolds(queries, width);
        return mediaHolds(queries, width - beside) == there && mediaHolds(queries, width + beside) == there;
    });
    return widths;
}

}  // namespace tenter::css
