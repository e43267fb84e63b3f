// Reading the imports of a stylesheet. CSS Cascade 5 § 2.
#include <optional>
#include <string>

#include "css/ascii.h"
#include "css/rules.h"
#include "css/token_cursor.h"

namespace tenter::css {

namespace {

class ImportReader {
public:
    explicit ImportReader(std::string_view source) : source_(source), cursor_(source) {}

    std::vector<Import> read(std::string_view& before) {
        std::vector<Import> imports;
        while (true) {
            while (cursor_.is(TokenKind::Whitespace) || cursor_.is(TokenKind::Cdo) ||
                   cursor_.is(TokenKind::Cdc))
                cursor_.step();
            if (!cursor_.is(TokenKind::AtKeyword)) break;
            const std::string name = lowered(cursor_.token().text);
            if (name != "import" && name != "charset" && name != "layer") break;
            const std::size_t begin = cursor_.token().begin;
            cursor_.step();
            std::optional<Import> import;
            if (name == "import") import = readOne();
            cursor_.skipUntil([](const Token& token) {
                return token.is(TokenKind::Semicolon) || token.is(TokenKind::OpenCurly);
            });
            // A block: `@layer base { … }` ends the part in which imports count.
            if (!cursor_.is(TokenKind::Semicolon) && !cursor_.is(TokenKind::End)) break;
            if (import) {
                before = source_.substr(0, begin);
                imports.push_back(std::move(*import));
            }
            cursor_.step();
        }
        return imports;
    }

private:
    // `url("a.css") layer(base) supports(display: grid) screen`. § 2.
    std::optional<Import> readOne() {
        Import import;
        cursor_.skipSpaces();
        if (cursor_.token().isFunction("url")) {
            cursor_.step();
            cursor_.skipSpaces();
            if (!cursor_.is(TokenKind::String)) return std::nullopt;
            import.address = cursor_.token().text;
            cursor_.skipUntil([](const Token& token) { return token.is(TokenKind::CloseRound); });
        } else if (cursor_.is(TokenKind::Url) || cursor_.is(TokenKind::String)) {
            import.address = cursor_.token().text;
        } else {
            return std::nullopt;
        }
        cursor_.step();
        cursor_.skipSpaces();
        if (cursor_.token().isIdent("layer")) {
            import.layer = "";
            cursor_.step();
        } else if (cursor_.token().isFunction("layer")) {
            import.layer = argument();
        }
        cursor_.skipSpaces();
        if (cursor_.token().isFunction("supports")) import.supports = argument();
        const std::size_t begin = cursor_.token().begin;
        cursor_.skipUntil([](const Token& token) { return token.is(TokenKind::Semicolon); });
        import.media = trimmed(source_.substr(begin, cursor_.token().begin - begin));
        return import;
    }

    std::string argument() {
        const std::size_t begin = cursor_.token().end;
        cursor_.skipBlock();
        const std::size_t end = cursor_.token().begin;
        const std::string_view inside = trimmed(source_.substr(begin, end - begin));
        return std::string(trimmed(inside.substr(0, inside.rfind(')'))));
    }

    std::string_view source_;
    TokenCursor cursor_;
};

}  // namespace

std::vector<Import> importsOf(std::string_view source, std::string_view& before) {
    before = {};
    return ImportReader(source).read(before);
}

}  // namespace tenter::css
