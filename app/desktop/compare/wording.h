// Results of a comparison as text.
#pragma once

#include <QString>

#include "compare/comparison.h"

namespace tenter::desktop::compare {

/// `body, card 2: 3 lines in Firefox, 2 lines in Tenter (slack 0.8 %)`
QString differenceTitle(const Comparison& comparison, const judge::Difference& difference);
/// `Chromium agrees with Tenter at all 1601 widths`, or `Chromium differs from Tenter at 12 of 1601 widths`;
/// with “so far” if not all widths are compared.
QString headline(const Comparison& comparison);
/// `99.8 % of the parts agree`: over all widths compared so far; empty before the first. Rounded down, so
/// that 100 % means all.
QString agreementTitle(const Comparison& comparison);
/// The result at one width as lines of text, with at most `most` differences.
QString verdictTitle(const Comparison& comparison, const judge::Verdict& verdict, std::size_t most);
/// `0.22 px`; `under 0.01 px` for a smaller value (CSS px) that is not 0.
QString smallPixels(double value);

}  // namespace tenter::desktop::compare
