// The physical longhands of a declaration, with their values. CSS Cascade 5 § 3.1, CSS Logical 1, and the
// module of each property.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "css/shorthands.h"

namespace tenter::css {

/// The longhands that a declaration sets in horizontal text, each with its value: shorthands expanded,
/// logical properties as physical ones. A value is empty if it is not known: that of a value with `var()`
/// directly in a shorthand, and of some longhands of `background` and `grid`. A longhand is its own only
/// longhand. Values are not checked.
std::vector<Longhand> physicalLonghands(std::string_view property, std::string_view value, bool rightToLeft);

/// The parts of a value that white space separates, with brackets kept whole; a `/` is a part of its own.
std::vector<std::string> valueParts(std::string_view value);

/// The items of a list, which commas outside of brackets separate. White space stays; an empty list has one
/// empty item.
std::vector<std::string> listItems(std::string_view list);

/// True for a property whose value elements take from their parents. CSS Cascade 5 § 7.2.
bool isInherited(std::string_view property);

}  // namespace tenter::css
