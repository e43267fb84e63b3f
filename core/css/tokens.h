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
    BadString,  ///< a string that ends at a line end without its quotation mark
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

/// A token.
struct Token {
    TokenKind kind = TokenKind::End;
    /// For numbers: written without point and exponent. For a hash: its name is an identifier, so it can be
    /// an id. § 4.3.3, § 4.3.1.
    bool flag = false;
    std::size_t begin = 0;  ///< of its first byte in the source
    std::size_t end = 0;    ///< after its last byte
    double number = 0;      ///< for Number, Percentage (50 for `50%`) and Dimension; finite
    /// With escapes decoded, and U+FFFD for NUL and ill-formed bytes: a name without `@`, `#` or `(`, the
    /// content of a string or url, the unit of a dimension, or a delimiter.
    std::string text;

    [[nodiscard]] bool is(TokenKind other) const { return kind == other; }
    /// True for the delimiter `character`.
    [[nodiscard]] bool isDelim(char character) const {
        return kind == TokenKind::Delim && text[0] == character;
    }
    /// True for the identifier `name`, regardless of the case of ASCII letters.
    [[nodiscard]] bool isIdent(std::string_view name) const;
    [[nodiscard]] bool isFunction(std::string_view name) const;
};

/// Reads the tokens of UTF-8 text one by one. Any bytes are accepted. Comments are skipped. The preprocessing
/// of § 3.3 is part of reading, so that positions are those of the source.
class Tokeniser {
public:
    /// Starts at byte `from`, which must be the start of a token. `source` must outlive the object.
    explicit Tokeniser(std::string_view source, std::size_t from = 0);
    /// The next token; always End after the last one.
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

/// All tokens of `source`, followed by End.
std::vector<Token> tokenise(std::string_view source);

}  // namespace tenter::css
