#include "solve/linear_program.h"

#include <gtest/gtest.h>

#include <cmath>
#include <thread>

namespace tenter::solve {
namespace {

using Status = LinearProgram::Status;

constexpr double within = 1e-6;

// V. Chvátal, Linear Programming (1983), the example that opens chapter 2 (from memory): 13 at (2, 0, 1).
TEST(LinearProgram, finds_the_optimum_of_a_textbook_example) {
    LinearProgram program;
    const std::size_t x = program.addVariable(0, infinity, -5);
    const std::size_t y = program.addVariable(0, infinity, -4);
    const std::size_t z = program.addVariable(0, infinity, -3);
    program.addConstraint({{x, 2}, {y, 3}, {z, 1}}, -infinity, 5);
    program.addConstraint({{x, 4}, {y, 1}, {z, 2}}, -infinity, 11);
    program.addConstraint({{x, 3}, {y, 4}, {z, 2}}, -infinity, 8);
    ASSERT_EQ(program.minimise(), Status::Optimal);
    EXPECT_NEAR(program.objectiveValue(), -13, within);
    EXPECT_NEAR(program.value(x), 2, within);
    EXPECT_NEAR(program.value(y), 0, within);
    EXPECT_NEAR(program.value(z), 1, within);
}

// The glass factory of F. Hillier and G. Lieberman, Introduction to Operations Research (from memory): 36 at
// (2, 6), where the constraints' dual values are 0, 3/2 and 1.
TEST(LinearProgram, finds_published_dual_values) {
    LinearProgram program;
    const std::size_t doors = program.addVariable(0, infinity, -3);
    const std::size_t windows = program.addVariable(0, infinity, -5);
    const std::size_t first = program.addConstraint({{doors, 1}}, -infinity, 4);
    const std::size_t second = program.addConstraint({{windows, 2}}, -infinity, 12);
    const std::size_t third = program.addConstraint({{doors, 3}, {windows, 2}}, -infinity, 18);
    ASSERT_EQ(program.minimise(), Status::Optimal);
    EXPECT_NEAR(program.objectiveValue(), -36, within);
    EXPECT_NEAR(program.dualValue(first), 0, within);
    EXPECT_NEAR(program.dualValue(second), -1.5, within);
    EXPECT_NEAR(program.dualValue(third), -1, within);
}

// V. Klee and G. Minty, How good is the simplex algorithm? (1972): the cube on which the simplex method's
// first rule visits every vertex. Its optimum is 5^n at (0, …, 0, 5^n).
TEST(LinearProgram, finds_the_optimum_of_a_klee_minty_cube) {
    constexpr int dimensions = 8;
    LinearProgram program;
    for (int j = 1; j <= dimensions; ++j)
        program.addVariable(0, infinity, -std::pow(2, dimensions - j));
    for (int i = 1; i <= dimensions; ++i) {
        LinearExpression expression;
        for (int j = 1; j < i; ++j)
            expression.push_back({static_cast<std::size_t>(j - 1), std::pow(2, i - j + 1)});
        expression.push_back({static_cast<std::size_t>(i - 1), 1});
        program.addConstraint(expression, -infinity, std::pow(5, i));
    }
    ASSERT_EQ(program.minimise(), Status::Optimal);
    EXPECT_NEAR(program.objectiveValue(), -std::pow(5, dimensions), 1e-3);
}

// E. Beale, Cycling in the dual simplex algorithm (1955): the program on which the textbook rule goes round
// for ever. Optimum −1/20.
TEST(LinearProgram, does_not_cycle_on_beales_example) {
    LinearProgram program;
    const double costs[] = {-0.75, 150, -0.02, 6};
    for (const double cost : costs)
        program.addVariable(0, infinity, cost);
    program.addConstraint({{0, 0.25}, {1, -60}, {2, -0.04}, {3, 9}}, -infinity, 0);
    program.addConstraint({{0, 0.5}, {1, -90}, {2, -0.02}, {3, 3}}, -infinity, 0);
    program.addConstraint({{2, 1}}, -infinity, 1);
    ASSERT_EQ(program.minimise(), Status::Optimal);
    EXPECT_NEAR(program.objectiveValue(), -0.05, within);
}

TEST(LinearProgram, reports_an_infeasible_program) {
    LinearProgram program;
    const std::size_t x = program.addVariable(0, infinity, 1);
    program.addConstraint({{x, 1}}, 3, infinity);
    const std::size_t most = program.addConstraint({{x, 1}}, -infinity, 2);
    EXPECT_EQ(program.minimise(), Status::Infeasible);
    program.setConstraintBounds(most, -infinity, infinity);
    ASSERT_EQ(program.minimise(), Status::Optimal);
    EXPECT_NEAR(program.value(x), 3, within);
}

TEST(LinearProgram, reports_an_unbounded_program) {
    LinearProgram program;
    program.addVariable(0, infinity, -1);
    EXPECT_EQ(program.minimise(), Status::Unbounded);
}

TEST(LinearProgram, fails_on_numbers_that_are_not_finite) {
    LinearProgram program;
    const std::size_t x = program.addVariable(0, infinity, 1);
    program.addConstraint({{x, std::nan("")}}, 0, infinity);
    EXPECT_EQ(program.minimise(), Status::Failed);
}

// S. P. Bradley, A. C. Hax, T. L. Magnanti, Applied Mathematical Programming, 1977, § 9.5 (from memory): 5x +
// 8y is 41 1/4 at most, 40 in whole numbers, which is not the nearest corner rounded.
TEST(LinearProgram, finds_an_integer_optimum) {
    LinearProgram program;
    const std::size_t x = program.addIntegerVariable(0, infinity);
    const std::size_t y = program.addIntegerVariable(0, infinity);
    program.setObjectiveCoefficient(x, -5);
    program.setObjectiveCoefficient(y, -8);
    program.addConstraint({{x, 1}, {y, 1}}, -infinity, 6);
    program.addConstraint({{x, 5}, {y, 9}}, -infinity, 45);
    ASSERT_EQ(program.minimise(), Status::Optimal);
    EXPECT_NEAR(program.objectiveValue(), -41.25, within);
    ASSERT_EQ(program.minimiseInteger(), Status::Optimal);
    EXPECT_NEAR(program.objectiveValue(), -40, within);
    EXPECT_NEAR(program.value(x), 0, within);
    EXPECT_NEAR(program.value(y), 5, within);
    program.addConstraint({{y, 2}}, 3, 3);
    EXPECT_EQ(program.minimise(), Status::Optimal);
    EXPECT_EQ(program.minimiseInteger(), Status::Infeasible);
}

TEST(LinearProgram, is_solved_again_after_changes) {
    LinearProgram program;
    const std::size_t x = program.addVariable(0, 10, -1);
    const std::size_t y = program.addVariable(0, 10, -2);
    program.addConstraint({{x, 1}, {y, 1}}, -infinity, 12);
    ASSERT_EQ(program.minimise(), Status::Optimal);
    EXPECT_NEAR(program.objectiveValue(), -22, within);
    program.setVariableBounds(y, 4, 4);
    ASSERT_EQ(program.minimise(), Status::Optimal);
    EXPECT_NEAR(program.objectiveValue(), -16, within);
    program.setObjectiveCoefficient(y, 0);
    program.setObjectiveCoefficient(x, 1);
    ASSERT_EQ(program.minimise(), Status::Optimal);
    EXPECT_NEAR(program.objectiveValue(), 0, within);
}

TEST(LinearProgram, works_in_several_threads_at_once) {
    std::vector<double> found(4, 0);
    std::vector<std::thread> threads;
    for (std::size_t i = 0; i < found.size(); ++i)
        threads.emplace_back([&found, i] {
            for (int times = 0; times < 50; ++times) {
                LinearProgram program;
                const std::size_t x = program.addVariable(static_cast<double>(i), 100, 1);
                program.addConstraint({{x, 2}}, 1, infinity);
                if (program.minimise() == Status::Optimal) found[i] = program.value(x);
            }
        });
    for (std::thread& thread : threads)
        thread.join();
    EXPECT_EQ(found, (std::vector<double>{0.5, 1, 2, 3}));
}

}  // namespace
}  // namespace tenter::solve
