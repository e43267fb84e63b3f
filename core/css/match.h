// Which elements a selector selects. Selectors 4 § 4 to § 15.
#pragma once

#include <span>
#include <string_view>

#include "css/elements.h"
#include "css/selectors.h"

namespace tenter::css {

/// The dynamic pseudo-classes that hold, without colons: `hover`. They are taken to hold on every element;
/// all others on none.
using Holding = std::span<const std::string_view>;

/// Whether `selector` selects `element`, or a pseudo-element of it. Time is bounded by the selector's length
/// times the elements before and above `element` (with :has(), below it).
bool matches(const Complex& selector, const Elements& elements, Elements::Element element,
             Holding holding = {});

/// Whether one of `list` does.
bool matches(const SelectorList& list, const Elements& elements, Elements::Element element,
             Holding holding = {});

}  // namespace tenter::css
