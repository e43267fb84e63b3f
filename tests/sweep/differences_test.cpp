// Differences between break profiles. The rules come from UAX #14 and from an engine; the widths follow from
// the width of the text.
#include "sweep/differences.h"

#include <algorithm>
#include <cmath>

#include "../layout/laying.h"

namespace tenter::sweep {
namespace {

text::ParagraphStore& store() {
    static text::Fonts fonts;
    static text::ParagraphStore store(fonts);
    return store;
}

layout::PreparedRow prepared(const project::Project& project, const text::BreakProfile& profile) {
    return {project, 0, store(), profile};
}

/// One card with one paragraph, as wide as the viewport.
project::Project paragraph(const std::string& copy) {
    return test::projectOf(test::styleOf(R"({"columns": 1, "width": "100%"})", test::plainCard), "[{}]",
                           R"([{"parts": [{"role": "body", "copy": ")" + copy + R"("}]}])");
}

double wide(const std::string& copy) {
    const auto row = prepared(paragraph(copy), text::blink());
    return layout::layOut(row, 4000).lines.front().line.width;
}

project::Project sampleProject(const std::string& name) {
    project::Problems problems;
    const auto project =
        project::read(TENTER_SOURCE_DIR "/sample-projects/" + name + ".tenter.json", problems);
    EXPECT_TRUE(project.has_value());
    return project.value_or(project::Project());
}

// UAX #14 LB25 forbids a break between a hyphen and a digit, and Firefox follows it (DEVELOPERS.md,
// measured); Chromium's table of ASCII pairs breaks there after a letter.
TEST(Differences, AreWhereOnlyOneProfileBreaks) {
    const project::Project project = paragraph("Low tide-7 water");
    const auto blink = prepared(project, text::blink());
    const auto gecko = prepared(project, text::gecko());
    const auto differences = lineDifferences({&blink, &gecko}, 20, 400);
    // Chromium sets "Low tide-", "7 water"; Firefox "Low", "tide-7", "water".
    ASSERT_FALSE(differences.empty());
    const LineDifference& widest = differences.back();
    EXPECT_EQ(widest.lines, (std::vector<std::uint32_t>{2, 3}));
    EXPECT_EQ(widest.place.card, 0U);
    EXPECT_EQ(widest.place.part, 0U);
    EXPECT_EQ(widest.first, std::ceil(wide("Low tide-")));
    EXPECT_EQ(widest.last, std::floor(std::min(wide("Low tide-7"), wide("tide-7 water"))));
}

TEST(Differences, AreEmptyBetweenARowAndItself) {
    const auto blink = prepared(paragraph("Low tide-7 water"), text::blink());
    EXPECT_TRUE(lineDifferences({&blink, &blink}, 20, 400).empty());
    EXPECT_TRUE(lineDifferences({&blink}, 20, 400).empty());
}

TEST(Differences, AreEmptyWhereBothBreakOnlyAtSpaces) {
    const project::Project project = paragraph("Low water comes an hour later");
    const auto blink = prepared(project, text::blink());
    const auto gecko = prepared(project, text::gecko());
    EXPECT_TRUE(lineDifferences({&blink, &gecko}, 120, 400).empty());
}

/// True if one of `differences` is of the part with index `part` at the width of `layout`.
bool isCovered(const std::vector<LineDifference>& differences, const layout::Layout& layout,
               std::size_t part) {
    return std::ranges::any_of(differences, [&](const LineDifference& one) {
        return one.first <= layout.width && layout.width <= one.last &&
               layout.cards[one.place.card].firstPart + one.place.part == part;
    });
}

// Every whole width is laid out one by one. What is left out is rounding: a line has next to no slack.
TEST(Differences, AgreeWithEachWidth) {
    const project::Project project = sampleProject("shore-walks");
    const auto blink = prepared(project, text::blink());
    const auto gecko = prepared(project, text::gecko());
    const auto differences = lineDifferences({&blink, &gecko}, project.leastWidth, project.mostWidth);
    std::size_t differing = 0;
    std::size_t covered = 0;
    for (const double width : wholeWidths(project.leastWidth, project.mostWidth)) {
        const layout::Layout a = layout::layOut(blink, width);
        const layout::Layout b = layout::layOut(gecko, width);
        for (std::size_t i = 0; i < a.parts.size(); ++i)
            if (a.parts[i].lineCount != b.parts[i].lineCount) {
                ++differing;
                const bool isRounding = std::min(a.parts[i].slack, b.parts[i].slack) < text::roundingSlack;
                EXPECT_TRUE(isRounding || isCovered(differences, a, i)) << width;
            }
        for (const LineDifference& difference : differences) {
            if (width < difference.first || width > difference.last) continue;
            ++covered;
            const std::size_t part = a.cards[difference.place.card].firstPart + difference.place.part;
            EXPECT_EQ(difference.lines,
                      (std::vector<std::uint32_t>{a.parts[part].lineCount, b.parts[part].lineCount}));
        }
    }
    EXPECT_GT(covered, 0U);
    EXPECT_LE(covered, differing);
}

TEST(Differences, StopWhenAsked) {
    const project::Project project = paragraph("Low tide-7 water");
    const auto blink = prepared(project, text::blink());
    const auto gecko = prepared(project, text::gecko());
    int asked = 0;
    EXPECT_TRUE(lineDifferences({&blink, &gecko}, 20, 400, [&] { return ++asked < 100; }).empty());
    EXPECT_EQ(asked, 100);
}

TEST(WidthRanges, JoinOverlapsAndNeighbours) {
    const auto at = [](double first, double last) { return LineDifference{first, last, {}, {1, 2}}; };
    EXPECT_EQ(widthRangesOf({at(320, 330), at(325, 340), at(341, 350), at(352, 360)}),
              (std::vector<WidthRange>{{320, 350}, {352, 360}}));
    EXPECT_TRUE(widthRangesOf({}).empty());
}

TEST(WholeWidths, IncludeBothEndsEvenIfFractional) {
    EXPECT_EQ(wholeWidths(319.5, 322.25), (std::vector<double>{319.5, 320, 321, 322, 322.25}));
    EXPECT_EQ(wholeWidths(320, 320), (std::vector<double>{320}));
    EXPECT_TRUE(wholeWidths(321, 320).empty());
}

}  // namespace
}  // namespace tenter::sweep
