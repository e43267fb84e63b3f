// What engines' grids of numbers leave of type: figures read from the engines with hinting off.
#include <gtest/gtest.h>

#include "preparing.h"

namespace tenter::text {
namespace {

// Measured in Chromium 156: widths of a heading in Vollkorn over its advances at 640 px.
TEST(Grids, ChromiumCutsSizesDownToHundredthsThenToSixtyFourths) {
    EXPECT_EQ(blink().drawnSize(16), 16);
    EXPECT_EQ(blink().drawnSize(16.4325) * 64, 1051);
    EXPECT_EQ(blink().drawnSize(16.4725) * 64, 1054);
    EXPECT_EQ(blink().drawnSize(16.5525) * 64, 1059);
    EXPECT_EQ(blink().drawnAdvance(7.2503), 7.2503);
}

// Measured in Firefox 153: `Hxg` in Karla, regular and bold, white-space nowrap.
TEST(Grids, FirefoxRoundsEachAdvanceOfALabel) {
    const auto label = [](double weight, double size) {
        const ParagraphPtr paragraph =
            Paragraph::prepare(test::plain("Hxg"), test::styleOf("Karla", weight), test::fonts(), gecko());
        return labelWidth(*paragraph, test::at(size, 400), size, gecko());
    };
    EXPECT_NEAR(label(400, 15.814), 27.58333, 1e-5);
    EXPECT_NEAR(label(400, 15.826), 27.61667, 1e-5);
    EXPECT_NEAR(label(700, 15.814), 29.11667, 1.01 / 60);  // one of its advances lies on the edge
    EXPECT_NEAR(label(700, 15.826), 29.15, 1e-5);
}

// Measured in Firefox 153: letter spacing stands on 1/60 px.
TEST(Grids, FirefoxRoundsLetterSpacing) {
    const ParagraphPtr paragraph =
        Paragraph::prepare(test::plain("tide"), test::styleOf("Karla"), test::fonts(), gecko());
    LineQuery spaced = test::at(16, 400);
    spaced.letterSpacing = 0.13;
    const double plain = labelWidth(*paragraph, test::at(16, 400), 16, gecko());
    EXPECT_NEAR(labelWidth(*paragraph, spaced, 16, gecko()) - plain, 4 * 8.0 / 60, 1e-9);
}

// Measured in Firefox 153: the baseline of a line of 40 px in Karla (ascent 1834 of 2000, descent 504) goes
// from 25 to 25.5 px where FreeType's size goes from 1012/64 to 1013/64 px. 1834 · 1012/64 / 2000 would be
// 14.5001 and so rounded up; px to a unit in 1/65 536 make it 14.49997.
TEST(Grids, FirefoxScalesMetricsAsFreeTypeDoes) {
    const FacePtr face = test::fonts().find({"Karla"}, 400, false, nullptr).front();
    EXPECT_EQ(gecko().extent(*face, 15.824, 40).above, 25);
    EXPECT_EQ(gecko().extent(*face, 15.826, 40).above, 25.5);
}

// At four device px to a CSS px: 0.917 · 15.83 · 4 is 58.06 device px, so 58/4 = 14.5 CSS px, where it is 15
// at one. Chromium stacks on 1/64 of a device px, Firefox on 1/60 of a CSS px at either. CSS Values 4 § 6.2;
// measured in both.
TEST(Grids, AreOfDevicePx) {
    const FacePtr face = test::fonts().find({"Karla"}, 400, false, nullptr).front();
    const BreakProfile& fine = atRatio(gecko(), 4);
    EXPECT_EQ(fine.name(), "gecko");
    EXPECT_EQ(&atRatio(gecko(), 1), &gecko());
    EXPECT_EQ(&atRatio(gecko(), 4), &fine);
    EXPECT_EQ(fine.extent(*face, 15.83, 40).above, 14.5 + (40 - 14.5 - 4) / 2);
    EXPECT_EQ(fine.snapped(10.0101), 601.0 / 60);
    EXPECT_EQ(atRatio(blink(), 4).snapped(10.01), std::floor(10.01 * 256) / 256);
    EXPECT_EQ(blink().snapped(10.01), 640.0 / 64);
}

}  // namespace
}  // namespace tenter::text
