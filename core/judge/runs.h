// Verdicts over many widths, gathered for a person to read.
#pragma once

#include <map>
#include <optional>
#include <vector>

#include "judge/verdict.h"

namespace tenter::judge {

/// By viewport width in CSS px.
using Verdicts = std::map<double, Verdict>;

/// Neighbouring widths, at most 1 px apart, at which the same figure of the same thing differs.
struct DifferingRun {
    double first = 0;  ///< the narrowest, CSS px
    double last = 0;   ///< the widest
    Difference worst;  ///< where it is furthest off; of a box, its worst side
};

/// The gravest first: parts and cards that one side lacks, lines, font sizes, boxes; each by first width.
/// Where lines differ, boxes are left out: the line more or less moves them.
std::vector<DifferingRun> differingRuns(const Verdicts& verdicts);

}  // namespace tenter::judge
