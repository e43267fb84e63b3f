#include "units/length.h"

#include <gtest/gtest.h>

#include <clocale>
#include <limits>
#include <random>

namespace tenter::units {
namespace {

// CSS Values 4 § 6 (lengths) and CSS Syntax 3 § 4.3.12 (numbers).
TEST(Length, reads_what_css_reads) {
    EXPECT_EQ(Length::parse("12px"), Length::px(12));
    EXPECT_EQ(Length::parse("1.5em"), Length::em(1.5));
    EXPECT_EQ(Length::parse(".5rem"), Length::rem(0.5));
    EXPECT_EQ(Length::parse("+5%"), Length::percent(5));
    EXPECT_EQ(Length::parse("-2vw"), Length::vw(-2));
    EXPECT_EQ(Length::parse("1e1cqi"), Length::cqi(10));
    EXPECT_EQ(Length::parse("1em"), Length::em(1));
    EXPECT_EQ(Length::parse("auto"), Length::ofAuto());
    EXPECT_EQ(Length::parse("none"), Length::ofNone());
}

// CSS Values 4 § 2: units and keywords are ASCII case-insensitive.
TEST(Length, ignores_case) {
    EXPECT_EQ(Length::parse("12PX"), Length::px(12));
    EXPECT_EQ(Length::parse("Auto"), Length::ofAuto());
}

// CSS Values 4 § 6: only a zero may be without a unit.
TEST(Length, requires_a_unit_unless_it_is_zero) {
    EXPECT_EQ(Length::parse("0"), Length());
    EXPECT_EQ(Length::parse("-0.0"), Length());
    EXPECT_EQ(Length::parse("0em"), Length());
    EXPECT_EQ(Length::parse("12"), std::nullopt);
}

TEST(Length, refuses_everything_else) {
    for (const char* text : {"",          " 12px",   "12px ",     "12 px",      "px",    "1.px",  "1.e3px",
                             "infpx",     "nanpx",   "--1px",     "+-1px",      "0x1px", "1,5em", "12pt",
                             "calc(1px)", "1e999px", "1000001px", "-1000001px", "1e",    "."}) {
        EXPECT_EQ(Length::parse(text), std::nullopt) << text;
    }
}

TEST(Length, survives_random_bytes) {
    std::mt19937 random(5);
    std::uniform_int_distribution<int> bytes(0, 255);
    for (int i = 0; i < 20000; ++i) {
        std::string text;
        for (int n = bytes(random) % 9; n > 0; --n)
            text += static_cast<char>(bytes(random));
        if (const auto length = Length::parse(text)) {
            EXPECT_EQ(Length::parse(length->css()), length);
        }
    }
}

TEST(Length, stores_the_rounded_number_of_the_stylesheet) {
    EXPECT_EQ(Length::px(1.0 / 3).value(), 0.3333);
    EXPECT_EQ(Length::px(1.0 / 3).css(), "0.3333px");
    EXPECT_EQ(Length::percent(-0.00001).css(), "0");
    EXPECT_EQ(Length::rem(std::numeric_limits<double>::quiet_NaN()), Length());
    EXPECT_TRUE(Length::rem(std::numeric_limits<double>::infinity()).value() < 1e12);
}

// CSS Values 4 § 6.1 (relative lengths), CSS Containment 3 § 7 (cqi).
TEST(Length, resolves_each_unit_by_its_own_basis) {
    const LengthBasis basis{20, 10, 300, 1200, 250};
    EXPECT_EQ(Length::px(3).resolve(basis), 3);
    EXPECT_EQ(Length::em(1.5).resolve(basis), 30);
    EXPECT_EQ(Length::rem(1.5).resolve(basis), 15);
    EXPECT_EQ(Length::percent(5).resolve(basis), 15);
    EXPECT_EQ(Length::vw(2).resolve(basis), 24);
    EXPECT_EQ(Length::cqi(10).resolve(basis), 25);
    EXPECT_EQ(Length::ofAuto().resolve(basis), 0);
}

TEST(Length, does_not_depend_on_the_locale) {
    const std::string before = std::setlocale(LC_ALL, nullptr);
    // Only some machines have this locale. With it the C library expects a decimal comma.
    std::setlocale(LC_ALL, "de_DE.UTF-8");
    EXPECT_EQ(Length::parse("1.5em"), Length::em(1.5));
    EXPECT_EQ(Length::em(1.5).css(), "1.5em");
    std::setlocale(LC_ALL, before.c_str());
}

// CSS Inline 3 § 5.2: a number or a length, never negative.
TEST(LineHeight, is_a_number_or_a_length) {
    EXPECT_EQ(LineHeight::parse("1.4"), LineHeight::times(1.4));
    EXPECT_EQ(LineHeight::parse("24px"), LineHeight::of(Length::px(24)));
    for (const char* text : {"normal", "-1", "-1px", "auto", "120%", "", "1.4 "}) {
        EXPECT_EQ(LineHeight::parse(text), std::nullopt) << text;
    }
    EXPECT_EQ(LineHeight::times(1.4).resolve({20}), 28);
    EXPECT_EQ(LineHeight::of(Length::rem(1.5)).resolve({20, 16}), 24);
}

// In `line-height` a bare 0 is a number.
TEST(LineHeight, distinguishes_a_zero_length_from_the_number_zero) {
    EXPECT_EQ(LineHeight::times(0).css(), "0");
    EXPECT_EQ(LineHeight::of(Length()).css(), "0px");
    EXPECT_EQ(LineHeight::parse("0px"), LineHeight::of(Length()));
}

}  // namespace
}  // namespace tenter::units
