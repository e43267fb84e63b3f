// What of a page may be kept: what shows, and never what runs or fetches by itself.
#pragma once

#include <optional>
#include <string>

#include "markup/tree.h"

namespace tenter::markup {

/// The tree without scripts, styles, frames, embedded documents, metadata and templates, without event
/// handlers, and without addresses a link may not lead to (`project::isSafeAddress`). Pictures' addresses
/// stay, as text.
Tree cleaned(const Tree& tree);

/// A row cut out of its page.
struct Kept {
    Tree tree;
    NodeId row = noNode;
    std::string markup;  ///< the tree printed; parsing it gives the tree
};

/// The row and its chain of ancestors, so that a theme's rules still match; what stands beside the chain
/// goes. `page` is cleaned. Empty, with a problem, if browsers would not read the row, once printed, as it
/// was.
std::optional<Kept> keptRow(const Tree& page, NodeId row, const std::string& file,
                            project::Problems& problems);

}  // namespace tenter::markup
