// The stylesheets of a page, and their rules that affect its row.
#pragma once

#include <array>
#include <filesystem>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "css/rules.h"
#include "markup/page_boxes.h"
#include "markup/tree.h"

namespace tenter::markup {

/// Dynamic pseudo-classes: rules of a theme with these affect the row too. Selectors 4 § 9 to § 12.
inline constexpr std::array<std::string_view, 12> dynamicPseudoClasses{
    "hover",  "focus",   "focus-visible", "focus-within", "active",  "visited",
    "target", "checked", "enabled",       "disabled",     "invalid", "user-invalid"};

/// A stylesheet of a page, as text.
struct PageSheet {
    std::string css;
    std::string name;  ///< of its file; empty for a style element
    /// The conditions under which the page uses it, outermost first.
    std::vector<std::pair<css::ConditionKind, std::string>> conditions = {};
    std::vector<std::string> layers = {};  ///< outermost first; an empty name: a layer without a name
    /// The name of the file in which the text is, and the place of its start there.
    std::string origin = {};
    css::Place start = {};

    /// The text inside its conditions and layers.
    [[nodiscard]] std::string whole() const;
};

/// The stylesheets of a page in their order: its style elements, and the linked and imported sheets that are
/// saved with the page, each before the sheet that imports it. Nothing is fetched; `cautions` has a sentence
/// for each sheet that is missing. `page` is not cleaned.
std::vector<PageSheet> sheetsOf(const Tree& page, const std::filesystem::path& file,
                                std::vector<std::string>& cautions);

/// The rules of several stylesheets, in their order.
class PageStyles {
public:
    explicit PageStyles(std::vector<PageSheet> sheets);
    PageStyles(const PageStyles&) = delete;
    PageStyles& operator=(const PageStyles&) = delete;

    [[nodiscard]] const css::Sheet& sheet() const { return sheet_; }
    /// Where the sheets are; the sources of the rules are numbered like them.
    [[nodiscard]] std::vector<SheetPlace> places() const;
    /// The rules that match `row`, an element in it or one of its ancestors, as CSS text: one on a line, with
    /// file, line and column in a comment at its end; the file is empty for pasted text.
    [[nodiscard]] std::string affecting(const Tree& page, NodeId row) const;

private:
    std::vector<PageSheet> sheets_;
    css::Sheet sheet_;
};

/// The comment with file, line and column after the rule on a line of such a text: `look.css:12:3`, or
/// `:12:3` for a rule of pasted text; empty if there is none.
std::string_view originOfRule(std::string_view theme, std::size_t line);

/// Such a place, as a sentence has it: `look.css:12:3`, or `line 12, column 3 of the pasted text`.
std::string placeInWords(std::string_view origin);

/// Such a text for people: the comments of rules of pasted text have their places in words.
std::string withPlacesInWords(std::string_view theme);

}  // namespace tenter::markup
