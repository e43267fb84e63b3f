// A cursor over the tokens of a source, for the readers of rules.
#pragma once

#include <string_view>
#include <vector>

#include "css/tokens.h"

namespace tenter::css {

/// The kind of token that closes a block opened by `kind`; End if `kind` opens none.
constexpr TokenKind closerOf(TokenKind kind) {
    switch (kind) {
        case TokenKind::Function:
        case TokenKind::OpenRound:
            return TokenKind::CloseRound;
        case TokenKind::OpenSquare:
            return TokenKind::CloseSquare;
        case TokenKind::OpenCurly:
            return TokenKind::CloseCurly;
        default:
            return TokenKind::End;
    }
}

/// The present token, and movement to others.
class TokenCursor {
public:
    explicit TokenCursor(std::string_view source) : source_(source), tokeniser_(source) { step(); }

    [[nodiscard]] const Token& token() const { return token_; }
    [[nodiscard]] bool is(TokenKind kind) const { return token_.is(kind); }
    void step() { token_ = tokeniser_.next(); }
    void skipSpaces() {
        while (is(TokenKind::Whitespace))
            step();
    }
    /// Moves back to `token`.
    void returnTo(const Token& token) {
        tokeniser_ = Tokeniser(source_, token.end);
        token_ = token;
    }
    /// Moves to the first token outside brackets for which `stops` is true, or to the end.
    template <class Stops>
    void skipUntil(Stops stops) {
        std::vector<TokenKind> closers;
        for (; !is(TokenKind::End); step()) {
            if (closers.empty() && stops(token_)) return;
            if (const TokenKind closer = closerOf(token_.kind); closer != TokenKind::End) {
                closers.push_back(closer);
            } else if (!closers.empty() && is(closers.back())) {
                closers.pop_back();
            }
        }
    }
    /// Moves past the block that the present token opens.
    void skipBlock() {
        const TokenKind closer = closerOf(token_.kind);
        step();
        skipUntil([closer](const Token& token) { return token.is(closer); });
        step();
    }

private:
    std::string_view source_;
    Tokeniser tokeniser_;
    Token token_;
};

}  // namespace tenter::css
