// The known pseudo-classes and pseudo-elements. Selectors 4 and the standards that it refers to.
#pragma once

#include <optional>
#include <string_view>

namespace tenter::css {

/// The kind of the arguments of a pseudo-class.
enum class PseudoForm {
    Plain,         ///< no arguments
    Dynamic,       ///< no arguments; the pseudo-class is dynamic
    Forgiving,     ///< selectors; invalid ones are dropped
    Selectors,     ///< selectors
    Relative,      ///< selectors that start with a combinator
    Nth,           ///< An+B and `of` selectors
    NthOfType,     ///< An+B
    Words,         ///< identifiers or strings
    DynamicWords,  ///< the same; the pseudo-class is dynamic
};

/// The kind of a pseudo-class by its lower-case name; empty if it is not known.
std::optional<PseudoForm> pseudoClassForm(std::string_view name, bool function);

/// True for the lower-case name of a pseudo-element.
bool isPseudoElement(std::string_view name, bool function);

/// True for a pseudo-element that can be written with one colon. Selectors 4 § 11.
bool isOldPseudoElement(std::string_view name);

}  // namespace tenter::css
