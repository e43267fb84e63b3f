// Random rows with random wishes.
#include <chrono>

#include "../project/random_project.h"
#include "random_row.h"
#include "solving.h"

namespace tenter::test {
namespace {

// Three hundred rows, 10 000 widths each, half of them under each break profile. Random wishes often
// conflict; then the resolutions in the answer are applied, which tests them too.
TEST(GeneratedRows, violate_no_wish_at_any_width) {
    RandomRow rows(randomRows);
    std::mt19937 random(5);
    int solvedAtOnce = 0;
    for (int i = 0; i < 300; ++i) {
        const project::Project row = rows.next();
        project::Project eased = row;
        const solve::Answer answer = solveRelaxing(eased);
        ASSERT_TRUE(answer.solved) << i << "\n" << answerText(eased, answer);
        if (eased == row) ++solvedAtOnce;
        EXPECT_TRUE(answer.violated.empty()) << i;
        EXPECT_EQ(violatedAnywhere(*answer.solved, 5000, random), "") << i << "\n"
                                                                      << project::write(*answer.solved);
    }
    EXPECT_GT(solvedAtOnce, 80);
}

// Any setting with any allowed value: there is no expected answer, but there must be one, and soon.
TEST(GeneratedRows, with_any_settings_get_an_answer) {
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
