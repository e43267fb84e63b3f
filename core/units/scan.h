// Parsing a number at the start of a text.
#pragma once

#include <optional>
#include <string_view>

namespace tenter::units {

/// A number and the text after it.
struct Scanned {
    double value = 0;
    std::string_view rest;
};

/// The number at the start of `text` and the text after it, by the grammar of CSS Syntax 3 § 4.3.12,
/// independent of the locale. Empty if there is no number or it does not fit a double.
std::optional<Scanned> scanNumber(std::string_view text);

}  // namespace tenter::units
