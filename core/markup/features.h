// What is in each element of a tree, counted once.
#pragma once

#include <vector>

#include "markup/tree.h"

namespace tenter::markup {

/// What an element holds, itself counted too.
struct Features {
    int nodes = 1;
    int pictures = 0;
    int headings = 0;
    int links = 0;       ///< links and buttons
    int letters = 0;     ///< bytes of text that are not white space
    bool block = false;  ///< holds, within itself, an element that is no phrasing
};

/// Of `top` and each node in it, `top` first, in document order. What is not shown counts nothing.
std::vector<Features> featuresOf(const Tree& tree, NodeId top = 0);

bool isHeading(const Node& node);  ///< h1 to h6

}  // namespace tenter::markup
