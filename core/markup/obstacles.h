// Declarations of a theme that no stylesheet for the row can override.
#pragma once

#include <string>
#include <vector>

#include "markup/given.h"

namespace tenter::markup {

/// A declaration for an element of a row that changes its layout, with `!important` in a cascade layer or in
/// a style attribute. CSS Cascade 5 § 6.1, § 6.4.
struct Obstacle {
    std::string property;
    std::string selector;  ///< of the rule, or `style attribute`
    std::string origin;    ///< file and line of the rule; empty if not known
    std::string role;      ///< of the elements: row, card, picture, a role of text; empty for a wrapper
    std::size_t card = 0;  ///< index of the first card that has such an element
    std::size_t part = 0;  ///< index of the part; 0 for other elements
};

/// The obstacles of `row` in a theme (CSS text), one for each property and rule.
std::vector<Obstacle> obstaclesOf(const GivenRow& row, const std::string& theme);

}  // namespace tenter::markup
