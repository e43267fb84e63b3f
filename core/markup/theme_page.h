// The page of a row according to its theme: the root font size and the container of the row.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "markup/tree.h"
#include "project/project.h"

namespace tenter::markup {

/// What the theme sets for the page.
struct ThemePage {
    double rootSize = 16;  ///< CSS px
    project::Container container;
    std::vector<std::string> cautions;  ///< what could not be read, a sentence each
    /// The container in a sentence; "assumed" where something could not be read.
    [[nodiscard]] std::string containerSentence() const;
};

/// The root size and the container of `row` in `theme` (CSS text). The container is the width that the
/// ancestors of the row leave for it by width, max-width, padding and margin in px, rem, em of the root, or
/// percent. CSS Box 4, CSS Sizing 3. Media conditions are evaluated at the viewport width `widest` (CSS px);
/// there is a caution if the result differs at `narrowest`.
ThemePage themePage(const Tree& tree, NodeId row, std::string_view theme, double narrowest, double widest);

}  // namespace tenter::markup
