// Trees as HTML text.
#pragma once

#include <string>

#include "markup/tree.h"

namespace tenter::markup {

/// The whole tree as HTML. HTML § 13.3, and besides: the tags that may be left out at the top (§ 13.1.2.4)
/// are left out where they say nothing, and a line feed is written before one that would be lost.
std::string printed(const Tree& tree);

/// One element of it, with its content.
std::string printed(const Tree& tree, NodeId node);

}  // namespace tenter::markup
