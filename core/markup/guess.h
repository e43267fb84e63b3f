// Guesses which elements of a page are a row of cards, and what is what in a card.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "markup/tree.h"

namespace tenter::markup {

struct GuessedPart {
    std::string role;  ///< picture, or a role of text
    NodeId node = noNode;
    friend bool operator==(const GuessedPart&, const GuessedPart&) = default;
};

struct GuessedRow {
    NodeId row = noNode;        ///< the cards' common parent
    std::vector<NodeId> cards;  ///< in document order
};

/// The element whose children are most like a row of cards: alike, with text, a picture, a heading, a link.
/// Empty if there are no two such children anywhere. `page` is cleaned.
std::optional<GuessedRow> guessRow(const Tree& page);

/// The cards of an element that is known to be the row: its children that are most alike, or all that show
/// something.
std::vector<NodeId> guessCards(const Tree& page, NodeId row);

/// The parts of a card in document order. A part of text is the innermost block of it, or a link or button
/// that stands alone. Text that stands loose beside blocks has no element and is no part; `loose` counts such
/// places.
std::vector<GuessedPart> guessParts(const Tree& page, NodeId card, int& loose);

}  // namespace tenter::markup
