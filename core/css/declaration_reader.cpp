#include "css/declaration_reader.h"

#include <array>
#include <utility>

#include "css/ascii.h"

namespace tenter::css {

namespace {

// What the value's tokens come to.
struct ValueScan {
    std::size_t end = 0;          // of the last token that counts
    std::size_t exclamation = 0;  // where the last `!` stands
    std::size_t beforeMark = 0;   // the end of what stands before it
    int exclamations = 0;
    bool important = false;  // `!important` is what stands last
    bool empty = true;
    const char* fault = nullptr;  // what no value may hold
};

class ValueScanner {
public:
    ValueScanner(TokenCursor& cursor, bool inBlock, bool custom)
        : cursor_(cursor), inBlock_(inBlock), custom_(custom) {}

    // False if a block shows that this is no declaration but a rule.
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
                found.fault = "a block stands as a value";
                return cursor_.is(TokenKind::End) || ends(cursor_.token());
            }
            if (!token.is(TokenKind::Whitespace)) take(token, closers, found);
            cursor_.step();
        }
        return true;
    }

private:
    [[nodiscard]] bool ends(const Token& token) const {
        return token.is(TokenKind::Semicolon) || (inBlock_ && token.is(TokenKind::CloseCurly));
    }

    static void take(const Token& token, std::vector<TokenKind>& closers, ValueScan& found) {
        if (closers.empty() && token.isDelim('!')) {
            ++found.exclamations;
            found.exclamation = token.end;
            found.beforeMark = found.end;
            found.important = false;
        } else {
            // Only white space may stand between the two.
            found.important =
                found.exclamations > 0 && found.end == found.exclamation && token.isIdent("important");
        }
        if (token.is(TokenKind::BadString)) found.fault = "a string is not closed on its line";
        if (token.is(TokenKind::BadUrl)) found.fault = "an address is broken";
        if (const TokenKind closer = closerOf(token.kind); closer != TokenKind::End) {
            closers.push_back(closer);
        } else if (!closers.empty() && token.is(closers.back())) {
            closers.pop_back();
        } else if (token.is(TokenKind::CloseRound) || token.is(TokenKind::CloseSquare) ||
                   token.is(TokenKind::CloseCurly)) {
            found.fault = "a bracket is closed that is not open";
        }
        found.empty = false;
        found.end = token.end;
    }

    TokenCursor& cursor_;
    bool inBlock_;
    bool custom_;
};

}  // namespace

void tellOf(Problems& problems, std::size_t offset, std::string what, std::string mend) {
    constexpr std::size_t mostProblems = 1000;
    if (problems.size() < mostProblems) problems.push_back({offset, std::move(what), std::move(mend)});
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
    if (!found.fault && marked) found.fault = "a ! stands in the value";
    if (!found.fault && end == declaration.valueOffset && !custom) found.fault = "the value is missing";
    if (found.fault) {
        tellOf(problems, name.begin, declaration.property + ": " + found.fault,
               "mend the value, or leave it out");
        return DeclarationOutcome::Dropped;
    }
    declaration.value = source.substr(declaration.valueOffset, end - declaration.valueOffset);
    return DeclarationOutcome::Read;
}

}  // namespace tenter::css
