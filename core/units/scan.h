// Reading a number at the start of a text.
#pragma once

#include <optional>
#include <string_view>

namespace tenter::units {

/// A number and what follows it.
struct Scanned {
    double value = 0;
    std::string_view rest;
};

/// The number that `text` starts with, by the grammar of CSS Syntax 3 § 4.3.12, whatever the locale. Empty if
/// there is none or it does not fit a double.
std::optional<Scanned> scanNumber(std::string_view text);

}  // namespace tenter::units
