// What a browser laid out against what was computed.
#pragma once

#include <optional>
#include <vector>

#include "judge/browser_layout.h"
#include "layout/layout.h"

namespace tenter::judge {

/// How far apart figures may be, CSS px. Engines lay out on grids of 1/64 and 1/60 px, and a card stacks
/// several roundings.
inline constexpr double boxTolerance = 0.5;
/// Of a font size: a hundredth for most, two where the profile’s engine keeps sizes on a coarser grid.
double sizeTolerance(const text::BreakProfile& profile);

/// One figure on which the two differ.
struct Difference {
    enum class What { X, Y, Width, Height, FontSize, Lines, Cards, Missing, Unexpected };
    std::optional<std::size_t> card;  ///< none: the row itself
    std::optional<std::size_t> part;  ///< none: the card itself
    What what = What::X;
    double measured = 0;    ///< in the browser: CSS px, or a count
    double computed = 0;  ///< `Unread`: a part that the browser has not; `Unexpected`: one that only it has
    double slack = 1;     ///< of the part, where lines differ
};

/// At one width.
struct Verdict {
    double width = 0;           ///< CSS px
    std::size_t parts = 0;      ///< compared
    double largestBox = 0;      ///< the most a side of a box is off, CSS px
    double largestSize = 0;     ///< the most a font size is off, CSS px
    std::size_t tightFits = 0;  ///< parts whose number of lines differs with less than text::tightSlack
    std::size_t excluded = 0;      ///< parts that the engine breaks or draws by means of its own: not compared
    std::vector<Difference> differences;
    [[nodiscard]] bool agrees() const { return differences.empty(); }
    [[nodiscard]] std::size_t differingParts() const;
};

/// `computed` is `row` laid out at `read.width`. A line count that differs in a tight fit is no difference;
/// the line more or less moves what stands below, so at that width only what lies across is compared.
Verdict judge(const layout::PreparedRow& row, const layout::Layout& computed, const BrowserLayout& read);

/// Over many widths.
struct Summary {
    std::size_t widths = 0, differingWidths = 0;
    std::size_t parts = 0, differingParts = 0;  ///< each at each width
    std::size_t tightFits = 0;
    std::size_t excluded = 0;
    double largestBox = 0, largestBoxAt = 0;  ///< and at which width, CSS px
    double largestSize = 0;
    void add(const Verdict& verdict);
};

}  // namespace tenter::judge
