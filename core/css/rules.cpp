#include "css/rules.h"

#include <algorithm>
#include <utility>

#include "css/ascii.h"
#include "css/declaration_reader.h"
#include "css/layers.h"
#include "css/token_cursor.h"

namespace tenter::css {

namespace {

// The condition and the layer that the rules of an open at-rule depend on.
struct OpenBlock {
    std::optional<std::size_t> condition;
    std::optional<std::size_t> layer;
};

std::optional<ConditionKind> conditionKind(std::string_view atRule) {
    if (atRule == "media") return ConditionKind::Media;
    if (atRule == "supports") return ConditionKind::Supports;
    if (atRule == "container") return ConditionKind::Container;
    return std::nullopt;
}

class SheetReader {
public:
    explicit SheetReader(std::string_view source) : source_(source), lines_(source), cursor_(source) {}

    Sheet readSheet() {
        while (!cursor_.is(TokenKind::End))
            readNext();
        auto [layers, places] = layers_.ordered();
        sheet_.layers = std::move(layers);
        for (StyleRule& rule : sheet_.rules) {
            if (rule.layer) rule.layer = places[*rule.layer];
        }
        return std::move(sheet_);
    }

private:
    static constexpr std::size_t deepestBlock = 32;

    void report(std::size_t offset, std::string what, std::string fix) {
        addProblem(sheet_.problems, offset, std::move(what), std::move(fix));
    }
    [[nodiscard]] std::string_view between(std::size_t begin, std::size_t end) const {
        return source_.substr(begin, end - begin);
    }
    [[nodiscard]] OpenBlock enclosing() const { return blocks_.empty() ? OpenBlock() : blocks_.back(); }

    // § 5.5.1. The block of an at-rule contains only rules, as in the Candidate Recommendation of 2021
    // (§ 5.4.1) and in browsers. Newer drafts also read declarations there.
    void readNext() {
        const bool nested = !blocks_.empty();
        const TokenKind kind = cursor_.token().kind;
        const bool comment = kind == TokenKind::Cdo || kind == TokenKind::Cdc;
        if (kind == TokenKind::Whitespace || (comment && !nested)) {
            cursor_.step();
        } else if (kind == TokenKind::CloseCurly && nested) {
            blocks_.pop_back();
            cursor_.step();
        } else if (kind == TokenKind::AtKeyword) {
            readAtRule();
        } else {
            readRule(nested);
        }
    }

    // § 5.5.2.
    void readAtRule() {
        const Token keyword = cursor_.token();
        const std::string name = lowered(keyword.text);
        cursor_.step();
        const bool nested = !blocks_.empty();
        cursor_.skipUntil([nested](const Token& token) {
            return token.is(TokenKind::Semicolon) || token.is(TokenKind::OpenCurly) ||
                   (nested && token.is(TokenKind::CloseCurly));
        });
        const std::string_view prelude = trimmedOfComments(keyword.end, cursor_.token().begin);
        if (cursor_.is(TokenKind::OpenCurly)) {
            if (const std::optional<OpenBlock> block = opened(name, prelude, keyword)) {
                blocks_.push_back(*block);
                cursor_.step();
            } else {
                cursor_.skipBlock();
            }
            return;
        }
        const bool statement = name == "layer" && !prelude.empty();
        if (!statement || !nameLayers(prelude))
            sheet_.skipped.push_back({name, lines_.lineOf(keyword.begin)});
        if (cursor_.is(TokenKind::Semicolon)) cursor_.step();
    }

    // The text from the first token to the last, without comments and white space around them.
    [[nodiscard]] std::string_view trimmedOfComments(std::size_t begin, std::size_t end) const {
        Tokeniser tokeniser(source_.substr(0, end), begin);
        std::size_t first = end;
        std::size_t last = end;
        for (Token token = tokeniser.next(); !token.is(TokenKind::End); token = tokeniser.next()) {
            if (token.is(TokenKind::Whitespace)) continue;
            first = std::min(first, token.begin);
            last = token.end;
        }
        return between(first, first == end ? end : last);
    }

    // The open block of a condition or a layer; empty if the at-rule is skipped.
    std::optional<OpenBlock> opened(const std::string& name, std::string_view prelude, const Token& keyword) {
        OpenBlock block = enclosing();
        const std::optional<ConditionKind> kind = conditionKind(name);
        if (!kind && name != "layer") {
            sheet_.skipped.push_back({name, lines_.lineOf(keyword.begin)});
            return std::nullopt;
        }
        if (blocks_.size() == deepestBlock) {
            report(keyword.begin, "@" + name + " is nested more than 32 deep.", "Nest it less.");
            return std::nullopt;
        }
        if (kind) {
            sheet_.conditions.push_back({*kind, std::string(prelude), block.condition});
            block.condition = sheet_.conditions.size() - 1;
            return block;
        }
        block.layer = layers_.open(block.layer, prelude);
        if (block.layer) return block;
        report(keyword.begin, "The name of @layer is not valid.",
               "Write one name, such as base or base.type.");
        return std::nullopt;
    }

    // `@layer a, b.c;`. CSS Cascade 5 § 6.4.3.
    bool nameLayers(std::string_view prelude) {
        while (true) {
            const std::size_t comma = std::min(prelude.find(','), prelude.size());
            const std::string_view name = trimmed(prelude.substr(0, comma));
            if (name.empty() || !layers_.open(enclosing().layer, name)) return false;
            if (comma == prelude.size()) return true;
            prelude.remove_prefix(comma + 1);
        }
    }

    // § 5.5.3.
    void readRule(bool nested) {
        const Token first = cursor_.token();
        cursor_.skipUntil([nested](const Token& token) {
            return token.is(TokenKind::OpenCurly) || (nested && token.is(TokenKind::CloseCurly));
        });
        if (!cursor_.is(TokenKind::OpenCurly)) {
            report(first.begin, "The rule has no block.", "Write its declarations in { }, or remove it.");
            return;
        }
        const std::string_view prelude = trimmedOfComments(first.begin, cursor_.token().begin);
        if (looksLikeCustomProperty(prelude)) {
            report(first.begin, "A custom property with a block is outside any rule.",
                   "Write it inside a rule.");
            return cursor_.skipBlock();
        }
        std::optional<SelectorList> selectors = readSelectorsOf(first, prelude);
        if (!selectors) return cursor_.skipBlock();
        StyleRule rule;
        rule.selectors = std::move(*selectors);
        rule.selectorText = prelude;
        rule.condition = enclosing().condition;
        rule.layer = enclosing().layer;
        rule.offset = first.begin;
        rule.line = lines_.lineOf(first.begin);
        cursor_.step();
        readDeclarations(rule.declarations);
        sheet_.rules.push_back(std::move(rule));
    }

    // § 5.5.3: without this `--tide:hover {` would be a rule.
    static bool looksLikeCustomProperty(std::string_view prelude) {
        if (!prelude.starts_with("--")) return false;
        TokenCursor cursor(prelude);
        cursor.step();
        cursor.skipSpaces();
        return cursor.is(TokenKind::Colon);
    }

    std::optional<SelectorList> readSelectorsOf(const Token& first, std::string_view prelude) {
        Problems problems;
        std::optional<SelectorList> selectors = readSelectors(prelude, problems, first.begin);
        for (Problem& problem : problems)
            report(problem.offset, std::move(problem.what), std::move(problem.fix));
        return selectors;
    }

    // § 5.5.4, up to and with the closing brace.
    void readDeclarations(std::vector<Declaration>& declarations) {
        while (!cursor_.is(TokenKind::End) && !cursor_.is(TokenKind::CloseCurly)) {
            Declaration declaration;
            if (cursor_.is(TokenKind::Whitespace) || cursor_.is(TokenKind::Semicolon)) {
                cursor_.step();
            } else if (cursor_.is(TokenKind::AtKeyword)) {
                skipNested();
            } else {
                const auto outcome = readDeclaration(cursor_, source_, true, declaration, sheet_.problems);
                if (outcome == DeclarationOutcome::NotOne) skipNested();
                declaration.line = lines_.lineOf(declaration.offset);
                if (outcome == DeclarationOutcome::Read) declarations.push_back(std::move(declaration));
            }
        }
        cursor_.step();
    }

    // Skips a nested rule, or text that is neither a rule nor a declaration.
    void skipNested() {
        const Token first = cursor_.token();
        if (first.is(TokenKind::AtKeyword)) {
            sheet_.skipped.push_back({lowered(first.text), lines_.lineOf(first.begin)});
        }
        cursor_.skipUntil([](const Token& token) {
            return token.is(TokenKind::OpenCurly) || token.is(TokenKind::Semicolon) ||
                   token.is(TokenKind::CloseCurly);
        });
        if (cursor_.is(TokenKind::OpenCurly)) {
            report(first.begin, "The rule is nested in another rule; nested rules are not read.",
                   "Write it as a separate rule.");
            cursor_.skipBlock();
        } else if (!first.is(TokenKind::AtKeyword)) {
            report(first.begin, "This is not a declaration.", "Write a property, a colon and a value.");
        }
    }

    std::string_view source_;
    Lines lines_;
    TokenCursor cursor_;
    std::vector<OpenBlock> blocks_;
    LayerTree layers_;
    Sheet sheet_;
};

}  // namespace

std::vector<const Condition*> Sheet::conditionsOf(const StyleRule& rule) const {
    std::vector<const Condition*> result;
    for (std::optional<std::size_t> each = rule.condition; each; each = conditions[*each].parent)
        result.push_back(&conditions[*each]);
    std::ranges::reverse(result);
    return result;
}

Sheet readSheet(std::string_view source) {
    return SheetReader(source).readSheet();
}

std::vector<Declaration> readDeclarations(std::string_view source, Problems& problems) {
    const Lines lines(source);
    TokenCursor cursor(source);
    std::vector<Declaration> declarations;
    while (!cursor.is(TokenKind::End)) {
        if (cursor.is(TokenKind::Whitespace) || cursor.is(TokenKind::Semicolon)) {
            cursor.step();
            continue;
        }
        Declaration declaration;
        const std::size_t begin = cursor.token().begin;
        const auto outcome = readDeclaration(cursor, source, false, declaration, problems);
        if (outcome == DeclarationOutcome::NotOne) {
            addProblem(problems, begin, "This is not a declaration.",
                       "Write a property, a colon and a value.");
            cursor.skipUntil([](const Token& token) { return token.is(TokenKind::Semicolon); });
        }
        declaration.line = lines.lineOf(declaration.offset);
        if (outcome == DeclarationOutcome::Read) declarations.push_back(std::move(declaration));
    }
    return declarations;
}

}  // namespace tenter::css
