// What class names tell people: a name is read as the words it is made of.
#pragma once

#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

#include "markup/tree.h"

namespace tenter::markup {

/// The words of a class name in small letters: `walkCard__more-link` is walk, card, more, link.
std::vector<std::string> wordsOf(std::string_view className);

/// True if one of the element's classes has one of these words.
bool hasWord(const Node& node, std::initializer_list<std::string_view> words);

/// True for a class that is likely to be the same next year, and says what an element is: plain letters,
/// digits, hyphens and underscores; none that looks made by a program (four digits in a row, letters and
/// digits mixed), none that says a state (active, first, last, current …). Common practice, no source.
bool isStable(std::string_view className);

/// True for an element that is there for screen readers only, or not shown at all.
bool isHidden(const Node& node);

}  // namespace tenter::markup
