// Headings of a page and their levels.
#pragma once

#include <optional>

#include "markup/tree.h"

namespace tenter::markup {

/// 1 to 6 for h1 to h6, or what `aria-level` says of an element with the role of a heading (2 if nothing); 0
/// for what is none. HTML § 4.3.6; WAI-ARIA 1.2, heading.
int headingLevelOf(const Node& node);

/// The level of the last heading before `row` on a page, if there is one. The page's nodes stand in document
/// order, as a parsed tree's do.
std::optional<int> levelBefore(const Tree& page, NodeId row);

}  // namespace tenter::markup
