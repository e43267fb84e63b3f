// Elements of a page as the parts of a card: copy, addresses, names.
#pragma once

#include <string>

#include "markup/tree.h"
#include "project/project.h"

namespace tenter::markup {

/// An element's text as copy: strong and b, emphasis and i, links and forced line breaks are kept as such,
/// white space is collapsed (CSS Text 3 § 4.1.1), what is for screen readers only is left out. Where one link
/// holds all of it, it is the part's.
project::TextPart textPartOf(const Tree& tree, NodeId node, const std::string& role);

/// A picture's alternative text, its size where its attributes say one, and its address, which is not a file
/// yet.
project::PicturePart picturePartOf(const Tree& tree, NodeId node, std::string& address);

}  // namespace tenter::markup
