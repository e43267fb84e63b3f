// The heights of parts and cards at one viewport width, before cards of one line stretch each other.
#pragma once

#include <span>
#include <vector>

#include "layout/inline_sizes.h"

namespace tenter::layout {

/// Heights of a part, CSS px.
struct PartHeights {
    double above = 0, below = 0;  ///< margins; an automatic one counts 0
    double box = 0;               ///< border box
    double minimum = 0;           ///< of the border box, because of its minimum lines; 0: there are none
    double shares = 0;            ///< of margins and paddings at top and bottom in percent, together
    [[nodiscard]] double outer() const { return above + box + below; }
};

/// Vertical lengths of a text part on the engine's grid, CSS px.
struct TextHeights {
    units::LengthBasis basis;  ///< em is the font size as the engine truncates it
    double drawnSize = 0;      ///< font size that the engine draws with
    double lineHeight = 0;
    double minimumHeight = 0;  ///< height of its minimum lines; 0: there are none
    Edges margin, padding;     ///< left and right are not rounded
};

/// The vertical lengths of a text part in `role`, with the horizontal ones in `across`. `basis`: of its card,
/// in the engine's numbers.
TextHeights textHeights(const RolePlan& role, const TextInlineSizes<double>& across,
                        units::LengthBasis basis);

/// The basis of the lengths of parts in a card, with the content width in the engine's rounding: each length
/// is rounded, then subtracted.
units::LengthBasis snappedBasis(const BandPlan& band, const Frame& frame);

/// Vertical margins and box of a picture above the text, in a card of the sizes `sizes`.
PartHeights pictureHeights(const BandPlan& band, const InlineSizes<double>& sizes, const CardPlan& card,
                           std::size_t part, double slotWidth);

/// Heights that one card contributes to its line of cards, in CSS px. CSS Grid 2 § 11.5 calls them the
/// contributions of an item to its tracks.
struct CardContribution {
    /// The height for each level if parts are aligned; otherwise one entry, the card's height.
    std::vector<double> levels;
    int autoMarginLevel = -1;     ///< level of the first part with an automatic top margin; -1: there is none
    double autoMarginHeight = 0;  ///< height that this part needs of its level
    int autoMarginParts = 0;      ///< number of parts that share the level's spare height equally
};

/// Adds up the heights of one card.
class CardHeights {
public:
    /// `parts`: one entry for each part of `card`; that of a picture beside the text is not used.
    CardHeights(const IntervalPlan& interval, const Frame& frame, const CardPlan& card,
                std::span<const PartHeights> parts)
        : band_(*interval.band), roles_(interval.roles), frame_(frame), card_(card), parts_(parts) {}

    /// Height of the card if nothing stretches it.
    [[nodiscard]] double own() const;
    /// Heights of the levels of a card with aligned parts, independent of other cards.
    void levels(std::vector<double>& own) const { levels(own, false); }
    /// The same as the engine computes them when it finds the height of the row, which may be lower.
    void levelsOfRow(std::vector<double>& own) const { levels(own, true); }
    /// Height that a part of a card with aligned parts needs of its level, without gaps.
    [[nodiscard]] double inLevel(std::size_t part) const;
    [[nodiscard]] bool hasAutoMargin(std::size_t part) const {
        return !card_.parts[part].picture && roles_[card_.parts[part].role].margin.top.isAuto();
    }
    /// Number of parts with an automatic top margin.
    [[nodiscard]] int autoMargins() const;
    /// What the card contributes to its line of cards. Overwrites `contribution`.
    void contribute(CardContribution& contribution) const;

private:
    void levels(std::vector<double>& own, bool ofRow) const;
    [[nodiscard]] bool isBeside(std::size_t part) const { return card_.beside == part; }
    /// Half of the row gap, on the engine's grid.
    [[nodiscard]] double halfGap() const { return band_.profile->halfOfGap(frame_.rowGap); }
    /// The rest of the gap, by which the next level starts lower. CSS px.
    [[nodiscard]] double restOfGap(std::size_t level) const {
        return level + 1 < band_.levels.count ? frame_.rowGap - 2 * halfGap() : 0;
    }
    [[nodiscard]] double edgeAbove() const { return frame_.cardBorder + frame_.cardPadding.top; }
    [[nodiscard]] double edgeBelow() const { return frame_.cardBorder + frame_.cardPadding.bottom; }

    const BandPlan& band_;
    const std::vector<RolePlan>& roles_;
    const Frame& frame_;
    const CardPlan& card_;
    std::span<const PartHeights> parts_;
};

}  // namespace tenter::layout
