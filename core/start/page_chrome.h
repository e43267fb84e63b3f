// The element of a card that has its background, border and padding.
#pragma once

#include "css/cascade.h"
#include "markup/given.h"

namespace tenter::start {

/// Makes the first element inside a card that holds all its parts the card, if it has a background, a border
/// or a shadow and the elements around it have none. The elements around it become wrappers of the card,
/// whose padding is a distance between cards.
void moveToChrome(markup::GivenRow& row, css::Styles& styles);

}  // namespace tenter::start
