#include "css/scopes.h"

#include <algorithm>
#include <optional>
#include <vector>

#include "css/ascii.h"
#include "css/token_cursor.h"

namespace tenter::css {

namespace {

/// As specific as `:scope`, a pseudo-class; `&` has no specificity there.
std::string rootSelector(const std::string& root, bool specific) {
    return ":where(" + root + ")" + (specific ? ":not(._)" : "");
}

/// Inside a root or inside a limit, the element itself included.
std::string within(const std::string& selectors) {
    return ":where(" + selectors + ", :is(" + selectors + ") *)";
}

/// The text in brackets at the cursor, which moves past them.
std::optional<std::string> bracketed(std::string_view text, TokenCursor& cursor) {
    if (!cursor.is(TokenKind::OpenRound)) return std::nullopt;
    cursor.step();
    const std::size_t begin = cursor.token().begin;
    cursor.skipUntil([](const Token& token) { return token.is(TokenKind::CloseRound); });
    const std::string inside(trimmed(text.substr(begin, cursor.token().begin - begin)));
    cursor.step();
    cursor.skipSpaces();
    return inside;
}

/// One selector of a list, read token by token.
class ScopedSelector {
public:
    ScopedSelector(const Scope& scope, std::string_view text) : scope_(scope), text_(text) {}

    void add(const Token& token, bool isOutermost) {
        const std::string own(text_.substr(token.begin, token.end - token.begin));
        if (out_.empty()) {
            if (token.is(TokenKind::Whitespace)) return;
            if (token.isDelim('>') || token.isDelim('+') || token.isDelim('~'))
                out_ = rootSelector(scope_.root, true) + " ";
        }
        const bool isAnchor = wasColon_ && token.isIdent("scope");
        if (isAnchor) {
            out_.pop_back();
            out_ += rootSelector(scope_.root, true);
        } else if (token.isDelim('&')) {
            out_ += rootSelector(scope_.root, false);
        } else {
            // A pseudo-element ends what selects the element itself.
            const bool isElement = isOutermost && wasColon_ &&
                                   (wasTwoColons_ || token.isIdent("before") || token.isIdent("after") ||
                                    token.isIdent("first-line") || token.isIdent("first-letter"));
            if (isElement && !pseudo_) pseudo_ = out_.size() - (wasTwoColons_ ? 2 : 1);
            out_ += own;
        }
        wasTwoColons_ = wasColon_ && token.is(TokenKind::Colon);
        wasColon_ = token.is(TokenKind::Colon);
    }

    [[nodiscard]] std::string finished() const {
        std::string out = out_;
        std::size_t end = pseudo_.value_or(out.size());
        while (end > 0 && isSpace(out[end - 1]))
            --end;
        if (end == 0) return out;
        std::string inside = within(scope_.root);
        if (!scope_.limit.empty()) inside += ":not(" + within(scope_.limit) + ")";
        out.insert(end, inside);
        return out;
    }
    [[nodiscard]] bool isEmpty() const { return out_.empty(); }

private:
    const Scope& scope_;
    std::string_view text_;
    std::string out_;
    std::optional<std::size_t> pseudo_;
    bool wasColon_ = false;
    bool wasTwoColons_ = false;
};

/// The selectors of a list that is relative to the root, each with the root before it if it does not name it.
std::string limitsIn(const std::string& root, std::string_view limits) {
    std::string out;
    std::string one;
    bool named = false;
    int depth = 0;
    bool wasColon = false;
    const auto finish = [&] {
        const std::string_view own = trimmed(one);
        if (!own.empty())
            out += (out.empty() ? "" : ", ") +
                   (named ? std::string(own) : ":where(" + root + ") " + std::string(own));
        one.clear();
        named = false;
    };
    for (const Token& token : tokenise(limits)) {
        if (token.is(TokenKind::End)) break;
        if (closerOf(token.kind) != TokenKind::End) ++depth;
        if (token.is(TokenKind::CloseRound) || token.is(TokenKind::CloseSquare)) --depth;
        if (depth == 0 && token.is(TokenKind::Comma)) {
            finish();
            continue;
        }
        if ((wasColon && token.isIdent("scope")) || token.isDelim('&')) {
            if (wasColon) one.pop_back();
            one += ":where(" + root + ")";
            named = true;
        } else {
            one += std::string(limits.substr(token.begin, token.end - token.begin));
        }
        wasColon = token.is(TokenKind::Colon);
    }
    finish();
    return out;
}

}  // namespace

Scope scopeOf(std::string_view prelude) {
    TokenCursor cursor(prelude);
    cursor.skipSpaces();
    Scope scope;
    const std::optional<std::string> root = bracketed(prelude, cursor);
    if (!root || root->empty()) return {};
    scope.root = *root;
    if (cursor.is(TokenKind::End)) return scope;
    if (!cursor.token().isIdent("to")) return {};
    cursor.step();
    cursor.skipSpaces();
    const std::optional<std::string> limit = bracketed(prelude, cursor);
    if (!limit || !cursor.is(TokenKind::End)) return {};
    scope.limit = limitsIn(scope.root, *limit);
    return scope;
}

std::string scopedSelectors(const Scope& scope, std::string_view selectors) {
    std::string out;
    std::size_t depth = 0;
    std::optional<ScopedSelector> one;
    const auto finish = [&] {
        if (one && !one->isEmpty()) out += (out.empty() ? "" : ", ") + one->finished();
        one.reset();
    };
    for (const Token& token : tokenise(selectors)) {
        if (token.is(TokenKind::End)) break;
        if (depth == 0 && token.is(TokenKind::Comma)) {
            finish();
            continue;
        }
        if (!one) one.emplace(scope, selectors);
        if (depth > 0 && (token.is(TokenKind::CloseRound) || token.is(TokenKind::CloseSquare))) --depth;
        one->add(token, depth == 0);
        if (closerOf(token.kind) != TokenKind::End) ++depth;
    }
    finish();
    return out;
}

}  // namespace tenter::css
