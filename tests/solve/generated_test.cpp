// Rows made at random, with wishes made at random.
#include <chrono>

#include "../project/random_project.h"
#include "random_row.h"
#include "solving.h"

namespace tenter::test {
namespace {

// Three hundred rows, 10 000 widths each, half of them under either break profile. Wishes made at random
// often conflict; then what the answer says would help is done, so that this too is put to the test.
TEST(GeneratedRows, break_no_wish_at_any_width) {
    RandomRow rows(randomRows);
    std::mt19937 random(5);
    int solvedAtOnce = 0;
    for (int i = 0; i < 300; ++i) {
        const project::Project row = rows.next();
        project::Project eased = row;
        const solve::Answer answer = solveEasing(eased);
        ASSERT_TRUE(answer.solved) << i << "\n" << answerText(eased, answer);
        if (eased == row) ++solvedAtOnce;
        EXPECT_TRUE(answer.violated.empty()) << i;
        EXPECT_EQ(brokenAnywhere(*answer.solved, 5000, random), "") << i << "\n"
                                                                    << project::write(*answer.solved);
    }
    EXPECT_GT(solvedAtOnce, 80);
}

// Any setting may be set, to anything that is allowed: no answer is wrong, but there must be one, and soon.
TEST(GeneratedRows, of_the_wildest_settings_are_answered) {
    project::RandomProject random(20261126);
    int solved = 0;
    for (int i = 0; i < 60; ++i) {
        project::Problems problems;
        const auto project = project::parse(project::prettyJson(random.next()), "random", {}, problems);
        ASSERT_TRUE(project.has_value());
        const auto start = std::chrono::steady_clock::now();
        const solve::Answer answer = solve::solve(*project, allVariants(*project), solveStore());
        const std::chrono::duration<double> took = std::chrono::steady_clock::now() - start;
        EXPECT_LT(took.count(), 20) << i;
        if (answer.solved) {
            ++solved;
            EXPECT_TRUE(project::parse(project::write(*answer.solved), "random", {}, problems)) << i;
        } else {
            EXPECT_FALSE(answerText(*project, answer).empty()) << i;
        }
    }
    EXPECT_GT(solved, 5);
}

}  // namespace
}  // namespace tenter::test
