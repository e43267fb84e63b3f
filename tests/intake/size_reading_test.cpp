// A pasted size against a published one, against what this project prints, and against CSS Values 4 and CSS
// Fonts 4.
#include "intake/size_reading.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace tenter::intake {
namespace {

SizeReading reading(std::string_view text, const SizeContext& context = {}) {
    project::Problems problems;
    const auto read = readSize(text, context, problems);
    EXPECT_TRUE(read) << text << ": " << (problems.empty() ? "" : problems[0].line());
    EXPECT_TRUE(problems.empty()) << text;
    return read.value_or(SizeReading());
}

project::Problem refusal(std::string_view text, const SizeContext& context = {}) {
    project::Problems problems;
    EXPECT_FALSE(readSize(text, context, problems)) << text;
    EXPECT_EQ(problems.size(), 1U) << text;
    return problems.empty() ? project::Problem() : problems[0];
}

void expectRamp(const units::Ramp& ramp, units::RampPoint from, units::RampPoint to) {
    EXPECT_NEAR(ramp.from().width, from.width, 1e-9);
    EXPECT_NEAR(ramp.from().size, from.size, 1e-9);
    EXPECT_NEAR(ramp.to().width, to.width, 1e-9);
    EXPECT_NEAR(ramp.to().size, to.size, 1e-9);
}

// Published: P. Rodriguez, "Linearly Scale font-size with CSS clamp()", CSS-Tricks, 2020: 1rem at 360 px
// and 3.5rem at 840 px are -0.875rem + 8.333vw.
TEST(SizeReading, GivesTheEndsOfThePublishedSize) {
    const SizeReading read = reading("clamp(1rem, -0.875rem + 8.333vw, 3.5rem)");
    expectRamp(read.ramp, {360, 16}, {840, 56});
    EXPECT_TRUE(read.exact);
    EXPECT_EQ(read.follow, project::Follow::Viewport);
    EXPECT_EQ(read.says,
              "16\u00A0px where the viewport is 360\u00A0px wide, 56\u00A0px where it is 840\u00A0px wide. "
              "Between these widths the size changes in a straight line; outside them it is constant.");
}

TEST(SizeReading, UsesTheEndsOfTheWidthsWithoutKinks) {
    expectRamp(reading("calc(1rem + 1vw)").ramp, {320, 19.2}, {1920, 35.2});
    expectRamp(reading("max(16px, 1rem + 0.5vw)", {400, 900, 16, {}}).ramp, {400, 18}, {900, 20.5});
    expectRamp(reading("max(20px, 16px + 1vw)").ramp, {400, 20}, {1920, 35.2});
    expectRamp(reading("min(20px, 16px + 1vw)").ramp, {320, 19.2}, {400, 20});
    expectRamp(reading("clamp(15px, 25px - 1vw, 20px)").ramp, {500, 20}, {1000, 15});
    EXPECT_TRUE(reading("1.25rem").ramp.isFlat());
    EXPECT_EQ(reading("1.25rem").ramp.from().size, 20);
    EXPECT_EQ(reading("1.25rem").says, "20\u00A0px at every width.");
    EXPECT_EQ(reading("clamp(20px, 1vw, 30px)", {320, 900, 16, {}}).ramp.sizeAt(600), 20);
}

// CSS Fonts 4 § 2.5 and § 2.7, CSS Cascade 5 § 6.
TEST(SizeReading, FindsTheSizeInDeclarationsAndRules) {
    for (const char* text :
         {"20px", " 20px ; ", "20px !important", "font-size: 20px", "color: red; FONT-SIZE: 20PX;\n",
          "font-size: 18px; font-size: 20px", "font-size: 20px !important; font-size: 18px",
          "font: italic 700 20px/1.4 Sandbar, serif", "font: oblique 14deg small-caps 20px serif",
          "font: 500 calc(1rem + 4px)/2 serif", ".tide h2 { color: red; font-size: 20px }",
          "@media (min-width: 700px) { .a { font: 20px serif } .b { color: red } }", "/* tide */ 20px",
          "font-size: 18px; font: 20px serif"}) {
        EXPECT_EQ(reading(text).ramp.from().size, 20) << text;
        EXPECT_TRUE(reading(text).ramp.isFlat()) << text;
    }
}

TEST(SizeReading, FollowsTheCardIfTheSizeDoes) {
    const SizeReading read = reading("clamp(15px, 12px + 1.5cqi, 21px)", {100, 700, 16, {}});
    expectRamp(read.ramp, {200, 15}, {600, 21});
    EXPECT_EQ(read.follow, project::Follow::Card);
    EXPECT_NE(read.says.find("where the card is 200\u00A0px wide"), std::string::npos);
    EXPECT_EQ(reading("5cqw").follow, project::Follow::Card);
    EXPECT_EQ(refusal("calc(1vw + 1cqi)").what, "The size follows both the viewport and the card.");
}

// CSS Fonts 4 § 2.5: em and % of font-size are the parent's.
TEST(SizeReading, SaysWhatEmAndPercentagesAreAssumedToBe) {
    EXPECT_EQ(reading("1.5em").ramp.from().size, 24);
    EXPECT_EQ(reading("1.5em").says, "24\u00A0px at every width. Assumed: 1em is 16\u00A0px, the root size.");
    EXPECT_EQ(reading("150%", {320, 1920, 16, 20.0}).ramp.from().size, 30);
    EXPECT_EQ(reading("150%", {320, 1920, 16, 20.0}).says,
              "30\u00A0px at every width. Assumed: 100\u00A0% is 20\u00A0px.");
    EXPECT_EQ(reading("1.5rem", {320, 1920, 10, {}}).says,
              "15\u00A0px at every width. Assumed: 1rem is 10\u00A0px.");
}

// Worked by hand: 16 px up to 800, then 2vw to 38.4 px at 1600 … with a step of another slope in the middle.
TEST(SizeReading, SaysHowLargeTheErrorOfTheNearestRampIsAndWhere) {
    const SizeReading read = reading("max(16px, 2vw, 5vw - 36px)", {400, 1600, 16, {}});
    EXPECT_FALSE(read.exact);
    EXPECT_EQ(read.ramp.sizeAt(400), 16);
    EXPECT_EQ(read.ramp.sizeAt(1600), 44);
    const auto size = [](double width) { return std::max({16.0, width / 50, width / 20 - 36}); };
    double worst = 0;
    for (double width = 400; width <= 1600; width += 0.5)
        worst = std::max(worst, std::abs(read.ramp.sizeAt(width) - size(width)));
    EXPECT_NEAR(worst, read.largestError, 0.02);
    EXPECT_NEAR(std::abs(read.ramp.sizeAt(read.errorAt) - size(read.errorAt)), read.largestError, 1e-9);
    EXPECT_NE(read.says.find("The pasted size is not exactly this ramp: the difference is at most "),
              std::string::npos);
    // No ramp through both ends, flat beyond two of a hundred widths, is nearer.
    for (double from = 400; from < 1600; from += 12) {
        for (double to = from + 12; to <= 1600; to += 12) {
            const auto other = units::Ramp::between({from, 16}, {to, 44});
            double departs = 0;
            for (const double width : {400.0, 800.0, 1200.0, 1600.0, from, to})
                departs = std::max(departs, std::abs(other->sizeAt(width) - size(width)));
            ASSERT_GE(departs, read.largestError - 0.006);
        }
    }
    // Up and down again, both ends alike.
    EXPECT_TRUE(reading("min(10px + 1vw, 30px - 1vw)", {500, 1500, 16, {}}).ramp.isFlat());
}

// What this project prints is read back as what it was printed from.
TEST(SizeReading, ReadsBackWhatIsPrinted) {
    std::mt19937 random(17);
    std::uniform_real_distribution<double> sizes(9, 90);
    std::uniform_real_distribution<double> widths(320, 1920);
    for (int i = 0; i < 1000; ++i) {
        const auto ramp =
            units::Ramp::between({widths(random), sizes(random)}, {widths(random), sizes(random)});
        if (!ramp || ramp->to().width - ramp->from().width < 50) continue;
        const bool card = i % 4 == 0;
        const double root = i % 3 == 0 ? 10 : 16;
        const units::FluidSize printed =
            units::FluidSize::from(*ramp, root, i % 2 == 0 ? units::Unit::Rem : units::Unit::Px,
                                   card ? units::Unit::Cqi : units::Unit::Vw);
        const SizeReading read = reading(printed.css(), {320, 1920, root, {}});
        EXPECT_TRUE(read.exact) << printed.css();
        EXPECT_EQ(read.follow, card ? project::Follow::Card : project::Follow::Viewport);
        for (double width = 320; width <= 1920; width += 16)
            ASSERT_NEAR(read.ramp.sizeAt(width), printed.resolve({root, root, 0, width, width}), 0.01)
                << printed.css();
    }
}

TEST(SizeReading, SaysWhereAndWhyItCannotReadText) {
    EXPECT_EQ(refusal("font-size:\n  clamp(1rem, 2vh, 3rem)").place, "2:15");
    EXPECT_EQ(refusal(".a { font-size: var(--tide) }").place, "1:17");
    EXPECT_EQ(refusal("-0.875rem + 8.333vw").line(),
              "1:11: The calculation is not inside calc(). Write calc( ) around the whole value.");
    EXPECT_EQ(refusal("16").what, "The font size is a number without a unit.");
    EXPECT_EQ(refusal(".a { font-size: 1px } .b { font-size: 2px }").place, "1:28");
    EXPECT_EQ(refusal("calc(2vw - 20px)").what, "The size is 0\u00A0px at a width of 320\u00A0px.");
    for (const char* wrong :
         {"", ";", "1rem 2rem", "1rem; 2rem", "medium", "color: red", ".a { color: red }", "a { font-size: }",
          "font-size: 1rem 1rem", "font: serif", "font: inherit", "font: 500 serif", "-1px", "0", "0px",
          "20000px", "}", "a:no-such { font-size: 1px }", "\xff"})
        EXPECT_FALSE(refusal(wrong).fix.empty()) << wrong;
    EXPECT_EQ(refusal("1rem", {900, 400, 16, {}}).what, "The range of widths is not valid.");
    EXPECT_EQ(refusal("1rem", {400, 900, std::nan(""), {}}).what,
              "The font size of the root or the parent is not valid.");
}

TEST(SizeReading, AcceptsAnyInput) {
    for (const char* piece : {"(", "calc(", "a,", "a{font-size:", "font-size:1px;", "{", "1px "}) {
        std::string text;
        while (text.size() < 200'000)
            text += piece;
        project::Problems problems;
        EXPECT_TRUE(readSize(text, {}, problems) || problems.size() == 1) << piece;
    }
    std::string kinked = "max(1px";
    for (int i = 1; i < 900; ++i)
        kinked += ", calc(" + std::to_string(i) + "vw - " + std::to_string(i * i * 0.01) + "px)";
    EXPECT_FALSE(reading(kinked + ")").exact);
}

}  // namespace
}  // namespace tenter::intake
