// The words that class names are made of.
#pragma once

#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

#include "markup/tree.h"

namespace tenter::markup {

/// The words of a class name in lower case: walk, card, more, link for `walkCard__more-link`.
std::vector<std::string> wordsOf(std::string_view className);

/// True if a class of the element contains one of these words.
bool hasWord(const Node& node, std::initializer_list<std::string_view> words);

/// True for a class that is likely to stay the same and that describes the element: plain letters, digits,
/// hyphens and underscores. False for a class that looks generated (four digits in a row, letters and digits
/// mixed) or that names a state (active, first, last, current …). Common practice, no source.
bool isStable(std::string_view className);

/// True for an element that is only for screen readers, or not shown at all.
bool isHidden(const Node& node);

}  // namespace tenter::markup
