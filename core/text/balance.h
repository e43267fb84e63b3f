// Balanced lines: the two rules that engines use.
#pragma once

#include <cstdint>
#include <vector>

#include "text/linear_lines.h"
#include "text/lines.h"

namespace tenter::text {

/// The narrowest width that needs no more lines than `query.available` does, if those are 2 to `mostLines`.
/// Indices into `paragraph.opportunities()`, one for each line; empty: break greedily.
std::vector<std::uint32_t> balancedByWidth(const Paragraph& paragraph, const LineQuery& query,
                                           const BreakProfile& profile, std::size_t mostLines);

/// The least sum over lines of (available − width)² + 4 · available · size, plus 10 000 for breaking before
/// the last word, if greedy lines are 2 to `mostLines` and no word overflows. With fewer than three
/// opportunities, by width. Measured in Chromium 156: 618 of 620 paragraphs.
std::vector<std::uint32_t> balancedByPenalty(const Paragraph& paragraph, const LineQuery& query,
                                             const BreakProfile& profile, std::size_t mostLines);

/// How many lines that rule makes along a stretch of widths on which greedy breaking makes `greedy`, none too
/// wide. `until` is lowered to where that may change: costs are parabolas in the width, so it has a closed
/// form.
std::uint32_t linesByPenalty(const Paragraph& paragraph, const LinearLineQuery& query, std::uint32_t greedy,
                             std::size_t mostLines, double& until);

}  // namespace tenter::text
