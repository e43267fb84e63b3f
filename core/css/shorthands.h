// Which properties a shorthand sets. CSS Cascade 5 § 3.1 and the module of each.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace tenter::css {

struct Longhand {
    std::string property;
    /// Where the shorthand has one value for each side or axis, or a word all properties take (`inherit`);
    /// else empty.
    std::optional<std::string> value;
};

/// What `margin`, `padding`, `inset`, `overflow`, `gap`, `flex`, `background`, `border`, `border-top` and the
/// other sides, `border-width`, `border-style` and `border-color` set. Empty for every other property. Values
/// are not checked.
std::vector<Longhand> longhandsOf(std::string_view property, std::string_view value);

}  // namespace tenter::css
