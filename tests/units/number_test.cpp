#include "units/number.h"

#include <gtest/gtest.h>

#include <charconv>
#include <limits>
#include <random>

namespace tenter::units {
namespace {

// CSS Syntax 3 § 4.3.12: digits, a point, digits.
TEST(Number, prints_the_shortest_form) {
    EXPECT_EQ(number(12), "12");
    EXPECT_EQ(number(1.5), "1.5");
    EXPECT_EQ(number(0.1 + 0.2), "0.3");
    EXPECT_EQ(number(-0.875), "-0.875");
    EXPECT_EQ(number(100), "100");
    EXPECT_EQ(number(2.0 / 3, 2), "0.67");
    EXPECT_EQ(number(1234.5, 0), "1235");
}

TEST(Number, has_no_negative_zero_and_no_exponent) {
    EXPECT_EQ(number(-0.00001), "0");
    EXPECT_EQ(number(-0.0), "0");
    EXPECT_EQ(number(1e-9), "0");
    EXPECT_EQ(number(1e20), "100000000000000000000");
}

TEST(Number, is_zero_if_not_finite) {
    EXPECT_EQ(number(std::numeric_limits<double>::quiet_NaN()), "0");
    EXPECT_EQ(number(std::numeric_limits<double>::infinity()), "0");
    EXPECT_EQ(number(std::numeric_limits<double>::max()).size(), 309U);
}

TEST(Number, rounds_ties_away_from_zero) {
    EXPECT_EQ(rounded(0.5, 0), 1);
    EXPECT_EQ(rounded(-0.5, 0), -1);
    EXPECT_EQ(rounded(2.5, 0), 3);
}

// CSS Syntax 3 § 4.3.13: the printed number must be read as the number that layout used.
TEST(Number, reads_back_as_the_rounded_number) {
    std::mt19937 random(17);
    std::uniform_real_distribution<double> values(-20000, 20000);
    for (int i = 0; i < 10000; ++i) {
        const double value = values(random);
        const std::string text = number(value);
        double back = 0;
        std::from_chars(text.data(), text.data() + text.size(), back);
        ASSERT_EQ(back, rounded(value)) << text;
        ASSERT_NEAR(back, value, 0.00005001);
    }
}

}  // namespace
}  // namespace tenter::units
