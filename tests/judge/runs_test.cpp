// Differences joined over neighbouring widths.
#include "judge/runs.h"

#include <gtest/gtest.h>

namespace tenter::judge {
namespace {

using What = Difference::What;

Verdict verdictOf(double width, std::vector<Difference> differences) {
    Verdict verdict;
    verdict.width = width;
    verdict.differences = std::move(differences);
    return verdict;
}

Verdicts verdictsOf(const std::vector<Verdict>& all) {
    Verdicts verdicts;
    for (const Verdict& verdict : all)
        verdicts[verdict.width] = verdict;
    return verdicts;
}

TEST(DifferingRuns, JoinNeighbouringWidths) {
    const Difference lines{0, 1, What::Lines, 3, 2, 0.01};
    const auto runs = differingRuns(verdictsOf(
        {verdictOf(320, {lines}), verdictOf(321, {lines}), verdictOf(322, {}), verdictOf(323, {lines})}));
    ASSERT_EQ(runs.size(), 2U);
    EXPECT_EQ(runs[0].first, 320);
    EXPECT_EQ(runs[0].last, 321);
    EXPECT_EQ(runs[1].first, 323);
    EXPECT_EQ(runs[0].worst.measured, 3);
}

// A width that was not compared does not count as a difference.
TEST(DifferingRuns, DoNotBridgeWidthsThatWereNotCompared) {
    const Difference lines{0, 1, What::Lines, 3, 2, 0.01};
    EXPECT_EQ(differingRuns(verdictsOf({verdictOf(320, {lines}), verdictOf(336, {lines})})).size(), 2U);
}

TEST(DifferingRuns, ReportTheWorstSideOfABox) {
    const auto runs =
        differingRuns(verdictsOf({verdictOf(320, {{0, 1, What::Y, 10, 9, 1}, {0, 1, What::Height, 10, 8, 1}}),
                                  verdictOf(321, {{0, 1, What::Y, 10, 7, 1}})}));
    ASSERT_EQ(runs.size(), 1U);
    EXPECT_EQ(runs[0].last, 321);
    EXPECT_EQ(runs[0].worst.what, What::Y);
    EXPECT_EQ(runs[0].worst.computed, 7);
}

TEST(DifferingRuns, ReportTheMostSeriousFirst) {
    const auto runs = differingRuns(
        verdictsOf({verdictOf(320, {{0, 1, What::Y, 10, 9, 1}, {0, 1, What::FontSize, 16, 15, 1}}),
                    verdictOf(400, {{0, 2, What::Lines, 3, 2, 0.01}}),
                    verdictOf(500, {{1, 0, What::Missing, 0, 1, 1}})}));
    std::vector<What> reported;
    for (const DifferingRun& run : runs)
        reported.push_back(run.worst.what);
    EXPECT_EQ(reported, (std::vector<What>{What::Missing, What::Lines, What::FontSize, What::Y}));
}

TEST(DifferingRuns, LeaveOutBoxesThatALineMoves) {
    const auto runs = differingRuns(
        verdictsOf({verdictOf(320, {{{}, {}, What::Height, 400, 376, 1}, {0, 1, What::Lines, 3, 2, 0.01}})}));
    ASSERT_EQ(runs.size(), 1U);
    EXPECT_EQ(runs[0].worst.what, What::Lines);
}

}  // namespace
}  // namespace tenter::judge
