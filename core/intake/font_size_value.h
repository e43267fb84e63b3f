// Finds the font size in a pasted text.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "css/places.h"

namespace tenter::intake {

struct FontSizeValue {
    std::string text;        ///< `clamp(1rem, 2vw, 3rem)`
    std::size_t offset = 0;  ///< where it stands
};

/// `pasted` is a value alone, declarations, or a rule; of several font-size or font declarations the one that
/// wins counts. Empty if there is none, or more than one rule has one: the last problem says so. CSS Fonts 4
/// § 2.5 and § 2.7.
std::optional<FontSizeValue> findFontSize(std::string_view pasted, css::Problems& problems);

}  // namespace tenter::intake
