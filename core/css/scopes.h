// The selectors of rules in @scope. CSS Cascade 6 § 2.5 (Working Draft).
#pragma once

#include <string>
#include <string_view>

namespace tenter::css {

/// The roots and limits of a scope, as selector lists.
struct Scope {
    std::string root;
    std::string limit;  ///< empty: none
};

/// The scope that the text after `@scope` describes: `(.card) to (.content)`. The root is empty if the text
/// names none, or if it is not valid.
Scope scopeOf(std::string_view prelude);

/// The selector list of a rule in a scope as one without it: `:scope` and `&` are the root, and the elements
/// that it selects are inside a root and not inside a limit. Specificity stays the same. The nearness of the
/// root, which decides between rules of the same specificity, is not kept.
std::string scopedSelectors(const Scope& scope, std::string_view selectors);

}  // namespace tenter::css
