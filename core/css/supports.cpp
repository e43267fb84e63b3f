// Conditions of @supports. CSS Conditional 4 § 2.
#include <algorithm>
#include <array>

#include "css/ascii.h"
#include "css/cascade.h"
#include "css/token_cursor.h"

namespace tenter::css {

namespace {

constexpr int deepestSupports = 32;

/// The keywords of properties whose values themes ask for. CSS Display 3 § 2, CSS Positioned Layout 3 § 2.
constexpr std::array<std::string_view, 32> displays{"block",
                                                    "inline",
                                                    "inline-block",
                                                    "flow-root",
                                                    "none",
                                                    "contents",
                                                    "list-item",
                                                    "flex",
                                                    "inline-flex",
                                                    "grid",
                                                    "inline-grid",
                                                    "table",
                                                    "inline-table",
                                                    "table-row",
                                                    "table-row-group",
                                                    "table-cell",
                                                    "table-column",
                                                    "table-column-group",
                                                    "table-header-group",
                                                    "table-footer-group",
                                                    "table-caption",
                                                    "ruby",
                                                    "ruby-text",
                                                    "math",
                                                    "-webkit-box",
                                                    "-webkit-flex",
                                                    "-webkit-inline-box",
                                                    "-webkit-inline-flex",
                                                    "inherit",
                                                    "initial",
                                                    "unset",
                                                    "revert"};
constexpr std::array<std::string_view, 9> positions{"static",  "relative", "absolute", "fixed", "sticky",
                                                    "inherit", "initial",  "unset",    "revert"};

/// Properties and values with these words are of other browsers than Chromium and Firefox, or of one.
bool isSupportedDeclaration(std::string_view declaration) {
    constexpr std::array<std::string_view, 20> foreign{"-ms-",
                                                       "-moz-",
                                                       "-o-",
                                                       "-khtml-",
                                                       "-apple-",
                                                       "-webkit-backdrop-filter",
                                                       "-webkit-hyphens",
                                                       "-webkit-initial-letter",
                                                       "-webkit-marquee",
                                                       "-webkit-overflow-scrolling",
                                                       "-webkit-sticky",
                                                       "-webkit-text-decoration",
                                                       "-webkit-touch-callout",
                                                       "constant(",
                                                       "grid-lanes",
                                                       "hanging-punctuation",
                                                       "line-height-step",
                                                       "margin-trim",
                                                       "masonry",
                                                       "expression("};
    const std::string text = lowered(declaration);
    const std::size_t colon = text.find(':');
    if (colon == std::string::npos) return false;
    const std::string_view property = trimmed(std::string_view(text).substr(0, colon));
    const std::string_view value = trimmed(std::string_view(text).substr(colon + 1));
    const bool isWord = std::ranges::all_of(value, [](char c) { return isLetter(c) || c == '-'; });
    if (property == "display" && isWord) return std::ranges::find(displays, value) != displays.end();
    if (property == "position" && isWord) return std::ranges::find(positions, value) != positions.end();
    return std::ranges::none_of(foreign,
                                [&](std::string_view word) { return text.find(word) != std::string::npos; });
}

class SupportsReader {
public:
    explicit SupportsReader(std::string_view text) : text_(text), cursor_(text) {}

    bool read() {
        cursor_.skipSpaces();
        return readCondition(0);
    }

private:
    bool readCondition(int depth) {
        if (cursor_.token().isIdent("not")) {
            cursor_.step();
            cursor_.skipSpaces();
            return !readOne(depth);
        }
        bool holds = readOne(depth);
        cursor_.skipSpaces();
        while (cursor_.token().isIdent("and") || cursor_.token().isIdent("or")) {
            const bool either = cursor_.token().isIdent("or");
            cursor_.step();
            cursor_.skipSpaces();
            const bool next = readOne(depth);
            holds = either ? holds || next : holds && next;
            cursor_.skipSpaces();
        }
        return holds;
    }

    // A declaration or a condition in parentheses, or a function such as selector().
    bool readOne(int depth) {
        if (cursor_.is(TokenKind::Function)) {
            const bool known = cursor_.token().isFunction("selector") ||
                               cursor_.token().isFunction("font-tech") ||
                               cursor_.token().isFunction("font-format");
            const std::size_t begin = cursor_.token().begin;
            cursor_.skipBlock();
            const std::string inside = lowered(text_.substr(begin, cursor_.token().begin - begin));
            return known && inside.find("-moz-") == std::string::npos &&
                   inside.find("-webkit-") == std::string::npos;
        }
        if (!cursor_.is(TokenKind::OpenRound)) return false;
        const Token open = cursor_.token();
        cursor_.step();
        cursor_.skipSpaces();
        if ((cursor_.is(TokenKind::OpenRound) || cursor_.is(TokenKind::Function) ||
             cursor_.token().isIdent("not")) &&
            depth < deepestSupports) {
            const bool holds = readCondition(depth + 1);
            cursor_.skipSpaces();
            if (cursor_.is(TokenKind::CloseRound)) cursor_.step();
            return holds;
        }
        cursor_.returnTo(open);
        cursor_.skipBlock();
        std::string_view inside = text_.substr(open.end, cursor_.token().begin - open.end);
        inside = inside.substr(0, inside.rfind(')'));
        return isSupportedDeclaration(inside);
    }

    std::string_view text_;
    TokenCursor cursor_;
};

}  // namespace

bool isSupported(std::string_view condition) {
    return SupportsReader(condition).read();
}

}  // namespace tenter::css
