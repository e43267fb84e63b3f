// `text-wrap: balance`: the two rules that browser engines use.
#pragma once

#include <cstdint>
#include <vector>

#include "text/linear_lines.h"
#include "text/lines.h"

namespace tenter::text {

/// Line ends at a narrow width with the same number of lines and the same height as in `query.available`, as
/// indices into `paragraph.opportunities()`. The width is found by bisection in whole steps of 1/60 px, from
/// one line's share less than the available width. A width at which a word must be cut does not suffice.
/// Empty if the paragraph is broken greedily: with 1 line, or with more than `maxLines`. The rule of Firefox
/// 153 (nsBlockFrame::Reflow), measured.
std::vector<std::uint32_t> balancedByInset(const Paragraph& paragraph, const LineQuery& query,
                                           const BreakProfile& profile, std::size_t maxLines);

/// Line ends with the smallest total penalty, as indices into `paragraph.opportunities()`. A line's penalty
/// is (available − width)² + 4 · available · size, plus 10 000 if it breaks before the last word. Empty if
/// the paragraph is broken greedily: with 1 line, with more than `maxLines`, or if a word overflows. With
/// fewer than three opportunities, line ends at the narrowest width that needs no more lines. The rule of
/// Chromium 156, measured: 618 of 620 paragraphs.
std::vector<std::uint32_t> balancedByPenalty(const Paragraph& paragraph, const LineQuery& query,
                                             const BreakProfile& profile, std::size_t maxLines);

/// The number of lines under `balancedByPenalty` over a range of widths in which greedy breaking makes
/// `greedy` lines, none of which overflows. Lowers `until` to the end of the range in which the number is
/// valid, in CSS px past its start; penalties are quadratic in the width, so that end has a closed form.
std::uint32_t linesByPenalty(const Paragraph& paragraph, const LinearLineQuery& query, std::uint32_t greedy,
                             std::size_t maxLines, double& until);

}  // namespace tenter::text
