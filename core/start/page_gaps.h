// The distances between the parts of a page's cards, as margins of their roles.
#pragma once

#include "start/page_piece.h"

namespace tenter::start {

/// Sets the top and bottom margins of the roles and pictures, and the top and bottom padding of the cards, so
/// that parts have the distances that they have on the page. `bleeds`: pictures reach the edges of the cards.
void readGaps(const PieceContext& context, const css::Line& content, bool bleeds, PieceReading& reading);

}  // namespace tenter::start
