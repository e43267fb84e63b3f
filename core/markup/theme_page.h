// What a theme says of the page that a row sits in: its root size, and how wide the row's container is.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "markup/tree.h"
#include "project/project.h"

namespace tenter::markup {

struct ThemePage {
    double rootSize = 16;  ///< CSS px
    project::Container container;
    std::vector<std::string> report;  ///< what was read and what could not be, a sentence each
};

/// Reads, from `theme` (CSS text), the root's size and what the elements around `row` (its parents up to the
/// page's root) leave it of the width: widths, most widths, paddings and margins in px, rem, em of the root
/// or percent, centred, one in another. CSS Box 4, CSS Sizing 3. `widest` is the page's width, CSS px, at
/// which media conditions are asked; what they change at `narrowest` is told.
ThemePage themePage(const Tree& tree, NodeId row, std::string_view theme, double narrowest, double widest);

}  // namespace tenter::markup
