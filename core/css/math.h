// Lengths and calculations as functions of a width. CSS Values 4 § 5, § 6 and § 10.
#pragma once

#include <optional>
#include <string_view>

#include "css/piecewise.h"
#include "css/places.h"

namespace tenter::css {

/// What relative lengths are relative to, in CSS px, and over which widths.
struct CalculationBasis {
    double least = 320;  ///< the widths, in CSS px; finite, `least` ≤ `most`
    double most = 1920;
    double root = 16;                ///< 1rem
    double em = 16;                  ///< 1em
    Line viewport = {0, 1};          ///< 100vw
    std::optional<Line> percentage;  ///< 100%; empty where percentages have no place
    std::optional<Line> container;   ///< 100cqi; empty where there is no container
};

/// Which relative units a value uses.
struct UnitsUsed {
    bool viewport = false;
    bool container = false;
    bool em = false;
    bool percentage = false;
    bool root = false;
};

/// A number or a length.
struct Calculated {
    bool isNumber = false;
    double number = 0;
    PiecewiseLinear length{{}, 0, 0};  ///< CSS px at each width, if it is no number
    UnitsUsed used;
};

/// Reads a number, a length in px, rem, em, %, vw, vi, cqi or cqw, or calc(), min(), max() or clamp() of
/// such; vi and cqw are taken for what they are in horizontal text. Empty if `text` is anything else: the
/// last problem says where and why. `offset` is where `text` stands in its source, and is added to the
/// problem's. Calculations more than 100 deep, values of more than 10 000 tokens and results that no double
/// holds are refused.
std::optional<Calculated> calculate(std::string_view text, const CalculationBasis& basis, Problems& problems,
                                    std::size_t offset = 0);

}  // namespace tenter::css
