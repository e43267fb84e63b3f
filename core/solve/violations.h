// Noting where a row that is laid out violates a wish.
#pragma once

#include <utility>
#include <vector>

#include "checks/cause.h"
#include "solve/wish.h"

namespace tenter::solve {

/// A text of a row to verify.
struct VerifiedText {
    const layout::LinearSizes& sizes;  ///< of the row
    project::PartRef place;
    const sweep::PartPieces& pieces;
};

/// The widths at which one wish is violated.
class Violations {
public:
    Violations(const Wish& verified, const sweep::Interval& widths) : wish(verified), range(widths) {}

    const Wish& wish;
    const sweep::Interval range;  ///< viewport widths to verify, CSS px

    void note(const sweep::Interval& widths) {
        if (widths.to - widths.from > leastInterval) found_.push_back(widths);
    }
    /// Notes the widths of `piece`, within those of the wish, at which `line` is positive. The line's origin
    /// is the start of the piece.
    template <class Piece>
    void notePositive(const Piece& piece, const units::Linear& line) {
        const auto cut = checks::within(piece, wish.widths);
        if (!cut) return;
        const auto over =
            checks::whereAbove(line.from(cut->from - piece.from) - comparisonTolerance, cut->from, cut->to);
        if (over) note(*over);
    }
    /// Unordered; intervals may overlap.
    std::vector<sweep::Interval> take() { return std::move(found_); }

private:
    /// Tolerance for the rounding of doubles, in CSS px and in characters per line.
    static constexpr double comparisonTolerance = 1e-9;
    /// Narrower intervals come from the rounding of doubles, CSS px; engines work on coarser grids.
    static constexpr double leastInterval = 1e-6;

    std::vector<sweep::Interval> found_;
};

/// The pieces of `role`'s size over `range`.
std::vector<checks::RolePiece> sizePieces(const layout::LinearSizes& sizes, const std::string& role,
                                          const sweep::Interval& range);

}  // namespace tenter::solve
