// The pictures of a row in the rules that Tenter wrote for each position in a card.
#pragma once

#include <string>
#include <vector>

#include "intake/sheet_values.h"
#include "project/settings.h"

namespace tenter::intake {

/// What the rules for pictures say. The rules differ with the position of a picture in its card: full-bleed
/// pictures have the card's negative padding as margins at the edges that they touch.
class OwnPictures {
public:
    explicit OwnPictures(const RowValues& values);

    /// True if the first picture of each card stands beside the text.
    [[nodiscard]] bool areBeside() const { return beside() != nullptr; }
    /// The width of such a picture in percent of the card's width.
    [[nodiscard]] double share() const;
    /// True if such a picture touches the edges of the card. False does not exclude it in a card without
    /// padding, where both are the same.
    [[nodiscard]] bool touchEdgesBeside() const;
    /// True if the pictures are full-bleed in `card`, of which everything else is read.
    [[nodiscard]] bool areBled(const project::CardSettings& card) const;
    /// The settings of pictures in a card whose `bleed` is known. `content`: how many cqi of the row the
    /// content of a card is wide, of which vertical margins in a subgrid are a share; 0 outside
    /// a subgrid.
    [[nodiscard]] project::PictureSettings settings(const project::CardSettings& card, double content) const;

private:
    /// The rules for one position. `first` and `last` are false if all pictures have one rule.
    struct Position {
        Values values;
        bool first = false;
        bool last = false;
    };
    /// The values of the pictures beside the text; null if there are none.
    [[nodiscard]] const Values* beside() const;
    [[nodiscard]] bool areBledAbove(const project::CardSettings& card) const;
    [[nodiscard]] units::Length radius(const project::CardSettings& card) const;

    std::vector<Position> positions_;
};

}  // namespace tenter::intake
