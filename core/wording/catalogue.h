// Translations that are part of the program. catalogue.cmake makes them from
// resources/translations/core_*.ts.
#pragma once

#include <span>
#include <string_view>

namespace tenter::wording {

/// A text and its translation; for a text with a count, the forms for 1 and for other counts.
struct Entry {
    std::string_view source;
    std::string_view one;
    std::string_view many = {};  ///< empty: `one` for every count
};

/// The German catalogue, without texts whose translation is not finished.
std::span<const Entry> germanCatalogue();

}  // namespace tenter::wording
