// The levels of headings in a page.
#pragma once

#include <optional>

#include "markup/tree.h"

namespace tenter::markup {

/// The level of a heading: 1 to 6 for h1 to h6; the `aria-level`, by default 2, of an element with the role
/// heading; 0 for any other element. HTML § 4.3.6; WAI-ARIA 1.2, heading.
int headingLevelOf(const Node& node);

/// The level of the last heading before `row` in a page; empty if there is none. The nodes of `page` are in
/// document order, as in a parsed tree.
std::optional<int> levelBefore(const Tree& page, NodeId row);

}  // namespace tenter::markup
