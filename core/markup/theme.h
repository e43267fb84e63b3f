// A page's own style sheets, as far as they concern its row.
#pragma once

#include <array>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "markup/tree.h"

namespace tenter::markup {

/// What a reader does to an element: a theme's rules for it concern the row too. Selectors 4 § 9 to § 12.
inline constexpr std::array<std::string_view, 12> whatReadersDo{
    "hover",  "focus",   "focus-visible", "focus-within", "active",  "visited",
    "target", "checked", "enabled",       "disabled",     "invalid", "user-invalid"};

/// A style sheet of a page, as text.
struct PageSheet {
    std::string css;
    std::string media;  ///< when it holds; empty: always
};

/// The page's style sheets in their order: its style elements, and the sheets it links that lie beside the
/// saved page; nothing is fetched, and those that are not there are told in `report`. `page` is not cleaned.
std::vector<PageSheet> sheetsOf(const Tree& page, const std::filesystem::path& file,
                                std::vector<std::string>& report);

/// The rules of `sheetsOf`, in their order, of which a selector selects an element of `kept`, as CSS text.
std::string themeOf(const Tree& page, const Tree& kept, const std::filesystem::path& file,
                    std::vector<std::string>& report);
/// The same of CSS text.
std::string rulesConcerning(std::string_view css, const Tree& kept);

}  // namespace tenter::markup
