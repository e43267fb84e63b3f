#include "emit/values.h"

#include <gtest/gtest.h>

#include "emit/length_sum.h"

namespace tenter::emit {
namespace {

using units::Length;

// CSS Values 4 § 10.1: a sum in calc() needs spaces around its operators, and both sides of one type.
TEST(LengthSum, PrintsAPlainLengthWhereItCan) {
    EXPECT_EQ(LengthSum().css(), "0");
    EXPECT_EQ(LengthSum(Length::em(1.5)).css(), "1.5em");
    EXPECT_EQ(LengthSum(Length::px(2)).add(Length::px(-2)).css(), "0");
    EXPECT_EQ(LengthSum().add(Length::rem(1), -1).css(), "-1rem");
    EXPECT_EQ(LengthSum(Length::px(4)).add(Length::em(2)).css(), "calc(2em + 4px)");
    EXPECT_EQ(LengthSum(Length::px(-4)).add(Length::percent(50)).css(), "calc(50% - 4px)");
    EXPECT_EQ(LengthSum(Length::em(-1)).add(Length::px(-4)).term(), "(-1em - 4px)");
    EXPECT_EQ(LengthSum().term(), "0px");
}

// CSSOM § 6.7.2, "serialize a CSS value": the shortest of the four forms.
TEST(Sides, AreWrittenInTheShortestForm) {
    EXPECT_EQ(sides("1px", "1px", "1px", "1px"), "1px");
    EXPECT_EQ(sides("0", "auto", "0", "auto"), "0 auto");
    EXPECT_EQ(sides("0.8em", "0", "0", "0"), "0.8em 0 0");
    EXPECT_EQ(sides("1px", "2px", "3px", "4px"), "1px 2px 3px 4px");
}

// CSS Fonts 4 § 2.1.1: generic families are keywords and lose their meaning in quotes.
TEST(Families, AreQuotedUnlessGeneric) {
    EXPECT_EQ(families({"EB Garamond", "Serif"}), "\"EB Garamond\", serif");
    EXPECT_EQ(families({"</style><script>"}), R"("\3c /style\3e \3c script\3e ")");
    EXPECT_EQ(families({"inherit"}), "\"inherit\"");
}

// CSS Backgrounds 3 § 6.1.
TEST(Shadow, IsNoneWhereItIsInvisible) {
    const units::Colour grey{0, 0, 0, 0x33};
    EXPECT_EQ(shadow({Length(), Length::px(2), Length::px(8), Length(), grey}), "0 2px 8px #0003");
    EXPECT_EQ(shadow({Length(), Length::px(2), Length::px(8), Length::px(1), grey}), "0 2px 8px 1px #0003");
    EXPECT_EQ(shadow({Length(), Length(), Length(), Length(), grey}), "none");
    EXPECT_EQ(shadow({Length(), Length::px(2), Length(), Length(), units::Colour{0, 0, 0, 0}}), "none");
}

}  // namespace
}  // namespace tenter::emit
