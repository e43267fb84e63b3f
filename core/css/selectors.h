// Selectors as parsed. Selectors 4.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <tuple>
#include <vector>

#include "css/places.h"

namespace tenter::css {

struct Complex;
/// Selectors separated by commas.
using SelectorList = std::vector<Complex>;

/// The relation of a compound to the one before it. § 15.
enum class Combinator { Descendant, Child, NextSibling, SubsequentSibling };

/// The comparison of an attribute selector: `[a]`, `[a=b]`, `[a~=b]`, `[a|=b]`, `[a^=b]`, `[a$=b]`, `[a*=b]`.
/// § 6.
enum class Comparison { Exists, Equals, Includes, DashMatches, StartsWith, EndsWith, Contains };

/// `An+B`: every `step`th element from the `offset`th. CSS Syntax 3 § 6.
struct Nth {
    int step = 0;
    int offset = 0;
    friend bool operator==(const Nth&, const Nth&) = default;
};

enum class SimpleKind { Universal, Type, Class, Id, Attribute, PseudoClass };

/// A simple selector: one condition on an element.
struct Simple {
    SimpleKind kind = SimpleKind::Universal;
    std::string name;  ///< lower case for attributes and pseudo-classes, else as written
    Comparison comparison = Comparison::Exists;
    std::string value;                ///< the value that the attribute is compared with
    std::optional<bool> ignoresCase;  ///< true for `i`, false for `s`, empty if neither is written
    Nth nth;                          ///< of :nth-…()
    SelectorList arguments;           ///< of :is(), :where(), :not(), :has(), and after `of`
    std::vector<std::string> words;   ///< of :lang(), :dir(), :state()
    /// True for a condition that depends on what the reader does or types: :hover, :focus, :checked …
    bool dynamic = false;
};

/// A pseudo-element, such as `::before`. § 11.
struct PseudoElement {
    std::string name;  ///< in lower case
    std::string argument;
};

/// A compound selector: conditions on one element, and its pseudo-elements.
struct Compound {
    /// Of the first compound: Descendant, or in :has() its relation to the element that :has() is for.
    Combinator combinator = Combinator::Descendant;
    std::vector<Simple> simples;
    std::vector<PseudoElement> pseudoElements;  ///< of the last compound only
};

/// A complex selector: compounds separated by combinators, the subject last. Offsets are bytes of the source.
struct Complex {
    std::vector<Compound> compounds;
    std::size_t begin = 0;  ///< of its first byte
    std::size_t end = 0;    ///< after its last byte
    [[nodiscard]] const std::vector<PseudoElement>& pseudoElements() const {
        return compounds.back().pseudoElements;
    }
};

/// The counts of ids; of classes, attributes and pseudo-classes; of types and pseudo-elements. § 17.
struct Specificity {
    int a = 0;
    int b = 0;
    int c = 0;
    friend bool operator==(const Specificity&, const Specificity&) = default;
    friend bool operator<(const Specificity& one, const Specificity& other) {
        return std::tie(one.a, one.b, one.c) < std::tie(other.a, other.b, other.c);
    }
};

/// The specificity of a selector. For :nth-child() and :is() it includes the largest of their arguments.
/// § 17.
Specificity specificityOf(const Complex& selector);

/// True if a condition of the selector is dynamic.
bool isDynamic(const Complex& selector);

/// The selector list in a text; empty, with the reason as first problem, if it is not valid. One selector
/// that is invalid or unknown makes the whole list invalid (§ 3.9, § 4.1); inside :is() and :where() it is
/// dropped, with a problem. `offset` is the position of `text` in its source and is added to every offset.
/// Nesting (`&`) and namespaces other than `*|` are not supported.
std::optional<SelectorList> readSelectors(std::string_view text, Problems& problems, std::size_t offset = 0);

}  // namespace tenter::css
