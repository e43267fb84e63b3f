#include "units/quantities.h"

#include <gtest/gtest.h>

namespace tenter::units {
namespace {

TEST(Quantities, HaveNoThousandsSeparatorAndAtMostTwoDecimals) {
    EXPECT_EQ(figure(1320), "1320");
    EXPECT_EQ(figure(1234567.891), "1234567.89");
    EXPECT_EQ(figure(2.5), "2.5");
    EXPECT_EQ(figure(14.999, 1), "15");
    EXPECT_EQ(figure(0.004), "0");
}

TEST(Quantities, HaveATrueMinusSignAndNeverMinusZero) {
    EXPECT_EQ(figure(-6), "\u22126");
    EXPECT_EQ(px(-0.5), "\u22120.5\u00A0px");
    EXPECT_EQ(figure(-0.001), "0");
}

TEST(Quantities, RoundDownOnlyWhereAsked) {
    EXPECT_EQ(figure(4.478), "4.48");
    EXPECT_EQ(figure(4.478, 2, Rounding::Down), "4.47");
    EXPECT_EQ(figure(-4.471, 2, Rounding::Down), "\u22124.48");
    // In doubles 0.29 · 100 is a little less than 29.
    EXPECT_EQ(figure(0.29 * 100, 0, Rounding::Down), "29");
    EXPECT_EQ(px(41.98, 1, Rounding::Down), "41.9\u00A0px");
}

TEST(Quantities, KeepTheirUnitOnTheirLine) {
    EXPECT_EQ(px(1320), "1320\u00A0px");
    EXPECT_EQ(percent(0.35), "35\u00A0%");
    EXPECT_EQ(percent(0.0022, 2), "0.22\u00A0%");
}

TEST(Quantities, ShowNoShareAsNothing) {
    EXPECT_EQ(percent(0.004), "under 1\u00A0%");
    EXPECT_EQ(percent(0.00001, 2), "under 0.01\u00A0%");
    EXPECT_EQ(percent(0), "0\u00A0%");
    EXPECT_EQ(percent(1), "100\u00A0%");
}

TEST(Quantities, NameRangesByBothEndsOrByOne) {
    EXPECT_EQ(pxRange(931, 1320), "931–1320\u00A0px");
    EXPECT_EQ(pxRange(931, 931), "931\u00A0px");
    EXPECT_EQ(pxRange(931.2, 931.4, 0), "931\u00A0px");
    EXPECT_EQ(fromPxToPx(931, 1320), "from 931 to 1320\u00A0px");
    EXPECT_EQ(fromPxToPx(388.27, 388.27, 1), "at 388.3\u00A0px");
}

}  // namespace
}  // namespace tenter::units
