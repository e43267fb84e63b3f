#include "css/tokens.h"

#include <algorithm>

#include "css/ascii.h"
#include "css/numbers.h"

namespace tenter::css {

namespace {

constexpr std::string_view replacement = "\xef\xbf\xbd";  // U+FFFD

// Characters of names include all non-ASCII characters, and NUL, which is read as U+FFFD. § 4.2.
bool isNameStart(char c) {
    return isLetter(c) || c == '_' || c == '\0' || static_cast<unsigned char>(c) >= 0x80;
}
bool isName(char c) {
    return isNameStart(c) || isDigit(c) || c == '-';
}
bool isNonPrintable(char c) {
    return (c > '\0' && c <= '\x08') || c == '\x0b' || (c >= '\x0e' && c <= '\x1f') || c == '\x7f';
}

void appendUtf8(std::string& into, unsigned character) {
    const auto byte = [&](unsigned value) { into += static_cast<char>(value); };
    if (character < 0x80) {
        byte(character);
    } else if (character < 0x800) {
        byte(0xc0U | (character >> 6U));
    } else if (character < 0x10000) {
        byte(0xe0U | (character >> 12U));
        byte(0x80U | ((character >> 6U) & 0x3fU));
    } else {
        byte(0xf0U | (character >> 18U));
        byte(0x80U | ((character >> 12U) & 0x3fU));
        byte(0x80U | ((character >> 6U) & 0x3fU));
    }
    if (character >= 0x80) byte(0x80U | (character & 0x3fU));
}

unsigned hexValue(char c) {
    return static_cast<unsigned>(isDigit(c) ? c - '0' : lowered(c) - 'a' + 10);
}

TokenKind kindOfMark(char c) {
    switch (c) {
        case ':':
            return TokenKind::Colon;
        case ';':
            return TokenKind::Semicolon;
        case ',':
            return TokenKind::Comma;
        case '[':
            return TokenKind::OpenSquare;
        case ']':
            return TokenKind::CloseSquare;
        case '(':
            return TokenKind::OpenRound;
        case ')':
            return TokenKind::CloseRound;
        case '{':
            return TokenKind::OpenCurly;
        case '}':
            return TokenKind::CloseCurly;
        default:
            return TokenKind::Delim;
    }
}

}  // namespace

bool Token::isIdent(std::string_view name) const {
    return kind == TokenKind::Ident && sameIgnoringCase(text, name);
}

bool Token::isFunction(std::string_view name) const {
    return kind == TokenKind::Function && sameIgnoringCase(text, name);
}

Tokeniser::Tokeniser(std::string_view source, std::size_t from) : source_(source), position_(from) {
    // A byte order mark is not part of the text. § 3.2.
    if (from == 0 && source.starts_with("\xef\xbb\xbf")) position_ = 3;
}

// Beyond the end: a character that starts no token.
char Tokeniser::at(std::size_t ahead) const {
    return has(ahead) ? source_[position_ + ahead] : ' ';
}

// § 4.3.8. At the very end a backslash is an escape too.
bool Tokeniser::startsEscape(std::size_t ahead) const {
    return at(ahead) == '\\' && !(has(ahead + 1) && isNewline(at(ahead + 1)));
}

bool Tokeniser::startsName(std::size_t ahead) const {
    return isNameStart(at(ahead)) || startsEscape(ahead);
}

// § 4.3.9.
bool Tokeniser::startsIdentifier(std::size_t ahead) const {
    if (at(ahead) != '-') return startsName(ahead);
    return at(ahead + 1) == '-' || startsName(ahead + 1);
}

// § 4.3.10.
bool Tokeniser::startsNumber() const {
    const std::size_t sign = at(0) == '+' || at(0) == '-' ? 1 : 0;
    return isDigit(at(sign)) || (at(sign) == '.' && isDigit(at(sign + 1)));
}

// § 4.3.2.
void Tokeniser::skipComments() {
    while (at(0) == '/' && at(1) == '*') {
        const std::size_t end = source_.find("*/", position_ + 2);
        position_ = end == std::string_view::npos ? source_.size() : end + 2;
    }
}

void Tokeniser::skipSpaces() {
    while (has(0) && isSpace(at(0)))
        ++position_;
}

void Tokeniser::skipNewline() {
    position_ += at(0) == '\r' && has(1) && at(1) == '\n' ? 2 : 1;
}

void Tokeniser::readCharacter(std::string& into) {
    const std::size_t length = characterLength(source_, position_);
    if (length == 0 || source_[position_] == '\0') {
        into += replacement;
    } else {
        into += source_.substr(position_, length);
    }
    position_ += std::max<std::size_t>(length, 1);
}

// § 4.3.7; the backslash is the next character.
void Tokeniser::readEscape(std::string& into) {
    ++position_;
    if (!has(0)) {
        into += replacement;
        return;
    }
    if (!isHexDigit(at(0))) {
        readCharacter(into);
        return;
    }
    unsigned character = 0;
    for (int digits = 0; digits < 6 && isHexDigit(at(0)); ++digits)
        character = character * 16 + hexValue(source_[position_++]);
    if (has(0) && isSpace(at(0))) skipNewline();
    const bool surrogate = character >= 0xd800 && character <= 0xdfff;
    if (character == 0 || surrogate || character > 0x10ffff) {
        into += replacement;
    } else {
        appendUtf8(into, character);
    }
}

// § 4.3.11.
void Tokeniser::readName(std::string& into) {
    while (has(0)) {
        if (isName(at(0))) {
            readCharacter(into);
        } else if (startsEscape(0)) {
            readEscape(into);
        } else {
            return;
        }
    }
}

// § 4.3.3 and § 4.3.12.
void Tokeniser::readNumeric(Token& token) {
    const auto skipDigits = [&] {
        while (isDigit(at(0)))
            ++position_;
    };
    token.flag = true;
    if (!isDigit(at(0)) && at(0) != '.') ++position_;
    skipDigits();
    if (at(0) == '.' && isDigit(at(1))) {
        token.flag = false;
        ++position_;
        skipDigits();
    }
    const std::size_t sign = at(1) == '+' || at(1) == '-' ? 1 : 0;
    if (lowered(at(0)) == 'e' && isDigit(at(1 + sign))) {
        token.flag = false;
        position_ += 1 + sign;
        skipDigits();
    }
    token.number = valueOf(source_.substr(token.begin, position_ - token.begin));
    if (startsIdentifier()) {
        token.kind = TokenKind::Dimension;
        readName(token.text);
    } else if (at(0) == '%') {
        token.kind = TokenKind::Percentage;
        ++position_;
    } else {
        token.kind = TokenKind::Number;
    }
}

// § 4.3.4.
void Tokeniser::readIdentLike(Token& token) {
    readName(token.text);
    token.kind = TokenKind::Ident;
    if (at(0) != '(') return;
    ++position_;
    token.kind = TokenKind::Function;
    if (!sameIgnoringCase(token.text, "url")) return;
    std::size_t ahead = 0;
    while (has(ahead) && isSpace(at(ahead)))
        ++ahead;
    if (at(ahead) != '"' && at(ahead) != '\'') readUrl(token);
}

// § 4.3.5.
void Tokeniser::readString(Token& token) {
    const char quotation = source_[position_++];
    token.kind = TokenKind::String;
    while (has(0)) {
        if (at(0) == quotation) {
            ++position_;
            return;
        }
        if (isNewline(at(0))) {
            token.kind = TokenKind::BadString;
            return;
        }
        if (startsEscape(0)) {
            if (has(1)) {
                readEscape(token.text);
            } else {
                ++position_;
            }
        } else if (at(0) == '\\') {
            ++position_;
            skipNewline();
        } else {
            readCharacter(token.text);
        }
    }
}

// § 4.3.6; `url(` has been read.
void Tokeniser::readUrl(Token& token) {
    token.kind = TokenKind::Url;
    token.text.clear();
    skipSpaces();
    while (has(0)) {
        const char c = at(0);
        if (isSpace(c)) {
            skipSpaces();
            if (!has(0)) return;
            if (at(0) != ')') return readBadUrl(token);
        } else if (c == ')') {
            ++position_;
            return;
        } else if (startsEscape(0)) {
            readEscape(token.text);
        } else if (c == '"' || c == '\'' || c == '(' || c == '\\' || isNonPrintable(c)) {
            return readBadUrl(token);
        } else {
            readCharacter(token.text);
        }
    }
}

// § 4.3.14.
void Tokeniser::readBadUrl(Token& token) {
    token.kind = TokenKind::BadUrl;
    std::string ignored;
    while (has(0)) {
        if (startsEscape(0)) {
            ignored.clear();
            readEscape(ignored);
        } else if (source_[position_++] == ')') {
            return;
        }
    }
}

void Tokeniser::readDelim(Token& token, std::size_t length, TokenKind kind) {
    token.kind = kind;
    if (kind == TokenKind::Delim) token.text = at(0);
    position_ += length;
}

// Tokens that start with a punctuation mark.
void Tokeniser::readMark(Token& token) {
    const char c = at(0);
    if (c == '#' && (isName(at(1)) || startsEscape(1))) {
        token.kind = TokenKind::Hash;
        token.flag = startsIdentifier(1);
        ++position_;
        readName(token.text);
    } else if (c == '@' && startsIdentifier(1)) {
        token.kind = TokenKind::AtKeyword;
        ++position_;
        readName(token.text);
    } else if (c == '<' && source_.substr(position_).starts_with("<!--")) {
        readDelim(token, 4, TokenKind::Cdo);
    } else {
        readDelim(token, 1, kindOfMark(c));
    }
}

// § 4.3.1.
void Tokeniser::read(Token& token) {
    const char c = at(0);
    if (isSpace(c)) {
        token.kind = TokenKind::Whitespace;
        skipSpaces();
    } else if (c == '"' || c == '\'') {
        readString(token);
    } else if (startsNumber()) {
        readNumeric(token);
    } else if (c == '-' && at(1) == '-' && at(2) == '>') {
        readDelim(token, 3, TokenKind::Cdc);
    } else if (startsIdentifier()) {
        readIdentLike(token);
    } else {
        readMark(token);
    }
}

Token Tokeniser::next() {
    skipComments();
    Token token;
    token.begin = position_;
    if (has(0)) read(token);
    token.end = position_;
    return token;
}

std::vector<Token> tokenise(std::string_view source) {
    Tokeniser tokeniser(source);
    std::vector<Token> tokens;
    do {
        tokens.push_back(tokeniser.next());
    } while (!tokens.back().is(TokenKind::End));
    return tokens;
}

}  // namespace tenter::css
