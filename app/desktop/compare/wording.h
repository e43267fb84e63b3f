// Verdicts in words.
#pragma once

#include <QString>

#include "compare/comparison.h"

namespace tenter::desktop::compare {

/// `body, card 2: 3 lines in Firefox, 2 computed`
QString differenceTitle(const Comparison& comparison, const judge::Difference& difference);
/// `Agrees at all 1 601 widths`; `Differs at 12 of 1 601 widths`; while it runs, or was ended, of how many so
/// far.
QString headline(const Comparison& comparison);
/// What a verdict says, a line for each difference; at most `most` lines.
QString verdictTitle(const Comparison& comparison, const judge::Verdict& verdict, std::size_t most);

}  // namespace tenter::desktop::compare
