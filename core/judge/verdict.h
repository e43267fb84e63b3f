// Comparison of a layout in a browser with the computed layout.
#pragma once

#include <optional>
#include <vector>

#include "judge/browser_layout.h"
#include "layout/layout.h"

namespace tenter::judge {

/// Largest difference between sides of boxes that counts as agreement, in CSS px. Engines lay out on grids of
/// 1/64 and 1/60 px, and roundings add up within a card.
inline constexpr double boxTolerance = 0.5;

/// One value in which browser and computation differ.
struct Difference {
    /// `Missing`: a part that the browser does not have; `Unexpected`: a part that only the browser has.
    enum class What { X, Y, Width, Height, FontSize, Lines, Cards, Missing, Unexpected };
    std::optional<std::size_t> card;  ///< none: the row itself
    std::optional<std::size_t> part;  ///< none: the card itself
    What what = What::X;
    double measured = 0;  ///< in the browser: CSS px, or a count; 0 for `Missing`, 1 for `Unexpected`
    double computed = 0;  ///< computed: CSS px, or a count; 1 for `Missing`, 0 for `Unexpected`
    double slack = 1;     ///< of the part, if its lines differ
};

/// The comparison at one viewport width.
struct Verdict {
    double width = 0;           ///< CSS px
    std::size_t parts = 0;      ///< number of parts compared
    double largestBox = 0;      ///< largest difference of a side of a box, CSS px
    double largestSize = 0;     ///< largest difference of a font size, CSS px
    std::size_t tightFits = 0;  ///< parts whose line count differs with a slack below text::tightSlack
    std::size_t excluded = 0;   ///< parts not compared, because the engine uses data of its own for them
    std::vector<Difference> differences;
    [[nodiscard]] bool agrees() const { return differences.empty(); }
    [[nodiscard]] std::size_t differingParts() const;
};

/// Compares the browser's layout `read` with `computed`, which is `row` laid out at `read.width`. A different
/// line count in a tight fit is not a difference. At such a width only horizontal positions and widths are
/// compared, because the extra or missing line moves the parts below it.
Verdict judge(const layout::PreparedRow& row, const layout::Layout& computed, const BrowserLayout& read);

/// Totals of the comparisons at many widths.
struct Summary {
    std::size_t widths = 0, differingWidths = 0;
    std::size_t parts = 0, differingParts = 0;  ///< counted once for each width
    std::size_t tightFits = 0;
    std::size_t excluded = 0;
    double largestBox = 0, largestBoxAt = 0;  ///< and the width at which it occurs, CSS px
    double largestSize = 0;
    void add(const Verdict& verdict);
};

}  // namespace tenter::judge
