// A card's padding, and how a picture reaches over it.
#pragma once

#include "emit/length_sum.h"
#include "emit/rules.h"

namespace tenter::emit {

/// What a card of a centred row is narrower than its share, CSS px: browsers round widths, and a full line
/// must not wrap.
inline constexpr double centredSpare = 0.02;

/// All column gaps of a line of cards.
LengthSum gapsOf(const project::RowSettings& row);

/// True if the row has to be a container, since pictures on levels say their width by it: Firefox 153 sizes
/// the tracks of a subgrid before it knows what a picture's percentage is, and takes its file's own size
/// instead. There cards are no containers (see project::conflicts), so that cqi means the row.
bool rowIsContainer(const BandScope& scope);

/// A card's content width, or that with its padding, by the row's content width in cqi.
LengthSum contentInRow(const BandScope& scope, bool withPadding);

/// A card's padding, with the room for a picture that stands beside the rest.
std::string cardPadding(const BandScope& scope);

/// The card's padding on each side, as the card says it: a percentage is of its column.
struct CardSides {
    LengthSum top, right, bottom, left;
};
CardSides cardSides(const project::CardSettings& card);
/// The same with the room for a picture that stands beside the rest.
CardSides besidesPicture(const BandScope& scope);

/// The same on each side, as its parts say it: a percentage is of the card's content width. CSS Box 4 § 4.1.
CardSides cardSidesWithin(const project::CardSettings& card);

/// A length of the card as an absolutely placed picture says it: a percentage is of the card's column, but
/// would be taken of its padding box, which the border makes narrower. CSS Positioned Layout 3 § 2.1.
LengthSum withinPaddingBox(const project::CardSettings& card, const LengthSum& length);

/// The radius at the inner edge of the card's border. CSS Backgrounds 3 § 4.2.
LengthSum innerRadius(const project::CardSettings& card);

}  // namespace tenter::emit
