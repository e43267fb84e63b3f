// Reads selector lists. Selectors 4 § 18.
#include <cstdint>
#include <utility>

#include "css/ascii.h"
#include "css/nth.h"
#include "css/pseudo_names.h"
#include "css/selectors.h"
#include "css/tokens.h"

namespace tenter::css {

namespace {

constexpr int deepestSelector = 32;
constexpr std::size_t longestList = 1'000'000;

class SelectorReader {
public:
    SelectorReader(std::string_view text, Problems& problems, std::size_t offset)
        : text_(text), problems_(problems), offset_(offset), tokens_(tokenise(text)) {}

    std::optional<SelectorList> read() {
        std::optional<SelectorList> list = readList(false);
        if (list && !token().is(TokenKind::End))
            return wrong("\"" + written(token()) + "\" follows the end of the selector.", "Remove it.");
        return list;
    }

private:
    [[nodiscard]] const Token& token() const { return tokens_[at_]; }
    [[nodiscard]] const Token& following() const {
        return tokens_[at_ + (token().is(TokenKind::End) ? 0 : 1)];
    }
    [[nodiscard]] std::string written(const Token& token) const {
        return std::string(text_.substr(token.begin, std::min<std::size_t>(token.end - token.begin, 40)));
    }
    void step() {
        if (!token().is(TokenKind::End)) ++at_;
    }
    bool skipSpaces() {
        const bool any = token().is(TokenKind::Whitespace);
        if (any) ++at_;
        // There are two white-space tokens in a row around a comment.
        while (token().is(TokenKind::Whitespace))
            ++at_;
        return any;
    }
    std::nullopt_t wrong(std::string what, std::string fix) {
        problems_.push_back({offset_ + token().begin, std::move(what), std::move(fix)});
        return std::nullopt;
    }
    std::nullopt_t unexpected(const std::string& wanted) {
        const std::string expected = "Expected " + wanted;
        if (token().is(TokenKind::End))
            return wrong(expected + ", but the text ends.", "Add " + wanted + ".");
        return wrong(expected + ", but found \"" + written(token()) + "\".", "Write " + wanted + " here.");
    }

    [[nodiscard]] bool endsList() const {
        return token().is(TokenKind::End) || token().is(TokenKind::CloseRound);
    }

    std::optional<SelectorList> readList(bool relative) {
        SelectorList list;
        while (true) {
            std::optional<Complex> selector = readComplex(relative);
            if (!selector) return std::nullopt;
            list.push_back(std::move(*selector));
            if (!token().is(TokenKind::Comma)) return list;
            step();
        }
    }

    // Selectors 4 § 18.1, parse a forgiving selector list.
    SelectorList readForgivingList() {
        SelectorList list;
        skipSpaces();
        while (!endsList()) {
            const std::size_t start = at_;
            std::optional<Complex> selector = readComplex(false);
            const bool whole = selector && (endsList() || token().is(TokenKind::Comma));
            if (selector && !whole) unexpected("a comma");
            if (whole) {
                list.push_back(std::move(*selector));
            } else {
                at_ = start;
                skipToComma();
            }
            if (token().is(TokenKind::Comma)) step();
        }
        return list;
    }

    void skipToComma() {
        std::string closers;
        for (; !token().is(TokenKind::End); ++at_) {
            const TokenKind kind = token().kind;
            if (closers.empty() && (kind == TokenKind::Comma || kind == TokenKind::CloseRound)) return;
            if (kind == TokenKind::OpenRound || kind == TokenKind::Function) closers += ')';
            if (kind == TokenKind::OpenSquare) closers += ']';
            if (kind == TokenKind::OpenCurly) closers += '}';
            if (!closers.empty() && text_[token().end - 1] == closers.back() &&
                token().end - token().begin == 1)
                closers.pop_back();
        }
    }

    std::optional<Combinator> readCombinator(bool spaces) {
        std::optional<Combinator> combinator;
        if (token().isDelim('>')) combinator = Combinator::Child;
        if (token().isDelim('+')) combinator = Combinator::NextSibling;
        if (token().isDelim('~')) combinator = Combinator::SubsequentSibling;
        if (combinator) {
            step();
            skipSpaces();
            return combinator;
        }
        if (!spaces || endsList() || token().is(TokenKind::Comma)) return std::nullopt;
        return Combinator::Descendant;
    }

    std::optional<Complex> readComplex(bool relative) {
        Complex selector;
        skipSpaces();
        selector.begin = offset_ + token().begin;
        std::optional<Combinator> combinator = Combinator::Descendant;
        if (relative) combinator = readCombinator(true);
        if (!combinator) return unexpected("a selector");
        while (combinator) {
            if (!selector.compounds.empty() && !selector.compounds.back().pseudoElements.empty())
                return wrong("The selector continues after a pseudo-element.",
                             "Write the pseudo-element last.");
            std::optional<Compound> compound = readCompound();
            if (!compound) return std::nullopt;
            compound->combinator = *combinator;
            selector.compounds.push_back(std::move(*compound));
            selector.end = offset_ + tokens_[at_ - 1].end;
            const bool spaces = skipSpaces();
            combinator = readCombinator(spaces);
        }
        return selector;
    }

    std::optional<Compound> readCompound() {
        Compound compound;
        const std::size_t start = at_;
        if (token().is(TokenKind::Ident) || token().isDelim('*') || token().isDelim('|')) {
            std::optional<Simple> type = readType();
            if (!type) return std::nullopt;
            compound.simples.push_back(std::move(*type));
        }
        while (true) {
            const std::size_t before = at_;
            if (!readFurther(compound)) return std::nullopt;
            if (at_ == before) break;
        }
        if (at_ == start) return unexpected("a selector");
        return compound;
    }

    // One more condition of a compound. True as well if there is none.
    bool readFurther(Compound& compound) {
        const bool isPseudo = token().is(TokenKind::Colon);
        const bool starts = isPseudo || token().is(TokenKind::Hash) || token().is(TokenKind::OpenSquare) ||
                            token().isDelim('.');
        if (!starts) return true;
        if (isPseudo) return readPseudo(compound);
        if (!compound.pseudoElements.empty()) {
            wrong("A condition follows a pseudo-element.", "Write it before the pseudo-element.");
            return false;
        }
        std::optional<Simple> simple = token().is(TokenKind::OpenSquare) ? readAttribute() : readNamed();
        if (!simple) return false;
        compound.simples.push_back(std::move(*simple));
        return true;
    }

    std::optional<Simple> readType() {
        if (!readPrefix()) return std::nullopt;
        Simple simple;
        if (token().is(TokenKind::Ident)) {
            simple.kind = SimpleKind::Type;
            simple.name = token().text;
        } else if (!token().isDelim('*')) {
            return unexpected("a type");
        }
        step();
        return simple;
    }

    // `*|` means any namespace, which is the same as no prefix. § 5.2.
    bool readPrefix() {
        if (token().isDelim('|')) {
            wrong("A selector for elements without a namespace matches nothing in HTML.", "Remove the |.");
            return false;
        }
        const bool named = following().isDelim('|') && at_ + 2 < tokens_.size() &&
                           (tokens_[at_ + 2].is(TokenKind::Ident) || tokens_[at_ + 2].isDelim('*'));
        if (!named) return true;
        if (!token().isDelim('*')) {
            wrong("The namespace \"" + token().text + "\" is not known.", "Remove it and the |.");
            return false;
        }
        at_ += 2;
        return true;
    }

    std::optional<Simple> readNamed() {
        Simple simple;
        simple.kind = SimpleKind::Id;
        if (token().isDelim('.')) {
            step();
            simple.kind = SimpleKind::Class;
            if (!token().is(TokenKind::Ident)) return unexpected("a class name");
        } else if (!token().flag) {
            return wrong("\"" + written(token()) + "\" is not an id: an id cannot start with a digit.",
                         "Escape the digit, such as #\\31 0 for #10.");
        }
        simple.name = token().text;
        step();
        return simple;
    }

    std::optional<Comparison> readComparison() {
        constexpr std::string_view marks = "~|^$*";
        if (token().isDelim('=')) {
            step();
            return Comparison::Equals;
        }
        const std::size_t mark = token().is(TokenKind::Delim) ? marks.find(token().text[0]) : marks.npos;
        if (mark == std::string_view::npos || !following().isDelim('='))
            return unexpected("one of = ~= |= ^= $= *= or ]");
        at_ += 2;
        return static_cast<Comparison>(static_cast<int>(Comparison::Includes) + static_cast<int>(mark));
    }

    std::optional<Simple> readAttribute() {
        Simple simple;
        simple.kind = SimpleKind::Attribute;
        step();
        skipSpaces();
        if (token().isDelim('*') && following().isDelim('|')) at_ += 2;
        if (!token().is(TokenKind::Ident)) return unexpected("the name of an attribute");
        simple.name = lowered(token().text);
        step();
        skipSpaces();
        if (!endsAttribute()) {
            const std::optional<Comparison> comparison = readComparison();
            if (!comparison) return std::nullopt;
            simple.comparison = *comparison;
            skipSpaces();
            if (!token().is(TokenKind::Ident) && !token().is(TokenKind::String))
                return unexpected("the value of the attribute");
            simple.value = token().text;
            step();
            skipSpaces();
            if (token().isIdent("i") || token().isIdent("s")) {
                simple.ignoresCase = token().isIdent("i");
                step();
                skipSpaces();
            }
        }
        if (!endsAttribute()) return unexpected("]");
        step();
        return simple;
    }

    [[nodiscard]] bool endsAttribute() const {
        return token().is(TokenKind::CloseSquare) || token().is(TokenKind::End);
    }

    bool readPseudo(Compound& compound) {
        step();
        const bool two = token().is(TokenKind::Colon);
        if (two) step();
        const bool function = token().is(TokenKind::Function);
        if (!function && !token().is(TokenKind::Ident)) {
            unexpected("a pseudo-class or pseudo-element");
            return false;
        }
        const std::string name = lowered(token().text);
        if (two || (!function && isOldPseudoElement(name)))
            return readPseudoElement(compound, name, function);
        std::optional<Simple> simple = readPseudoClass(name, function);
        if (!simple) return false;
        if (compound.pseudoElements.empty()) {
            compound.simples.push_back(std::move(*simple));
            return true;
        }
        // § 3.6.3: a dynamic pseudo-class can follow a pseudo-element.
        if (!simple->dynamic) {
            wrong("The pseudo-class :" + name + " follows a pseudo-element.",
                  "Write it before the pseudo-element.");
            return false;
        }
        compound.simples.push_back(std::move(*simple));
        return true;
    }

    bool readPseudoElement(Compound& compound, const std::string& name, bool function) {
        if (!isPseudoElement(name, function)) {
            wrong("The pseudo-element ::" + name + (function ? "()" : "") + " is not known.",
                  "Remove this selector.");
            return false;
        }
        if (depth_ > 0) {
            wrong("The pseudo-element ::" + name + " is inside parentheses.",
                  "Write it at the end of the selector.");
            return false;
        }
        step();
        PseudoElement element{name, {}};
        if (function) {
            const std::size_t from = token().begin;
            int open = 1;
            for (; !token().is(TokenKind::End); ++at_) {
                if (token().is(TokenKind::OpenRound) || token().is(TokenKind::Function)) ++open;
                if (token().is(TokenKind::CloseRound) && --open == 0) break;
            }
            element.argument = std::string(trimmed(text_.substr(from, token().begin - from)));
            step();
        }
        compound.pseudoElements.push_back(std::move(element));
        return true;
    }

    std::optional<Simple> readPseudoClass(const std::string& name, bool function) {
        const std::optional<PseudoForm> form = pseudoClassForm(name, function);
        if (!form)
            return wrong("The pseudo-class :" + name + (function ? "()" : "") + " is not known.",
                         "Remove this selector.");
        Simple simple;
        simple.kind = SimpleKind::PseudoClass;
        simple.name = name;
        simple.dynamic = form == PseudoForm::Dynamic || form == PseudoForm::DynamicWords;
        if (function && depth_ == deepestSelector)
            return wrong("Selectors are nested more than 32 deep.", "Nest them less.");
        step();
        if (!function) return simple;
        ++depth_;
        const bool read = readArguments(*form, simple);
        --depth_;
        if (!read) return std::nullopt;
        skipSpaces();
        if (!endsList()) return unexpected(")");
        step();
        return simple;
    }

    bool readArguments(PseudoForm form, Simple& simple) {
        switch (form) {
            case PseudoForm::Forgiving:
                simple.arguments = readForgivingList();
                return true;
            case PseudoForm::Selectors:
                return setArguments(readList(false), simple);
            case PseudoForm::Relative: {
                if (inHas_) {
                    wrong(":has() is inside :has().", "Remove the inner one.");
                    return false;
                }
                inHas_ = true;
                const bool read = setArguments(readList(true), simple);
                inHas_ = false;
                return read;
            }
            case PseudoForm::Nth:
            case PseudoForm::NthOfType:
                return readNthArgument(form == PseudoForm::Nth, simple);
            case PseudoForm::Words:
            case PseudoForm::DynamicWords:
                return readWords(simple);
            case PseudoForm::Plain:
            case PseudoForm::Dynamic:
                break;
        }
        return true;
    }

    static bool setArguments(std::optional<SelectorList> list, Simple& simple) {
        if (list) simple.arguments = std::move(*list);
        return list.has_value();
    }

    bool readNthArgument(bool mayHaveOf, Simple& simple) {
        std::string formula;
        const std::size_t start = at_;
        for (; !endsList() && !token().isIdent("of"); ++at_)
            formula += token().is(TokenKind::Whitespace)
                           ? " "
                           : text_.substr(token().begin, token().end - token().begin);
        const std::optional<Nth> nth = readNth(formula);
        if (!nth) {
            at_ = start;
            wrong("\"" + formula.substr(0, 40) + "\" is not a position.",
                  "Write a position such as 2n + 1, 3, odd or even.");
            return false;
        }
        simple.nth = *nth;
        if (endsList()) return true;
        if (!mayHaveOf) {
            unexpected(")");
            return false;
        }
        step();
        return setArguments(readList(false), simple);
    }

    bool readWords(Simple& simple) {
        while (true) {
            skipSpaces();
            if (!token().is(TokenKind::Ident) && !token().is(TokenKind::String)) {
                unexpected("a word");
                return false;
            }
            simple.words.push_back(token().text);
            step();
            skipSpaces();
            if (!token().is(TokenKind::Comma)) return true;
            step();
        }
    }

    std::string_view text_;
    Problems& problems_;
    std::size_t offset_;
    std::vector<Token> tokens_;
    std::size_t at_ = 0;
    int depth_ = 0;
    bool inHas_ = false;
};

}  // namespace

std::optional<SelectorList> readSelectors(std::string_view text, Problems& problems, std::size_t offset) {
    if (text.size() > longestList) {
        problems.push_back(
            {offset, "The selector list is longer than a million bytes.", "Split it into several rules."});
        return std::nullopt;
    }
    Problems own;
    std::optional<SelectorList> list = SelectorReader(text, own, offset).read();
    // If the list as a whole is invalid, selectors that :is() dropped do not matter.
    if (!list && own.size() > 1) own.erase(own.begin(), own.end() - 1);
    problems.insert(problems.end(), own.begin(), own.end());
    return list;
}

}  // namespace tenter::css
