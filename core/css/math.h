// Lengths and calculations as functions of the viewport width. CSS Values 4 § 5, § 6 and § 10.
#pragma once

#include <functional>
#include <optional>
#include <string_view>

#include "css/piecewise.h"
#include "css/places.h"

namespace tenter::css {

/// The references of relative lengths in CSS px, and the range of widths of a calculation.
struct CalculationBasis {
    double least = 320;  ///< range of widths in CSS px; finite, `least` ≤ `most`
    double most = 1920;
    Line root = {16, 0};             ///< 1rem
    Line em = {16, 0};               ///< 1em
    Line viewport = {0, 1};          ///< 100vw
    std::optional<Line> percentage;  ///< 100%; empty where percentages are not allowed
    std::optional<Line> container;   ///< 100cqi; empty where there is no container
    std::optional<Line> line;        ///< 1lh; empty where it is not known
    std::optional<Line> rootLine;    ///< 1rlh; empty where it is not known
    /// Finds what a unit is that depends on a font: ch, ex, cap, ic, and the same with r before it, of the
    /// root. Empty, or an empty result: not known.
    std::function<std::optional<Line>(std::string_view unit)> fontUnit;
    /// True to read all units of absolute lengths and of the viewport's width, and the functions of numbers
    /// and constant lengths in § 10.3 to § 10.6, too.
    bool allUnits = false;
};

/// The relative units that a value uses.
struct UnitsUsed {
    bool viewport = false;
    bool container = false;
    bool em = false;
    bool percentage = false;
    bool root = false;
};

/// The result of a calculation: a number or a length.
struct Calculated {
    bool isNumber = false;
    double number = 0;
    PiecewiseLinear length{{}, 0, 0};  ///< CSS px by width, if it is a length
    UnitsUsed used;
};

/// The value of a number, a length in px, rem, em, %, vw, vi, cqi or cqw, or calc(), min(), max(), clamp() or
/// abs() of these; vi and cqw as in horizontal text. More units and functions as the basis says. Empty, with
/// a problem last in `problems`, for anything else, and for calculations more than 100 deep, values of more
/// than 10000 tokens and results too large for a double. `offset` is the position of `text` in its source and
/// is added to that of the problem.
std::optional<Calculated> calculate(std::string_view text, const CalculationBasis& basis, Problems& problems,
                                    std::size_t offset = 0);

}  // namespace tenter::css
