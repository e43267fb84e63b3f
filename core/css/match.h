// Matching selectors with elements. Selectors 4 § 4 to § 15.
#pragma once

#include <span>
#include <string_view>

#include "css/elements.h"
#include "css/selectors.h"

namespace tenter::css {

/// The names of the dynamic pseudo-classes that match, such as `hover`. They match every element; all other
/// dynamic pseudo-classes match none.
using ActivePseudoClasses = std::span<const std::string_view>;

/// True if `selector` matches `element` or a pseudo-element of it. Takes time up to the length of the
/// selector times the number of elements before and above `element` (with :has() also below it).
bool matches(const Complex& selector, const Elements& elements, Elements::Element element,
             ActivePseudoClasses active = {});

/// True if a selector of `list` matches.
bool matches(const SelectorList& list, const Elements& elements, Elements::Element element,
             ActivePseudoClasses active = {});

}  // namespace tenter::css
