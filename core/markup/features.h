// Counts of the content of each element of a tree.
#pragma once

#include <vector>

#include "markup/tree.h"

namespace tenter::markup {

/// The content of an element, including the element itself.
struct Features {
    int nodes = 1;
    int pictures = 0;
    int headings = 0;
    int links = 0;       ///< links and buttons
    int letters = 0;     ///< bytes of text that are not white space
    bool block = false;  ///< contains an element that is not phrasing content
};

/// The features of `top` and of each node in it, in document order. Elements that are not shown count
/// nothing.
std::vector<Features> featuresOf(const Tree& tree, NodeId top = 0);

bool isHeading(const Node& node);  ///< true for h1 to h6, and for the role heading

}  // namespace tenter::markup
