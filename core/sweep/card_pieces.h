// The heights that one card needs, without its neighbours, over a range of widths.
#pragma once

#include <span>
#include <vector>

#include "layout/card_heights.h"
#include "sweep/pieces.h"

namespace tenter::sweep {

/// The heights of a card at one width.
struct CardMeasures {
    layout::CardContribution contribution;
    double around = 0;          ///< border and padding above and below a picture beside the text, CSS px
    std::vector<double> parts;  ///< line height of a text part, height of a picture, CSS px
};

/// The widths between two events of a card's parts, CSS px. Heights are straight lines there.
struct CardPiece {
    double from = 0;
    double to = 0;
    std::size_t band = 0;
    CardMeasures start, end;
};

/// The pieces of card `card`, rising, without gaps. `parts` has the pieces of its parts, at least one.
std::vector<CardPiece> cardPieces(const layout::PreparedRow& row, std::size_t card,
                                  std::span<const PartPieces> parts);

}  // namespace tenter::sweep
