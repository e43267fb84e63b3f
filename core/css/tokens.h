// The tokens of CSS. CSS Syntax 3 § 4.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace tenter::css {

enum class TokenKind {
    Ident,
    Function,   ///< a name with its opening parenthesis
    AtKeyword,  ///< `@media`
    Hash,
    String,
    BadString,  ///< one that a line's end breaks off
    Url,        ///< `url(…)` without quotation marks
    BadUrl,
    Delim,  ///< any other character
    Number,
    Percentage,
    Dimension,
    Whitespace,
    Cdo,  ///< `<!--`
    Cdc,  ///< `-->`
    Colon,
    Semicolon,
    Comma,
    OpenSquare,
    CloseSquare,
    OpenRound,
    CloseRound,
    OpenCurly,
    CloseCurly,
    End,  ///< after the last
};

struct Token {
    TokenKind kind = TokenKind::End;
    /// Of numbers: no point and no exponent was written. Of a hash: what follows is an identifier, so it can
    /// be an id. § 4.3.3, § 4.3.1.
    bool flag = false;
    std::size_t begin = 0;  ///< its first byte in the source
    std::size_t end = 0;    ///< the byte after its last
    double number = 0;      ///< of Number, Percentage (50 for `50%`) and Dimension; finite
    /// Escapes read, U+FFFD for NUL and ill-formed bytes: a name without `@`, `#` or `(`, what a string or
    /// url holds, a dimension's unit, a delimiter.
    std::string text;

    [[nodiscard]] bool is(TokenKind other) const { return kind == other; }
    /// Is the delimiter `character`.
    [[nodiscard]] bool isDelim(char character) const {
        return kind == TokenKind::Delim && text[0] == character;
    }
    /// Is an identifier; `name` is compared ASCII case-insensitively.
    [[nodiscard]] bool isIdent(std::string_view name) const;
    [[nodiscard]] bool isFunction(std::string_view name) const;
};

/// Reads token after token from UTF-8; any bytes will do. Comments are left out. § 3.3 is done on the way, so
/// that places are those of the source.
class Tokeniser {
public:
    /// Starts at byte `from`, which must be where a token starts. `source` must outlive it.
    explicit Tokeniser(std::string_view source, std::size_t from = 0);
    /// The next token; End for ever after the last.
    Token next();

private:
    [[nodiscard]] char at(std::size_t ahead) const;
    [[nodiscard]] bool has(std::size_t ahead) const { return position_ + ahead < source_.size(); }
    [[nodiscard]] bool startsEscape(std::size_t ahead) const;
    [[nodiscard]] bool startsName(std::size_t ahead) const;
    [[nodiscard]] bool startsIdentifier(std::size_t ahead = 0) const;
    [[nodiscard]] bool startsNumber() const;
    void skipComments();
    void skipSpaces();
    void skipNewline();
    void readCharacter(std::string& into);
    void readEscape(std::string& into);
    void readName(std::string& into);
    void readNumeric(Token& token);
    void readIdentLike(Token& token);
    void readString(Token& token);
    void readUrl(Token& token);
    void readBadUrl(Token& token);
    void readMark(Token& token);
    void readDelim(Token& token, std::size_t length, TokenKind kind = TokenKind::Delim);
    void read(Token& token);

    std::string_view source_;
    std::size_t position_;
};

/// All tokens of `source`, an End last.
std::vector<Token> tokenise(std::string_view source);

}  // namespace tenter::css
