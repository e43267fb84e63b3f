// The longhands of shorthand properties. CSS Cascade 5 § 3.1 and the module of each property.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace tenter::css {

/// A property that a shorthand sets.
struct Longhand {
    std::string property;
    /// Known where the shorthand has one value for each side or axis, or a keyword for all properties
    /// (`inherit`); else empty.
    std::optional<std::string> value;
};

/// The longhands of `margin`, `padding`, `inset`, `overflow`, `gap`, `flex`, `background`, `border`,
/// `border-top` and the other sides, `border-width`, `border-style` and `border-color`. Empty for every other
/// property. Values are not checked.
std::vector<Longhand> longhandsOf(std::string_view property, std::string_view value);

}  // namespace tenter::css
