// Differences between browser and computation, joined over neighbouring widths.
#pragma once

#include <map>
#include <optional>
#include <vector>

#include "judge/verdict.h"

namespace tenter::judge {

/// Verdicts by viewport width in CSS px.
using Verdicts = std::map<double, Verdict>;

/// A range of widths, at most 1 px apart, at which the same value of the same row, card or part differs.
struct DifferingRun {
    double first = 0;  ///< smallest width, CSS px
    double last = 0;   ///< largest width, CSS px
    Difference worst;  ///< the largest difference; of a box, on its worst side
};

/// The ranges of widths at which something differs, the most serious kind first: missing or extra parts and
/// cards, line counts, font sizes, boxes; within a kind, by first width. At widths where a line count
/// differs, boxes are left out, because the extra or missing line moves them.
std::vector<DifferingRun> differingRuns(const Verdicts& verdicts);

}  // namespace tenter::judge
