// Selectors as they are written. Selectors 4.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <tuple>
#include <vector>

#include "css/places.h"

namespace tenter::css {

struct Complex;
/// Selectors with commas between.
using SelectorList = std::vector<Complex>;

/// How a compound stands to the one before it. § 15.
enum class Combinator { Descendant, Child, NextSibling, SubsequentSibling };

/// `[a]`, `[a=b]`, `[a~=b]`, `[a|=b]`, `[a^=b]`, `[a$=b]`, `[a*=b]`. § 6.
enum class Comparison { Exists, Equals, Includes, DashMatches, StartsWith, EndsWith, Contains };

/// `An+B`: every `step`th from the `offset`th. CSS Syntax 3 § 6.
struct Nth {
    int step = 0;
    int offset = 0;
    friend bool operator==(const Nth&, const Nth&) = default;
};

enum class SimpleKind { Universal, Type, Class, Id, Attribute, PseudoClass };

/// One condition on an element.
struct Simple {
    SimpleKind kind = SimpleKind::Universal;
    std::string name;  ///< attributes and pseudo-classes in lower case, the rest as written
    Comparison comparison = Comparison::Exists;
    std::string value;                ///< what the attribute is compared with
    std::optional<bool> ignoresCase;  ///< `i` true, `s` false, neither written empty
    Nth nth;                          ///< of :nth-…()
    SelectorList arguments;           ///< of :is(), :where(), :not(), :has(), and after `of`
    std::vector<std::string> words;   ///< of :lang(), :dir(), :state()
    /// Holds or not by what the reader does or fills in: :hover, :focus, :checked …
    bool dynamic = false;
};

/// `::before`. § 11.
struct PseudoElement {
    std::string name;  ///< in lower case
    std::string argument;
};

/// Conditions on one element, and what is drawn of it.
struct Compound {
    /// For the first: Descendant, or in :has() how it stands to the element that :has() is said of.
    Combinator combinator = Combinator::Descendant;
    std::vector<Simple> simples;
    std::vector<PseudoElement> pseudoElements;  ///< of the last compound only
};

/// Compounds with combinators between, the subject last.
struct Complex {
    std::vector<Compound> compounds;
    std::size_t begin = 0;  ///< its first byte
    std::size_t end = 0;    ///< the byte after its last
    [[nodiscard]] const std::vector<PseudoElement>& pseudoElements() const {
        return compounds.back().pseudoElements;
    }
};

/// Ids; classes, attributes, pseudo-classes; types, pseudo-elements. § 17.
struct Specificity {
    int a = 0;
    int b = 0;
    int c = 0;
    friend bool operator==(const Specificity&, const Specificity&) = default;
    friend bool operator<(const Specificity& one, const Specificity& other) {
        return std::tie(one.a, one.b, one.c) < std::tie(other.a, other.b, other.c);
    }
};

/// § 17; what is asked of :nth-child() and :is() is the most of their arguments'.
Specificity specificityOf(const Complex& selector);

/// True if any part of it is dynamic.
bool isDynamic(const Complex& selector);

/// Reads a selector list. Empty if it is not valid: the first problem says why. One selector that is not
/// valid, or not known, makes the whole list so (§ 3.9, § 4.1), but within :is() and :where(), where it is
/// left out and told. `offset` is where `text` stands in its source, and is added to every offset. Nesting
/// (`&`) and namespaces other than `*|` are not read.
std::optional<SelectorList> readSelectors(std::string_view text, Problems& problems, std::size_t offset = 0);

}  // namespace tenter::css
