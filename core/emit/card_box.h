// The padding of cards, and pictures that extend over it.
#pragma once

#include "emit/length_sum.h"
#include "emit/rules.h"

namespace tenter::emit {

/// How much narrower than its share a card of a centred row is, CSS px. Browsers round widths, and a full
/// line must not wrap.
inline constexpr double centredSpare = 0.02;

/// The sum of all column gaps of a line of cards.
LengthSum gapsOf(const project::RowSettings& row);

/// True if the row must be a size container, because pictures in a subgrid need their width in cqi: Firefox
/// 153 sizes the tracks of a subgrid before it resolves the percentage of a picture, and uses the size of its
/// file instead. Cards are no containers then (see project::conflicts), so that cqi refers to the row.
bool rowIsContainer(const BandScope& scope);

/// The content width of a card, with or without its padding, in cqi of the row.
LengthSum contentInRow(const BandScope& scope, bool withPadding);

/// The padding of a card, including the room for a picture beside the text.
std::string cardPadding(const BandScope& scope);

/// The padding of a card on each side, in units for the card: a percentage refers to its column.
struct CardSides {
    LengthSum top, right, bottom, left;
};
CardSides cardSides(const project::CardSettings& card);
/// The same, including the room for a picture beside the text.
CardSides besidesPicture(const BandScope& scope);

/// The same in units for the parts of the card: a percentage refers to its content width. CSS Box 4 § 4.1.
CardSides cardSidesWithin(const project::CardSettings& card);

/// A length of the card in units for an absolutely positioned picture, whose percentages refer to the padding
/// box of the card instead of its column; the border makes that narrower. CSS Positioned Layout 3 § 2.1.
LengthSum withinPaddingBox(const project::CardSettings& card, const LengthSum& length);

/// The radius at the inner edge of the card's border. CSS Backgrounds 3 § 4.2.
LengthSum innerRadius(const project::CardSettings& card);

}  // namespace tenter::emit
