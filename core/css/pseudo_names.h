// The pseudo-classes and pseudo-elements that are known. Selectors 4 and what it names.
#pragma once

#include <optional>
#include <string_view>

namespace tenter::css {

/// What stands in a pseudo-class's parentheses, if anything.
enum class PseudoForm {
    Plain,
    Dynamic,       ///< plain, and told as dynamic
    Forgiving,     ///< selectors, of which wrong ones are left out
    Selectors,     ///< selectors
    Relative,      ///< selectors that start with a combinator
    Nth,           ///< An+B and `of` selectors
    NthOfType,     ///< An+B
    Words,         ///< identifiers or strings
    DynamicWords,  ///< the same, and told as dynamic
};

/// `name` is in lower case. Empty if there is no such pseudo-class.
std::optional<PseudoForm> pseudoClassForm(std::string_view name, bool function);

/// `name` is in lower case.
bool isPseudoElement(std::string_view name, bool function);

/// Those that may be written with one colon. Selectors 4 § 11.
bool isOldPseudoElement(std::string_view name);

}  // namespace tenter::css
