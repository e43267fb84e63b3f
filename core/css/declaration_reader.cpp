#include "css/declaration_reader.h"

#include <array>
#include <utility>

#include "css/ascii.h"

namespace tenter::css {

namespace {

// What a scan of the tokens of a value found. Positions are bytes of the source.
struct ValueScan {
    std::size_t end = 0;          // end of the last token that is not white space
    std::size_t exclamation = 0;  // end of the last `!`
    std::size_t beforeMark = 0;   // end of the value before the last `!`
    int exclamations = 0;
    bool important = false;  // the value ends with `!important`
    bool empty = true;
    const char* fault = nullptr;  // the problem that makes the value invalid
};

class ValueScanner {
public:
    ValueScanner(TokenCursor& cursor, bool inBlock, bool custom)
        : cursor_(cursor), inBlock_(inBlock), custom_(custom) {}

    // False if a block shows that this is a rule, not a declaration.
    bool scan(ValueScan& found) {
        std::vector<TokenKind> closers;
        while (!cursor_.is(TokenKind::End)) {
            const Token& token = cursor_.token();
            if (closers.empty() && ends(token)) break;
            const bool block = closers.empty() && token.is(TokenKind::OpenCurly) && !custom_;
            if (block) {
                if (!found.empty) return false;
                cursor_.skipBlock();
                cursor_.skipSpaces();
                found.empty = false;
                found.fault = "The value is a block";
                return cursor_.is(TokenKind::End) || ends(cursor_.token());
            }
            if (!token.is(TokenKind::Whitespace)) add(token, closers, found);
            cursor_.step();
        }
        return true;
    }

private:
    [[nodiscard]] bool ends(const Token& token) const {
        return token.is(TokenKind::Semicolon) || (inBlock_ && token.is(TokenKind::CloseCurly));
    }

    static void add(const Token& token, std::vector<TokenKind>& closers, ValueScan& found) {
        if (closers.empty() && token.isDelim('!')) {
            ++found.exclamations;
            found.exclamation = token.end;
            found.beforeMark = found.end;
            found.important = false;
        } else {
            // Only white space is allowed between the two.
            found.important =
                found.exclamations > 0 && found.end == found.exclamation && token.isIdent("important");
        }
        if (token.is(TokenKind::BadString)) found.fault = "A string does not end on its line";
        if (token.is(TokenKind::BadUrl)) found.fault = "The url() is not valid";
        if (const TokenKind closer = closerOf(token.kind); closer != TokenKind::End) {
            closers.push_back(closer);
        } else if (!closers.empty() && token.is(closers.back())) {
            closers.pop_back();
        } else if (token.is(TokenKind::CloseRound) || token.is(TokenKind::CloseSquare) ||
                   token.is(TokenKind::CloseCurly)) {
            found.fault = "A closing bracket has no opening bracket";
        }
        found.empty = false;
        found.end = token.end;
    }

    TokenCursor& cursor_;
    bool inBlock_;
    bool custom_;
};

}  // namespace

void addProblem(Problems& problems, std::size_t offset, std::string what, std::string fix) {
    constexpr std::size_t mostProblems = 1000;
    if (problems.size() < mostProblems) problems.push_back({offset, std::move(what), std::move(fix)});
}

DeclarationOutcome readDeclaration(TokenCursor& cursor, std::string_view source, bool inBlock,
                                   Declaration& declaration, Problems& problems) {
    const Token name = cursor.token();
    const auto notOne = [&] {
        cursor.returnTo(name);
        return DeclarationOutcome::NotOne;
    };
    if (!name.is(TokenKind::Ident)) return notOne();
    cursor.step();
    cursor.skipSpaces();
    if (!cursor.is(TokenKind::Colon)) return notOne();
    cursor.step();
    cursor.skipSpaces();

    const bool custom = name.text.starts_with("--");
    declaration.property = custom ? name.text : lowered(name.text);
    declaration.offset = name.begin;
    declaration.valueOffset = cursor.token().begin;
    ValueScan found;
    found.end = found.beforeMark = declaration.valueOffset;
    if (!ValueScanner(cursor, inBlock, custom).scan(found)) return notOne();

    declaration.important = found.important;
    const std::size_t end = found.important ? found.beforeMark : found.end;
    const bool marked = found.exclamations > (found.important ? 1 : 0);
    if (!found.fault && marked) found.fault = "The value contains a !";
    if (!found.fault && end == declaration.valueOffset && !custom) found.fault = "The value is missing";
    if (found.fault) {
        addProblem(problems, name.begin,
                   std::string(found.fault) + " in the declaration of " + declaration.property + ".",
                   "Correct the declaration, or remove it.");
        return DeclarationOutcome::Dropped;
    }
    declaration.value = source.substr(declaration.valueOffset, end - declaration.valueOffset);
    return DeclarationOutcome::Read;
}

}  // namespace tenter::css
