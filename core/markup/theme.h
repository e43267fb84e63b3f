// The stylesheets of a page, and their rules that affect its row.
#pragma once

#include <array>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "markup/tree.h"

namespace tenter::markup {

/// Dynamic pseudo-classes: rules of a theme with these affect the row too. Selectors 4 § 9 to § 12.
inline constexpr std::array<std::string_view, 12> dynamicPseudoClasses{
    "hover",  "focus",   "focus-visible", "focus-within", "active",  "visited",
    "target", "checked", "enabled",       "disabled",     "invalid", "user-invalid"};

/// A stylesheet of a page, as text.
struct PageSheet {
    std::string css;
    std::string media;  ///< media condition; empty: always
};

/// The stylesheets of a page in their order: its style elements, and the linked sheets that are saved with
/// the page. Nothing is fetched; `cautions` has a sentence for each sheet that is missing. `page` is not
/// cleaned.
std::vector<PageSheet> sheetsOf(const Tree& page, const std::filesystem::path& file,
                                std::vector<std::string>& cautions);

/// The rules of `sheetsOf` that match an element of `kept`, in their order, as CSS text.
std::string themeOf(const Tree& page, const Tree& kept, const std::filesystem::path& file,
                    std::vector<std::string>& cautions);
/// The rules of `css` that match an element of `kept`, as CSS text.
std::string rulesAffecting(std::string_view css, const Tree& kept);

}  // namespace tenter::markup
