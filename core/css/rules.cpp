#include "css/rules.h"

#include <algorithm>
#include <utility>

#include "css/ascii.h"
#include "css/declaration_reader.h"
#include "css/layers.h"
#include "css/scopes.h"
#include "css/token_cursor.h"

namespace tenter::css {

namespace {

// The condition and the layer that the rules of an open at-rule depend on.
struct OpenBlock {
    std::optional<std::size_t> condition;
    std::optional<std::size_t> layer;
    std::optional<std::size_t> scope;  ///< index in the reader's scopes
};

std::optional<ConditionKind> conditionKind(std::string_view atRule) {
    if (atRule == "media") return ConditionKind::Media;
    if (atRule == "supports") return ConditionKind::Supports;
    if (atRule == "container") return ConditionKind::Container;
    return std::nullopt;
}

// The selectors of a nested rule with those of its outer rule in place of `&`. CSS Nesting 1 § 3.1.
std::string nestedSelectors(std::string_view outer, std::string_view nested) {
    const std::string parent = ":is(" + std::string(outer) + ")";
    std::string out;
    std::string one;
    bool named = false;
    bool relative = false;
    bool begins = true;
    bool first = true;
    std::vector<TokenKind> closers;
    const auto finish = [&] {
        // Without a selector the rule stays invalid, and is not one for the outer rule's elements.
        if (begins) one.clear();
        if (!begins && !(named && !relative)) one = parent + " " + one;
        out += (first ? "" : ", ") + one;
        first = false;
        one.clear();
        named = relative = false;
        begins = true;
    };
    for (const Token& token : tokenise(nested)) {
        if (token.is(TokenKind::End)) break;
        if (closers.empty() && token.is(TokenKind::Comma)) {
            finish();
            continue;
        }
        if (begins && token.is(TokenKind::Whitespace)) continue;
        if (begins) relative = token.isDelim('>') || token.isDelim('+') || token.isDelim('~');
        begins = false;
        if (const TokenKind closer = closerOf(token.kind); closer != TokenKind::End)
            closers.push_back(closer);
        else if (!closers.empty() && token.is(closers.back()))
            closers.pop_back();
        named = named || token.isDelim('&');
        one += token.isDelim('&') ? parent : std::string(nested.substr(token.begin, token.end - token.begin));
    }
    finish();
    return out;
}

class SheetReader {
public:
    void read(const SheetSource& source) {
        const bool isTooLong = source.css.size() > longestSheet - length_;
        source_ = isTooLong ? std::string_view() : source.css;
        length_ += source_.size();
        if (isTooLong)
            report(0,
                   "The stylesheets together are larger than " + std::to_string(longestSheet >> 20U) + " MB.",
                   "Leave out rules that the row does not need.");
        lines_.emplace(source_);
        cursor_.emplace(source_);
        blocks_.clear();
        if (enterConditions(source)) {
            outermost_ = blocks_.size();
            while (!at().is(TokenKind::End))
                readNext();
        }
        ++sources_;
    }

    Sheet sheet() {
        auto [layers, places] = layers_.ordered();
        sheet_.layers = std::move(layers);
        for (StyleRule& rule : sheet_.rules) {
            if (rule.layer) rule.layer = places[*rule.layer];
        }
        return std::move(sheet_);
    }

private:
    static constexpr std::size_t deepestBlock = 32;
    static constexpr std::size_t longestSelector = 100'000;

    [[nodiscard]] const TokenCursor& at() const { return *cursor_; }

    // The conditions and layers of a whole source; false if a layer has no valid name.
    bool enterConditions(const SheetSource& source) {
        OpenBlock block;
        for (const auto& [kind, text] : source.conditions) {
            sheet_.conditions.push_back({kind, text, block.condition});
            block.condition = sheet_.conditions.size() - 1;
        }
        for (const std::string& layer : source.layers) {
            block.layer = layers_.open(block.layer, layer);
            if (!block.layer) return false;
        }
        if (block.condition || block.layer) blocks_.push_back(block);
        return true;
    }

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
        const bool nested = blocks_.size() > outermost_;
        const TokenKind kind = cursor_->token().kind;
        const bool comment = kind == TokenKind::Cdo || kind == TokenKind::Cdc;
        if (kind == TokenKind::Whitespace || (comment && !nested)) {
            cursor_->step();
        } else if (kind == TokenKind::CloseCurly && nested) {
            blocks_.pop_back();
            cursor_->step();
        } else if (kind == TokenKind::AtKeyword) {
            readAtRule();
        } else {
            readRule(nested);
        }
    }

    // § 5.5.2.
    void readAtRule() {
        const Token keyword = cursor_->token();
        const std::string name = lowered(keyword.text);
        cursor_->step();
        const bool nested = blocks_.size() > outermost_;
        cursor_->skipUntil([nested](const Token& token) {
            return token.is(TokenKind::Semicolon) || token.is(TokenKind::OpenCurly) ||
                   (nested && token.is(TokenKind::CloseCurly));
        });
        const std::string_view prelude = trimmedOfComments(keyword.end, cursor_->token().begin);
        if (cursor_->is(TokenKind::OpenCurly)) {
            if (name == "property") {
                readProperty(prelude);
            } else if (const std::optional<OpenBlock> block = opened(name, prelude, keyword)) {
                blocks_.push_back(*block);
                cursor_->step();
            } else {
                cursor_->skipBlock();
            }
            return;
        }
        const bool statement = name == "layer" && !prelude.empty();
        if (!statement || !nameLayers(prelude))
            sheet_.skipped.push_back({name, lines_->lineOf(keyword.begin)});
        if (cursor_->is(TokenKind::Semicolon)) cursor_->step();
    }

    // CSS Properties and Values 1 § 2.
    void readProperty(std::string_view name) {
        cursor_->step();
        RegisteredProperty property{std::string(name), true, std::nullopt};
        for (const Declaration& declaration : declarationsInBlock()) {
            if (declaration.property == "inherits")
                property.inherits = !sameIgnoringCase(declaration.value, "false");
            if (declaration.property == "initial-value") property.initialValue = declaration.value;
        }
        if (name.starts_with("--")) sheet_.properties.push_back(std::move(property));
    }

    std::vector<Declaration> declarationsInBlock() {
        std::vector<Declaration> declarations;
        while (!at().is(TokenKind::End) && !at().is(TokenKind::CloseCurly)) {
            if (at().is(TokenKind::Whitespace) || at().is(TokenKind::Semicolon)) {
                cursor_->step();
                continue;
            }
            Declaration declaration;
            const auto outcome = readDeclaration(*cursor_, source_, true, declaration, sheet_.problems);
            if (outcome == DeclarationOutcome::Read) declarations.push_back(std::move(declaration));
            if (outcome == DeclarationOutcome::NotOne) {
                cursor_->skipUntil([](const Token& token) {
                    return token.is(TokenKind::Semicolon) || token.is(TokenKind::CloseCurly);
                });
            }
        }
        cursor_->step();
        return declarations;
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
        if (name == "scope" && blocks_.size() < deepestBlock) {
            Scope scope = scopeOf(prelude);
            if (!scope.root.empty()) {
                if (block.scope) scope.root = scopedSelectors(scopes_[*block.scope], scope.root);
                scopes_.push_back(std::move(scope));
                block.scope = scopes_.size() - 1;
                return block;
            }
        }
        if (!kind && name != "layer") {
            sheet_.skipped.push_back({name, lines_->lineOf(keyword.begin)});
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
        const Token first = cursor_->token();
        cursor_->skipUntil([nested](const Token& token) {
            return token.is(TokenKind::OpenCurly) || (nested && token.is(TokenKind::CloseCurly));
        });
        if (!cursor_->is(TokenKind::OpenCurly)) {
            report(first.begin, "The rule has no block.", "Write its declarations in { }, or remove it.");
            return;
        }
        const std::string_view prelude = trimmedOfComments(first.begin, cursor_->token().begin);
        if (looksLikeCustomProperty(prelude)) {
            report(first.begin, "A custom property with a block is outside any rule.",
                   "Write it inside a rule.");
            return cursor_->skipBlock();
        }
        std::optional<StyleRule> rule = ruleFor(first, std::string(prelude));
        if (!rule) return cursor_->skipBlock();
        cursor_->step();
        readStyleBlock(std::move(*rule), 1);
    }

    // A rule without declarations, under the conditions that are open now.
    std::optional<StyleRule> ruleFor(const Token& first, std::string selectors) {
        if (const std::optional<std::size_t> scope = enclosing().scope) {
            selectors = scopedSelectors(scopes_[*scope], selectors);
            if (selectors.size() > longestSelector) return std::nullopt;
        }
        std::optional<SelectorList> list = readSelectorsOf(first, selectors);
        if (!list) return std::nullopt;
        StyleRule rule;
        rule.selectors = std::move(*list);
        rule.selectorText = std::move(selectors);
        rule.source = sources_;
        rule.offset = first.begin;
        rule.line = lines_->lineOf(first.begin);
        return withConditions(std::move(rule));
    }

    [[nodiscard]] StyleRule withConditions(StyleRule rule) const {
        rule.condition = enclosing().condition;
        rule.layer = enclosing().layer;
        return rule;
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
        // The selectors of nested and scoped rules are not in the source, so their problems are at the rule.
        const bool isWritten = source_.substr(first.begin, prelude.size()) == prelude;
        for (Problem& problem : problems)
            report(isWritten ? problem.offset : first.begin, std::move(problem.what), std::move(problem.fix));
        return selectors;
    }

    // § 5.5.4, up to and with the closing brace. Declarations after a nested rule come after it in the
    // cascade. CSS Nesting 1 § 3.3.
    void readStyleBlock(StyleRule rule, std::size_t depth) {
        const StyleRule outer = rule;
        bool isFirst = true;
        const auto finish = [&] {
            if (isFirst || !rule.declarations.empty()) sheet_.rules.push_back(std::move(rule));
            isFirst = false;
            rule = outer;
        };
        while (!at().is(TokenKind::End) && !at().is(TokenKind::CloseCurly)) {
            Declaration declaration;
            if (at().is(TokenKind::Whitespace) || at().is(TokenKind::Semicolon)) {
                cursor_->step();
                continue;
            }
            if (!at().is(TokenKind::AtKeyword)) {
                const auto outcome = readDeclaration(*cursor_, source_, true, declaration, sheet_.problems);
                declaration.line = lines_->lineOf(declaration.offset);
                if (outcome == DeclarationOutcome::Read) rule.declarations.push_back(std::move(declaration));
                if (outcome != DeclarationOutcome::NotOne) continue;
            }
            const Token first = at().token();
            if (!reachesBlock(first)) continue;
            finish();
            if (depth + blocks_.size() >= deepestBlock) {
                report(first.begin, "Rules are nested more than 32 deep.", "Nest them less.");
                cursor_->skipBlock();
            } else if (first.is(TokenKind::AtKeyword)) {
                readNestedAtRule(outer, first, depth);
            } else {
                readNestedRule(outer, first, depth);
            }
        }
        cursor_->step();
        finish();
    }

    // Moves to the block of a nested rule; false, past it, for text that has none.
    bool reachesBlock(const Token& first) {
        cursor_->skipUntil([](const Token& token) {
            return token.is(TokenKind::OpenCurly) || token.is(TokenKind::Semicolon) ||
                   token.is(TokenKind::CloseCurly);
        });
        if (at().is(TokenKind::OpenCurly)) return true;
        if (first.is(TokenKind::AtKeyword))
            sheet_.skipped.push_back({lowered(first.text), lines_->lineOf(first.begin)});
        else
            report(first.begin, "This is not a declaration.", "Write a property, a colon and a value.");
        return false;
    }

    // Declarations directly in a nested condition are those of the outer rule. CSS Nesting 1 § 3.2.
    void readNestedAtRule(const StyleRule& outer, const Token& keyword, std::size_t depth) {
        const std::string_view prelude = trimmedOfComments(keyword.end, at().token().begin);
        const std::optional<OpenBlock> block = opened(lowered(keyword.text), prelude, keyword);
        if (!block) return cursor_->skipBlock();
        cursor_->step();
        blocks_.push_back(*block);
        readStyleBlock(withConditions(outer), depth + 1);
        blocks_.pop_back();
    }

    void readNestedRule(const StyleRule& outer, const Token& first, std::size_t depth) {
        const std::string_view prelude = trimmedOfComments(first.begin, at().token().begin);
        std::string selectors = nestedSelectors(outer.selectorText, prelude);
        if (selectors.size() > longestSelector) {
            report(first.begin, "The selector of the nested rule is too long.", "Nest it less.");
            return cursor_->skipBlock();
        }
        std::optional<StyleRule> rule = ruleFor(first, std::move(selectors));
        if (!rule) return cursor_->skipBlock();
        cursor_->step();
        readStyleBlock(std::move(*rule), depth + 1);
    }

    std::string_view source_;
    std::size_t sources_ = 0;
    std::size_t length_ = 0;  // of the sources, in bytes
    std::optional<Lines> lines_;
    std::optional<TokenCursor> cursor_;
    std::vector<OpenBlock> blocks_;
    std::size_t outermost_ = 0;  // how many of the blocks are conditions of the whole source
    LayerTree layers_;
    std::vector<Scope> scopes_;
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
    const SheetSource only{source};
    return readSheets({&only, 1});
}

Sheet readSheets(std::span<const SheetSource> sources) {
    SheetReader reader;
    for (const SheetSource& source : sources)
        reader.read(source);
    return reader.sheet();
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
