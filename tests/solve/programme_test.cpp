#include "solve/programme.h"

#include <gtest/gtest.h>

#include <cmath>
#include <thread>

namespace tenter::solve {
namespace {

using Outcome = Programme::Outcome;

constexpr double within = 1e-6;

// V. Chvátal, Linear Programming (1983), the example that opens chapter 2 (from memory): 13 at (2, 0, 1).
TEST(Programme, finds_the_optimum_of_a_textbook_example) {
    Programme programme;
    const std::size_t x = programme.addColumn(0, unbounded, -5);
    const std::size_t y = programme.addColumn(0, unbounded, -4);
    const std::size_t z = programme.addColumn(0, unbounded, -3);
    programme.addRow({{x, 2}, {y, 3}, {z, 1}}, -unbounded, 5);
    programme.addRow({{x, 4}, {y, 1}, {z, 2}}, -unbounded, 11);
    programme.addRow({{x, 3}, {y, 4}, {z, 2}}, -unbounded, 8);
    ASSERT_EQ(programme.minimise(), Outcome::Best);
    EXPECT_NEAR(programme.cost(), -13, within);
    EXPECT_NEAR(programme.value(x), 2, within);
    EXPECT_NEAR(programme.value(y), 0, within);
    EXPECT_NEAR(programme.value(z), 1, within);
}

// The glass factory of F. Hillier and G. Lieberman, Introduction to Operations Research (from memory): 36 at
// (2, 6), where the constraints' shadow prices are 0, 3/2 and 1.
TEST(Programme, finds_published_shadow_prices) {
    Programme programme;
    const std::size_t doors = programme.addColumn(0, unbounded, -3);
    const std::size_t windows = programme.addColumn(0, unbounded, -5);
    const std::size_t first = programme.addRow({{doors, 1}}, -unbounded, 4);
    const std::size_t second = programme.addRow({{windows, 2}}, -unbounded, 12);
    const std::size_t third = programme.addRow({{doors, 3}, {windows, 2}}, -unbounded, 18);
    ASSERT_EQ(programme.minimise(), Outcome::Best);
    EXPECT_NEAR(programme.cost(), -36, within);
    EXPECT_NEAR(programme.price(first), 0, within);
    EXPECT_NEAR(programme.price(second), -1.5, within);
    EXPECT_NEAR(programme.price(third), -1, within);
}

// V. Klee and G. Minty, How good is the simplex algorithm? (1972): the cube on which the simplex method's
// first rule visits every vertex. Its optimum is 5^n at (0, …, 0, 5^n).
TEST(Programme, finds_the_optimum_of_a_klee_minty_cube) {
    constexpr int dimensions = 8;
    Programme programme;
    for (int j = 1; j <= dimensions; ++j)
        programme.addColumn(0, unbounded, -std::pow(2, dimensions - j));
    for (int i = 1; i <= dimensions; ++i) {
        Form form;
        for (int j = 1; j < i; ++j)
            form.push_back({static_cast<std::size_t>(j - 1), std::pow(2, i - j + 1)});
        form.push_back({static_cast<std::size_t>(i - 1), 1});
        programme.addRow(form, -unbounded, std::pow(5, i));
    }
    ASSERT_EQ(programme.minimise(), Outcome::Best);
    EXPECT_NEAR(programme.cost(), -std::pow(5, dimensions), 1e-3);
}

// E. Beale, Cycling in the dual simplex algorithm (1955): the programme on which the textbook rule goes round
// for ever. Optimum −1/20.
TEST(Programme, does_not_cycle_on_beales_example) {
    Programme programme;
    const double costs[] = {-0.75, 150, -0.02, 6};
    for (const double cost : costs)
        programme.addColumn(0, unbounded, cost);
    programme.addRow({{0, 0.25}, {1, -60}, {2, -0.04}, {3, 9}}, -unbounded, 0);
    programme.addRow({{0, 0.5}, {1, -90}, {2, -0.02}, {3, 3}}, -unbounded, 0);
    programme.addRow({{2, 1}}, -unbounded, 1);
    ASSERT_EQ(programme.minimise(), Outcome::Best);
    EXPECT_NEAR(programme.cost(), -0.05, within);
}

TEST(Programme, tells_that_nothing_keeps_all_bounds) {
    Programme programme;
    const std::size_t x = programme.addColumn(0, unbounded, 1);
    programme.addRow({{x, 1}}, 3, unbounded);
    const std::size_t most = programme.addRow({{x, 1}}, -unbounded, 2);
    EXPECT_EQ(programme.minimise(), Outcome::None);
    programme.boundRow(most, -unbounded, unbounded);
    ASSERT_EQ(programme.minimise(), Outcome::Best);
    EXPECT_NEAR(programme.value(x), 3, within);
}

TEST(Programme, tells_that_the_cost_falls_without_end) {
    Programme programme;
    programme.addColumn(0, unbounded, -1);
    EXPECT_EQ(programme.minimise(), Outcome::NoLeast);
}

TEST(Programme, gives_up_on_numbers_that_are_none) {
    Programme programme;
    const std::size_t x = programme.addColumn(0, unbounded, 1);
    programme.addRow({{x, std::nan("")}}, 0, unbounded);
    EXPECT_EQ(programme.minimise(), Outcome::GivenUp);
}

// S. P. Bradley, A. C. Hax, T. L. Magnanti, Applied Mathematical Programming, 1977, § 9.5 (from memory): 5x +
// 8y is 41 1/4 at most, 40 in whole numbers, which is not the nearest corner rounded.
TEST(Programme, finds_whole_numbers) {
    Programme programme;
    const std::size_t x = programme.addWholeColumn(0, unbounded);
    const std::size_t y = programme.addWholeColumn(0, unbounded);
    programme.setCost(x, -5);
    programme.setCost(y, -8);
    programme.addRow({{x, 1}, {y, 1}}, -unbounded, 6);
    programme.addRow({{x, 5}, {y, 9}}, -unbounded, 45);
    ASSERT_EQ(programme.minimise(), Outcome::Best);
    EXPECT_NEAR(programme.cost(), -41.25, within);
    ASSERT_EQ(programme.minimiseWhole(), Outcome::Best);
    EXPECT_NEAR(programme.cost(), -40, within);
    EXPECT_NEAR(programme.value(x), 0, within);
    EXPECT_NEAR(programme.value(y), 5, within);
    programme.addRow({{y, 2}}, 3, 3);
    EXPECT_EQ(programme.minimise(), Outcome::Best);
    EXPECT_EQ(programme.minimiseWhole(), Outcome::None);
}

TEST(Programme, goes_on_from_where_it_was_when_altered) {
    Programme programme;
    const std::size_t x = programme.addColumn(0, 10, -1);
    const std::size_t y = programme.addColumn(0, 10, -2);
    programme.addRow({{x, 1}, {y, 1}}, -unbounded, 12);
    ASSERT_EQ(programme.minimise(), Outcome::Best);
    EXPECT_NEAR(programme.cost(), -22, within);
    programme.boundColumn(y, 4, 4);
    ASSERT_EQ(programme.minimise(), Outcome::Best);
    EXPECT_NEAR(programme.cost(), -16, within);
    programme.setCost(y, 0);
    programme.setCost(x, 1);
    ASSERT_EQ(programme.minimise(), Outcome::Best);
    EXPECT_NEAR(programme.cost(), 0, within);
}

TEST(Programme, works_in_several_threads_at_once) {
    std::vector<double> found(4, 0);
    std::vector<std::thread> threads;
    for (std::size_t i = 0; i < found.size(); ++i)
        threads.emplace_back([&found, i] {
            for (int times = 0; times < 50; ++times) {
                Programme programme;
                const std::size_t x = programme.addColumn(static_cast<double>(i), 100, 1);
                programme.addRow({{x, 2}}, 1, unbounded);
                if (programme.minimise() == Outcome::Best) found[i] = programme.value(x);
            }
        });
    for (std::thread& thread : threads)
        thread.join();
    EXPECT_EQ(found, (std::vector<double>{0.5, 1, 2, 3}));
}

}  // namespace
}  // namespace tenter::solve
