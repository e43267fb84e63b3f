// The text and pictures of elements as parts of a card.
#pragma once

#include <string>

#include "markup/tree.h"
#include "project/project.h"

namespace tenter::markup {

/// The text part of an element. Strong and b, em and i, links and forced line breaks are kept. White space is
/// collapsed (CSS Text 3 § 4.1.1). Text only for screen readers is left out. A link around the whole text
/// becomes the link of the part. A break at the end stays: a second one is a line, and Chromium balances no
/// text with breaks.
project::TextPart textPartOf(const Tree& tree, NodeId node, const std::string& role);

/// The picture part of an element: its alternative text, and its size if attributes give one. `address`
/// becomes the address of the picture; the part has no file yet.
project::PicturePart picturePartOf(const Tree& tree, NodeId node, std::string& address);

}  // namespace tenter::markup
