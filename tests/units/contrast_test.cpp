#include "units/contrast.h"

#include <gtest/gtest.h>

namespace tenter::units {
namespace {

constexpr Colour black{0, 0, 0, 255};
constexpr Colour white{255, 255, 255, 255};

// Source: WCAG 2.2, SC 1.4.3 and "contrast ratio": ratios range from 1 to 21.
TEST(Contrast, OfBlackOnWhiteIsTwentyOneAndOfAColourOnItselfOne) {
    EXPECT_DOUBLE_EQ(contrast(black, white), 21);
    EXPECT_DOUBLE_EQ(contrast(white, black), 21);
    EXPECT_DOUBLE_EQ(contrast({90, 60, 30, 255}, {90, 60, 30, 255}), 1);
}

// Source: WCAG 2.2, "relative luminance": the weights of the linear channels.
TEST(Luminance, OfThePrimariesIsTheirWeight) {
    EXPECT_NEAR(luminance({255, 0, 0, 255}), 0.2126, 1e-12);
    EXPECT_NEAR(luminance({0, 255, 0, 255}), 0.7152, 1e-12);
    EXPECT_NEAR(luminance({0, 0, 255, 255}), 0.0722, 1e-12);
}

// Source: WCAG 2.2, understanding SC 1.4.3: #767676 is the lightest grey that reaches 4.5 on white (from
// memory).
TEST(Contrast, OfTheLightestPassingGreyIsJustAboveFourAndAHalf) {
    EXPECT_GE(contrast({0x76, 0x76, 0x76, 255}, white), 4.5);
    EXPECT_LT(contrast({0x77, 0x77, 0x77, 255}, white), 4.5);
}

// Source: CSS Compositing 1 § 9.1: source over.
TEST(CompositeOver, MixesByAlpha) {
    EXPECT_EQ(compositeOver({0, 0, 0, 255}, white), black);
    EXPECT_EQ(compositeOver({0, 0, 0, 0}, white), white);
    EXPECT_EQ(compositeOver({255, 0, 0, 51}, black), (Colour{51, 0, 0, 255}));
}

TEST(Contrast, OfATranslucentInkUsesTheMixedColour) {
    // Source: WCAG 2.2, "contrast ratio", note: colours as rendered.
    EXPECT_DOUBLE_EQ(contrast({0, 0, 0, 0}, white), 1);
    EXPECT_LT(contrast({0, 0, 0, 128}, white), contrast(black, white));
}

}  // namespace
}  // namespace tenter::units
