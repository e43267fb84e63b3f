// Edits of whole cards: move, duplicate, remove. Cards are given by rising indices in the row.
#pragma once

#include <cstddef>
#include <vector>

#include "project/project.h"

namespace tenter::desktop {

/// Moves cards in front of the card with index `before`, or to the end if that is the number of cards; they
/// keep their order. Returns the new index of the first.
std::size_t moveCards(project::Row& row, const std::vector<std::size_t>& cards, std::size_t before);
/// Puts a copy of the cards behind the last of them. Returns the index of the first copy.
std::size_t duplicateCards(project::Row& row, const std::vector<std::size_t>& cards);
void removeCards(project::Row& row, const std::vector<std::size_t>& cards);
/// Puts a card behind card `after`: with the same parts and pictures, but new texts; or with a heading, a
/// paragraph and a button if the row has no card. Returns its index.
std::size_t addCard(project::Row& row, std::size_t after);

}  // namespace tenter::desktop
