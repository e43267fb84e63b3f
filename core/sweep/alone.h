// Cards by themselves: what each asks of the cards beside it, over a range of widths.
#pragma once

#include <span>
#include <vector>

#include "layout/layout.h"
#include "sweep/pieces.h"

namespace tenter::sweep {

/// What a card asks just past one event and just before the next.
struct Stand {
    layout::Asked asked;
    double around = 0;          ///< the card's height but for a picture that stands beside the text, CSS px
    std::vector<double> parts;  ///< line height of a text part, height of a picture, CSS px
};

/// Widths between two events of a card's parts.
struct CardStretch {
    double from = 0;
    double to = 0;
    std::size_t band = 0;
    Stand start, end;
};

/// The stretches of card `card`, whose parts' pieces are `pieces` (at least one part's), rising and without
/// gaps.
std::vector<CardStretch> stretchesOf(const layout::PreparedRow& row, std::size_t card,
                                     std::span<const PartPieces> pieces);

}  // namespace tenter::sweep
