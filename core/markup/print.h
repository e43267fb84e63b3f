// Printing trees as HTML.
#pragma once

#include <string>

#include "markup/tree.h"

namespace tenter::markup {

/// The whole tree as HTML. HTML § 13.3, with two differences: optional tags at the top (§ 13.1.2.4) are left
/// out if they carry no information, and a line feed that parsing would drop is written twice.
std::string printed(const Tree& tree);

/// One element with its content as HTML.
std::string printed(const Tree& tree, NodeId node);

}  // namespace tenter::markup
