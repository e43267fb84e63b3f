// What a page declares for its row, its cards and their parts.
#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "css/cascade.h"
#include "markup/given.h"

namespace tenter::start {

/// A declaration that applies to an element at some viewport widths.
struct FoundDeclaration {
    std::string property;  ///< as written: can be a shorthand
    std::string value;     ///< as written
    std::string computed;  ///< with variables replaced; empty if that is the same, or for a shorthand
    std::string selector;  ///< of its rule; empty for a style attribute
    /// File, line and column of its rule, `look.css:12:3`; `:12:3` in pasted text; empty if not known.
    std::string place;
    bool inherited = false;
    std::vector<std::pair<double, double>> widths;  ///< viewport widths in CSS px at which it applies
};

/// A role of the row and what the page declares for the first element with it.
struct FoundElement {
    std::string role;  ///< row, card, picture, or a role of text
    std::string
        selector;  ///< that selects its elements in the row; empty: the element with the class of the row
    std::size_t count = 0;  ///< of its elements
    std::vector<FoundDeclaration> declarations;
};

/// What the rules declare for the first element of each role, also what it inherits of the properties of
/// text. Only declarations that win at some width count. `theme`: the text of the rules of the page, whose
/// lines have their places. `ends`: the ends of the intervals of widths, CSS px, the last the widest;
/// `least`: the narrowest. `prepare` sets the containers of the styles of an interval.
std::vector<FoundElement> foundElements(const markup::GivenRow& row, const css::StyleRules& rules,
                                        std::string_view theme, const std::vector<double>& ends, double least,
                                        const std::function<void(css::Styles&)>& prepare);

}  // namespace tenter::start
