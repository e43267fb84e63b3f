// Removing everything from a page that runs or fetches by itself.
#pragma once

#include <optional>
#include <string>

#include "markup/tree.h"

namespace tenter::markup {

/// The tree without scripts, styles, frames, embedded documents, metadata and templates, without event
/// handlers, and without unsafe link addresses (`project::isSafeAddress`). Addresses of pictures stay, as
/// text.
Tree cleaned(const Tree& tree);

/// A row cut out of its page.
struct Kept {
    Tree tree;
    NodeId row = noNode;
    std::string markup;  ///< the tree as HTML; parsing it gives the same tree
};

/// The row and its chain of ancestors, so that the rules of a theme still match. All other elements are
/// removed. `page` is cleaned. Empty, with a problem, if browsers would parse the printed row into another
/// tree.
std::optional<Kept> keptRow(const Tree& page, NodeId row, const std::string& file,
                            project::Problems& problems);

}  // namespace tenter::markup
