// The font size in a pasted text.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "css/places.h"

namespace tenter::intake {

/// A font size and its position.
struct FontSizeValue {
    std::string text;        ///< `clamp(1rem, 2vw, 3rem)`
    std::size_t offset = 0;  ///< of the size in the pasted text, in bytes
};

/// The font size in a value, in declarations or in a rule. Of several font-size and font declarations the one
/// that wins in the cascade counts. Empty, with the reason as last problem, if there is no font size or if
/// more than one rule has one. CSS Fonts 4 § 2.5 and § 2.7.
std::optional<FontSizeValue> findFontSize(std::string_view pasted, css::Problems& problems);

}  // namespace tenter::intake
