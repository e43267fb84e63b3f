#include "intake/font_size_value.h"

#include <utility>
#include <vector>

#include "css/rules.h"
#include "css/token_cursor.h"

namespace tenter::intake {

namespace {

using css::Declaration;
using css::Problems;
using css::TokenCursor;
using css::TokenKind;

std::nullopt_t refuse(Problems& problems, std::size_t offset, std::string what, std::string fix) {
    problems.push_back({offset, std::move(what), std::move(fix)});
    return std::nullopt;
}

bool contains(std::string_view text, TokenKind kind) {
    TokenCursor cursor(text);
    cursor.skipUntil([kind](const css::Token& token) { return token.is(kind); });
    return !cursor.is(TokenKind::End);
}

const Declaration* winner(const std::vector<Declaration>& declarations) {
    const Declaration* best = nullptr;
    for (const Declaration& each : declarations) {
        if (each.property != "font-size" && each.property != "font") continue;
        if (!best || each.important || !best->important) best = &each;
    }
    return best;
}

// The size in a `font` value such as `italic 700 1rem/1.4 serif`: the first length, percentage or
// calculation. Weights have no unit; an angle follows `oblique`.
std::optional<FontSizeValue> sizeInFont(const Declaration& declaration, Problems& problems) {
    TokenCursor cursor(declaration.value);
    bool oblique = false;
    for (cursor.skipSpaces(); !cursor.is(TokenKind::End); cursor.skipSpaces()) {
        const css::Token token = cursor.token();
        const bool length = token.is(TokenKind::Dimension) || token.is(TokenKind::Percentage);
        const bool function = token.is(TokenKind::Function);
        if (token.is(TokenKind::Comma) || token.isDelim('/')) break;
        if (function) {
            TokenCursor inside = cursor;
            inside.step();
            inside.skipUntil([](const css::Token& each) { return each.is(TokenKind::CloseRound); });
            const std::size_t end = inside.token().end;
            return FontSizeValue{declaration.value.substr(token.begin, end - token.begin),
                                 declaration.valueOffset + token.begin};
        }
        if (length && !oblique)
            return FontSizeValue{declaration.value.substr(token.begin, token.end - token.begin),
                                 declaration.valueOffset + token.begin};
        oblique = token.isIdent("oblique");
        cursor.step();
    }
    return refuse(problems, declaration.valueOffset, "The font declaration has no size that is a length.",
                  "Write the size as a length, such as font: 1rem/1.4 serif.");
}

std::optional<FontSizeValue> sizeOf(const Declaration& declaration, Problems& problems) {
    if (declaration.property == "font") return sizeInFont(declaration, problems);
    return FontSizeValue{declaration.value, declaration.valueOffset};
}

std::optional<FontSizeValue> findInRules(std::string_view pasted, Problems& problems) {
    const css::Sheet sheet = css::readSheet(pasted);
    const Declaration* found = nullptr;
    for (const css::StyleRule& rule : sheet.rules) {
        const Declaration* here = winner(rule.declarations);
        if (!here) continue;
        if (found)
            return refuse(problems, here->offset, "More than one rule sets the font size.",
                          "Paste only one of the rules.");
        found = here;
    }
    if (found) return sizeOf(*found, problems);
    if (!sheet.problems.empty()) {
        problems.push_back(sheet.problems.front());
        return std::nullopt;
    }
    return refuse(problems, 0, "No rule sets the font size.",
                  "Paste a rule with font-size, or the value alone.");
}

std::optional<FontSizeValue> findInDeclarations(std::string_view pasted, Problems& problems) {
    Problems own;
    const std::vector<Declaration> declarations = css::readDeclarations(pasted, own);
    if (const Declaration* found = winner(declarations)) return sizeOf(*found, problems);
    if (!own.empty()) {
        problems.push_back(own.front());
        return std::nullopt;
    }
    return refuse(problems, 0, "No declaration sets the font size.",
                  "Paste font-size with its value, or the value alone.");
}

std::optional<FontSizeValue> findAlone(std::string_view pasted, Problems& problems) {
    // Read as a declaration, so that `;` and `!important` can follow.
    const std::string before = "font-size:";
    Problems own;
    const std::vector<Declaration> declarations = css::readDeclarations(before + std::string(pasted), own);
    const auto placed = [&](std::size_t offset) {
        return offset < before.size() ? 0 : offset - before.size();
    };
    if (!own.empty()) {
        problems.push_back({placed(own.front().offset), own.front().what, own.front().fix});
        return std::nullopt;
    }
    return FontSizeValue{declarations.front().value, placed(declarations.front().valueOffset)};
}

}  // namespace

std::optional<FontSizeValue> findFontSize(std::string_view pasted, Problems& problems) {
    if (contains(pasted, TokenKind::OpenCurly)) return findInRules(pasted, problems);
    if (contains(pasted, TokenKind::Colon)) return findInDeclarations(pasted, problems);
    return findAlone(pasted, problems);
}

}  // namespace tenter::intake
