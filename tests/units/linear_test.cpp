// Linear and quadratic quantities as numbers. Source: algebra. A result for a range of widths must equal the
// result at each width of the range.
#include "units/linear.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <random>

#include "units/quadratic.h"

namespace tenter::units {
namespace {

constexpr double never = std::numeric_limits<double>::infinity();

TEST(Linear, KnowsUpToWhereTheSmallerStaysTheSmaller) {
    const Linear rising(10, 0.5);
    const Linear level(15);
    const Linear least = min(rising, level);
    EXPECT_EQ(least.at(4), 12);
    EXPECT_EQ(least.until, 10);
    EXPECT_EQ(min(rising, Linear(5)).until, never);
    EXPECT_EQ(max(Linear(0), Linear(-2, 1)).until, 2);
}

// Two quantities may be equal at the start except for the rounding of doubles; the steeper one is then the
// larger.
TEST(Linear, ComparesSlopesOfQuantitiesThatAreEqualAtTheStart) {
    const Linear a(0.1 + 0.2, 1);
    const Linear b(0.3, 0.5);
    EXPECT_EQ(min(a, b).slope, 0.5);
    EXPECT_EQ(min(b, a).slope, 0.5);
    EXPECT_EQ(min(a, b).until, never);
    EXPECT_FALSE(order(b, b).less);
}

TEST(Linear, StepsToTheNextWholeNumber) {
    EXPECT_EQ(floor(Linear(1.5, 0.25)).value, 1);
    EXPECT_EQ(floor(Linear(1.5, 0.25)).until, 2);
    EXPECT_EQ(floor(Linear(1.5, -0.25)).until, 2);
    EXPECT_EQ(floor(Linear(2, -0.25)).value, 1);
    EXPECT_EQ(floor(Linear(2, 0.25)).until, 4);
}

TEST(Linear, EqualsTheResultInDoublesAtEachWidth) {
    std::mt19937 random(7);
    std::uniform_real_distribution<double> some(-4, 4);
    for (int round = 0; round < 1000; ++round) {
        const Linear a(some(random), some(random));
        const Linear b(some(random), some(random));
        const Linear c(some(random), some(random));
        const auto formula = [](const auto& x, const auto& y, const auto& z) {
            return max(x - 2 * y, min(y + z, z / 3)) + floor(x);
        };
        const Linear all = formula(a, b, c);
        ASSERT_GT(all.until, 0);
        const double t = std::min(all.until, 5.0) * 0.999;
        EXPECT_NEAR(all.at(t), formula(a.at(t), b.at(t), c.at(t)), 1e-9);
    }
}

TEST(Quadratic, HasItsFirstRootPastTheStart) {
    EXPECT_NEAR(firstRoot({6, -5, 1}), 2, 1e-12);  // (t − 2)(t − 3)
    EXPECT_NEAR(firstRoot({-6, 1, 1}), 2, 1e-12);  // (t − 2)(t + 3)
    EXPECT_EQ(firstRoot({6, 5, 1}), never);        // (t + 2)(t + 3)
    EXPECT_EQ(firstRoot({1, 0, 1}), never);
    EXPECT_EQ(firstRoot({4, -2, 0}), 2);
    EXPECT_EQ(firstRoot({4, 0, 0}), never);
    EXPECT_EQ(firstRoot({0, 0, 0}), never);
    // Roots of very different size, for which the usual formula loses the smaller one: (t − 1e-9)(t − 1e9).
    EXPECT_NEAR(firstRoot({1, -(1e9 + 1e-9), 1}), 1e-9, 1e-18);
}

TEST(Quadratic, IsTheProductOfLinearQuantities) {
    const Quadratic square = product(Linear(3, 2), Linear(3, 2));
    EXPECT_EQ(square.value, 9);
    EXPECT_EQ(square.slope, 12);
    EXPECT_EQ(square.bend, 4);
}

}  // namespace
}  // namespace tenter::units
