// Guessing the row of cards in a page and the roles of the elements in a card.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "markup/tree.h"

namespace tenter::markup {

/// A part and its guessed role.
struct GuessedPart {
    std::string role;  ///< picture, or a role of text
    NodeId node = noNode;
    friend bool operator==(const GuessedPart&, const GuessedPart&) = default;
};

/// A row and its cards.
struct GuessedRow {
    NodeId row = noNode;        ///< the parent of all cards
    std::vector<NodeId> cards;  ///< in document order
};

/// The element whose children look most like cards: similar, with text, a picture, a heading or a link. Empty
/// if no element has two such children. `page` is cleaned.
std::optional<GuessedRow> guessRow(const Tree& page);

/// The cards of a known row: its most similar children, or all children that are visible.
std::vector<NodeId> guessCards(const Tree& page, NodeId row);

/// The parts of a card in document order. A text part is the innermost block of a text, or a link or button
/// that is alone. Text next to blocks without an element of its own is not a part; `loose` is increased for
/// each.
std::vector<GuessedPart> guessParts(const Tree& page, NodeId card, int& loose);

}  // namespace tenter::markup
