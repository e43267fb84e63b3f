// Markup for a stylesheet that comes without any: elements that its rules select.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "markup/adopt.h"

namespace tenter::start {

/// A page of a row of cards with the classes and tags of a stylesheet.
struct SheetPage {
    std::string html;
    std::vector<markup::RoleChoice> choices;  ///< selectors of the row, the cards and the parts
    std::string rowClass;                     ///< the class of the row; empty if it has none
    /// The selector that each role was recognised by, from the row inwards.
    std::vector<std::pair<std::string, std::string>> found;
    bool countIsKnown = true;  ///< false if the columns are as many as the cards, which only markup says
};

/// A page for a stylesheet of any origin. The row, its cards and their parts are recognised by what the rules
/// declare (a grid with columns, a flex container, floats; backgrounds, borders and paddings), by how their
/// selectors are nested, and by tags and words of class names. Empty, with the reason in `missing`, if no
/// rule lays out a row of columns or if none is for its cards.
std::optional<SheetPage> pageForSheet(std::string_view css, std::string& missing);

}  // namespace tenter::start
