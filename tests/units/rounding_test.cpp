// Rounding compared with that of the standard library.
#include "units/rounding.h"

#include <gtest/gtest.h>

#include <limits>
#include <random>

namespace tenter::units {
namespace {

TEST(Rounding, IsThatOfTheStandardLibrary) {
    std::mt19937 random(12);
    std::uniform_real_distribution<double> exponent(-20, 300);
    std::uniform_real_distribution<double> fraction(-1, 1);
    const auto expectSame = [](double value) {
        EXPECT_EQ(wholeBelow(value), std::floor(value)) << value;
        EXPECT_EQ(wholeNearest(value), std::round(value)) << value;
        const auto single = static_cast<float>(value);
        EXPECT_EQ(wholeBelow(single), std::floor(single)) << value;
    };
    for (int i = 0; i < 20000; ++i) {
        expectSame(fraction(random) * std::pow(10, exponent(random) / 10));
        expectSame(std::round(fraction(random) * 1e4) / 2);
    }
    for (const double value :
         {0.0, 0.49999999999999994, -0.49999999999999994, 4e15, -4e15, 9.3e18, 1e300, -1e300,
          std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()})
        expectSame(value);
}

}  // namespace
}  // namespace tenter::units
