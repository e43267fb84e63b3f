#include "text/generic_families.h"

#include <algorithm>
#include <array>

namespace tenter::text {

bool isGenericFamily(std::string_view family) {
    static constexpr std::array<std::string_view, 13> generics{
        "serif",         "sans-serif",   "monospace",  "cursive", "fantasy", "system-ui", "ui-serif",
        "ui-sans-serif", "ui-monospace", "ui-rounded", "math",    "emoji",   "fangsong"};
    const auto same = [](char written, char known) {
        return (written >= 'A' && written <= 'Z' ? written - 'A' + 'a' : written) == known;
    };
    return std::ranges::any_of(
        generics, [&](std::string_view known) { return std::ranges::equal(family, known, same); });
}

}  // namespace tenter::text
