// Rounding of font sizes and advances in browser engines, measured without hinting.
#include <gtest/gtest.h>

#include <cmath>

#include "preparing.h"

namespace tenter::text {
namespace {

// Measured in Chromium 156: width of a heading in Vollkorn relative to its advances at 640 px.
TEST(Grids, ChromiumTruncatesSizesToHundredthsThenToSixtyFourths) {
    const auto drawn = [](double size) { return blink().drawnSize(size, nullptr); };
    EXPECT_EQ(drawn(16), 16);
    EXPECT_EQ(drawn(16.4325) * 64, 1051);
    EXPECT_EQ(drawn(16.4725) * 64, 1054);
    EXPECT_EQ(drawn(16.5525) * 64, 1059);
    EXPECT_EQ(drawn(16.72) * 64, 1069);  // as a float it is less than 16.72
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
    EXPECT_NEAR(label(700, 15.814), 29.11667, 1.01 / 60);  // one of its advances lies between two steps
    EXPECT_NEAR(label(700, 15.826), 29.15, 1e-5);
}

// Measured in Firefox 153: the letters and digits of ASCII at 14.311 px, without kerning.
TEST(Grids, FirefoxDrawsTrueTypeInSixtyFourthsOnly) {
    const auto drawn = [](const char* family) {
        return gecko().drawnSize(14.311, test::fonts().find({family}, 400, false).front().get());
    };
    EXPECT_EQ(drawn("Lato"), 916.0 / 64);
    EXPECT_DOUBLE_EQ(drawn("Cabin"), 859.0 / 60);
}

// The mean is that of all sizes, here of a million between 10 and 40 px.
TEST(Grids, TheMeanTruncationIsThatOfAllSizes) {
    double lost = 0;
    double lostInSteps = 0;
    constexpr int count = 1'000'000;
    for (int i = 0; i < count; ++i) {
        const double size = 10 + 30.0 * i / count;
        lost += size - blink().drawnSize(size, nullptr);
        lostInSteps += size - std::trunc(size / gecko().fluidStep()) * gecko().fluidStep();
    }
    EXPECT_NEAR(blink().meanTruncation(), lost / count, 1e-4);
    EXPECT_NEAR(gecko().meanTruncation(), lostInSteps / count, 1e-4);
}

// Measured in Firefox 153: letter spacing is rounded to 1/60 px.
TEST(Grids, FirefoxRoundsLetterSpacing) {
    const ParagraphPtr paragraph =
        Paragraph::prepare(test::plain("tide"), test::styleOf("Karla"), test::fonts(), gecko());
    LineQuery spaced = test::at(16, 400);
    spaced.letterSpacing = 0.13;
    const double plain = labelWidth(*paragraph, test::at(16, 400), 16, gecko());
    EXPECT_NEAR(labelWidth(*paragraph, spaced, 16, gecko()) - plain, 4 * 8.0 / 60, 1e-9);
}

// Measured in Firefox 153: the baseline of a line of 40 px in Karla (ascent 1834 of 2000, descent 504) moves
// from 25 to 25.5 px when FreeType's size changes from 1012/64 to 1013/64 px. 1834 · 1012/64 / 2000 would
// be 14.5001, which rounds up; with a scale in steps of 1/65 536 it is 14.49997, which rounds down.
TEST(Grids, FirefoxScalesMetricsAsFreeTypeDoes) {
    const FacePtr face = test::fonts().find({"Karla"}, 400, false, nullptr).front();
    EXPECT_EQ(gecko().extent(*face, 15.824, 40).above, 25);
    EXPECT_EQ(gecko().extent(*face, 15.826, 40).above, 25.5);
}

// Measured in Chromium 156: a line with words of EB Garamond 12 in a paragraph of EB Garamond 08 is 1 px
// taller from 15.85 px on, where 0.726 of the size rounds to 12 px, and not at 15.841445 px.
TEST(Grids, ChromiumRoundsMetricsOfASizeInHundredths) {
    const FacePtr face = test::fonts().find({"EB Garamond"}, 400, false, nullptr).front();
    ASSERT_EQ(face->ascent(), 0.726);
    EXPECT_EQ(blink().extent(*face, 15.841445, 24).above, 11 + 4);
    EXPECT_EQ(blink().extent(*face, 15.85, 24).above, 12 + 4);
}

// With four device px in a CSS px, an ascent of 0.917 · 15.83 · 4 is 58.06 device px, so 58/4 = 14.5 CSS px;
// with one device px it is 15. Chromium rounds heights to 1/64 device px, Firefox to 1/60 CSS px at any
// ratio. CSS Values 4 § 6.2; measured in both.
TEST(Grids, CountDevicePx) {
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

// Measured in Firefox 153: 12 lines of 3.16vw are 121.2 px high in a viewport of 320 px, 10.112 px a line.
TEST(Grids, FirefoxRoundsViewportLengthsAndPercentagesDown) {
    EXPECT_EQ(gecko().lineHeight(10.112, units::Length::vw(3.16)), 606.0 / 60);
    EXPECT_EQ(gecko().lineHeight(10.112, units::Length::px(10.112)), 607.0 / 60);
    EXPECT_EQ(gecko().snapped(10.112, units::Length::percent(3.16)), 606.0 / 60);
    EXPECT_EQ(gecko().snapped(606.0 / 60, units::Length::vw(1.25)), 606.0 / 60);
    // A margin of -1.003 % of 500 px is -5 px, one of -5.0151 px is -301/60 px.
    EXPECT_EQ(gecko().snapped(-5.015, units::Length::percent(-1.003)), -5);
    EXPECT_EQ(gecko().snapped(-5.0151, units::Length::px(-5.0151)), -301.0 / 60);
    // At 500 px: the float next to 3.84 is less, that next to 3.16 is more.
    EXPECT_EQ(gecko().lineHeight(19.2, units::Length::vw(3.84)), 1151.0 / 60);
    EXPECT_EQ(gecko().lineHeight(15.8, units::Length::vw(3.16)), 948.0 / 60);
    EXPECT_EQ(blink().snapped(10.112, units::Length::px(10.112)),
              blink().snapped(10.112, units::Length::vw(3.16)));
}

// Measured in Chromium 156: a card with margins of -0.45em (of 10 px), -1.96px and -0.97px is 3/64 px taller
// than with margins rounded down.
TEST(Grids, ChromiumRoundsNegativeLengthsTowardsZero) {
    EXPECT_EQ(blink().snapped(-1.96), -125.0 / 64);
    EXPECT_EQ(blink().snapped(-0.97), -62.0 / 64);
    EXPECT_EQ(blink().snapped(-4.5), -4.5);
}

// Measured in Chromium 156: in a viewport of 320 px with a root of 14.16 px, 1.4357rem - 0.3935vw is the
// float 1220.5/64 px, although it is 3e-7 px less, and a line of 1.5 times that is 1831/64 px high.
TEST(Grids, ChromiumRoundsTheFloatOfAFontSize) {
    EXPECT_EQ(blink().lineHeight(1.4357 * 14.16 - 0.3935 * 3.2, 1.5), 1831.0 / 64);
}

// Measured in Chromium 156: of 498.8125 px, six columns get 5320/64 or 5321/64 px. In Firefox 153 each is a
// whole number of 1/60 px.
TEST(Grids, EnginesRoundEqualColumnsInTheirOwnWays) {
    const std::vector<int> units = {5320, 5321, 5320, 5321, 5321, 5320};
    for (int column = 0; column < 6; ++column) {
        EXPECT_EQ(blink().columnWidth(498.8125, 6, column) * 64, units[static_cast<std::size_t>(column)]);
        EXPECT_DOUBLE_EQ(gecko().columnWidth(100, 6, column), 1000.0 / 60);
    }
    EXPECT_EQ(blink().columnWidth(96, 3, 2), 32);
}

// Measured in Chromium 156: text in several inline boxes on a line is added up in whole 1/64 px.
TEST(Grids, ChromiumRoundsUpTheTextOfEachInlineBox) {
    using Kind = project::Run::Kind;
    const project::Copy copy = {{Kind::Link, "low", "#"}, {Kind::Plain, " tide", ""}};
    const auto width = [&](const BreakProfile& profile) {
        const ParagraphPtr paragraph =
            Paragraph::prepare(copy, test::styleOf("Karla"), test::fonts(), profile);
        DrawnPositions drawn;
        findDrawnPositions(*paragraph, test::at(15, 400), 15, profile, drawn);
        EXPECT_EQ(drawn.ends.size(), paragraph->clusters().size() + 1);
        return drawn.ends[3];
    };
    const double low = test::prepare("low", test::styleOf("Karla"))->ems(0, 3) * 15;
    EXPECT_EQ(width(blink()), std::ceil(low * 64) / 64);
    EXPECT_NEAR(width(gecko()), low, 1.5 / 60);
}

// Measured in Firefox 153: the hyphen that is drawn at a soft hyphen has an advance of whole 1/60 px.
TEST(Grids, FirefoxRoundsTheAdvanceOfAHyphen) {
    const ParagraphPtr paragraph =
        Paragraph::prepare(test::plain("co\u00ADop"), test::styleOf("Lato"), test::fonts(), gecko());
    LineQuery query = test::at(15.6848, 400);
    DrawnPositions positions;
    findDrawnPositions(*paragraph, query, 15.6848, gecko(), positions);
    query.size = gecko().drawnSize(15.6848, paragraph->strut().get());
    query.drawn = &positions;
    const Opportunity& hyphen = paragraph->opportunities().front();
    ASSERT_EQ(hyphen.kind, Opportunity::Kind::SoftHyphen);
    const double steps = lineWidth(*paragraph, query, 0, 0, hyphen) * 60;
    EXPECT_NEAR(steps, std::round(steps), 1e-6);
    EXPECT_GT(
        std::abs(hyphen.endCorrection * query.size * 60 - std::round(hyphen.endCorrection * query.size * 60)),
        0.01);
}

}  // namespace
}  // namespace tenter::text
