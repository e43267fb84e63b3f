// Checks of font sizes and fonts. Limits from common practice; layouts are the reference.
#include <set>

#include "../sweep/sweeping.h"
#include "checking.h"
#include "layout/prepared.h"

namespace tenter::checks {
namespace {

using namespace test;  // NOLINT(google-build-using-namespace)

TEST(GrowthCheck, ReportsTextThatGrowsAgainstItsColumn) {
    project::Project project = quiet();
    set(project, "text/body/size", "[[400, 20], [1200, 15]]");
    expectSpans(findingOf(project, "growth"), {{400, 1200}}, 0.2);
    set(project, "text/body/size", "[[400, 15], [1200, 20]]");
    EXPECT_FALSE(has(project, "growth"));
}

TEST(GrowthCheck, ReportsJumpsThatTheColumnDoesNotHave) {
    project::Project project = quiet("", R"([{"upTo": 800}, {}])");
    setInBand(project, 0, "text/body/size", "16");
    setInBand(project, 1, "text/body/size", "17");
    expectSpans(findingOf(project, "growth"), {{800, 800}});
    setInBand(project, 1, "text/body/size", "16.4");
    EXPECT_FALSE(has(project, "growth"));
    // Half the column and smaller text: correct.
    setInBand(project, 1, "text/body/size", "14");
    setInBand(project, 1, "row/columns", "2");
    EXPECT_FALSE(has(project, "growth"));
    setInBand(project, 1, "text/body/size", "18");
    EXPECT_TRUE(has(project, "growth"));
}

// The sizes are those of the worst role; other roles are named apart from them.
TEST(GrowthCheck, NamesOtherRolesWithoutTheSizesOfTheWorst) {
    project::Project stepped = quiet("", R"([{"upTo": 800}, {}])");
    setInBand(stepped, 0, "text/body/size", "16");
    setInBand(stepped, 1, "text/body/size", "18");
    setInBand(stepped, 0, "text/heading/size", "30");
    setInBand(stepped, 1, "text/heading/size", "33");
    const std::string jump = findingOf(stepped, "growth").says;
    EXPECT_TRUE(
        jump.starts_with("Just above 800\u00A0px, heading text jumps from 30 to 33\u00A0px although its "
                         "column stays "))
        << jump;
    EXPECT_NE(jump.find(" wide (body text also jumps). "), std::string::npos) << jump;

    project::Project sloped = quiet();
    set(sloped, "text/body/size", "[[400, 20], [1200, 15]]");
    set(sloped, "text/heading/size", "[[400, 40], [1200, 30]]");
    const std::string slope = findingOf(sloped, "growth").says;
    EXPECT_NE(slope.find(", heading text shrinks from 40 to 30\u00A0px while "), std::string::npos) << slope;
    EXPECT_NE(slope.find(" (body text also shrinks). "), std::string::npos) << slope;
}

TEST(FontCheck, ReportsAFamilyThatIsMissing) {
    project::Project project = quiet();
    EXPECT_FALSE(has(project, "font")) << findingOf(project, "font").says;
    set(project, "text/body/family", R"(["Nowhere Grotesk"])");
    EXPECT_EQ(findingOf(project, "font").severity, Severity::Warning);
}

TEST(UnitCheck, NotesSizesInPx) {
    project::Project project = quiet();
    EXPECT_FALSE(has(project, "unit"));
    project.unit = units::Unit::Px;
    EXPECT_TRUE(has(project, "unit", Severity::Note));
}

// The end of a ramp is that of its emitted numbers, which are rounded.
TEST(StopsCheck, NotesTextThatStopsGrowingBeforeOrAfterItsColumn) {
    project::Project project = quiet("[" + card("Low tide", longText) + "]");
    set(project, "row/maxWidth", R"("1200px")");
    set(project, "text/body/size", "[[400, 15], [1500, 18]]");
    expectSpans(findingOf(project, "stops"), {{1200, 1500}}, 0.5);
    set(project, "text/body/size", "[[400, 15], [1000, 18]]");
    expectSpans(findingOf(project, "stops"), {{1000, 1200}}, 0.5);
    set(project, "text/body/size", "[[400, 15], [1250, 18]]");
    EXPECT_FALSE(has(project, "stops"));
    set(project, "text/body/size", "16");
    EXPECT_FALSE(has(project, "stops"));
}

/// The whole widths at which some part has different line counts in the two projects.
std::set<int> differentWidths(const project::Project& one, const project::Project& other) {
    std::set<int> widths;
    const layout::PreparedRow first(one, 0, checkStore(), text::blink());
    const layout::PreparedRow second(other, 0, checkStore(), text::blink());
    for (int width = 320; width <= 1920; ++width)
        if (countsAt(first, width) != countsAt(second, width)) widths.insert(width);
    return widths;
}

// CSS Fonts 5: size-adjust multiplies all advances of a font.
TEST(LateFontCheck, ReportsLinesThatDifferUntilTheFontHasLoaded) {
    project::Project project = headed("Up the creek at dusk with lanterns, for whoever likes to walk slowly");
    set(project, "text/heading/family", R"(["Vollkorn", "DejaVu Sans"])");
    Options options;
    options.profile = &text::blink();
    EXPECT_FALSE(has(project, "late-font", std::nullopt, options)) << "an installed family is there at once";
    project.fonts.emplace_back().family = "Vollkorn";
    project::Project before = project;
    set(before, "text/heading/family", R"(["DejaVu Sans"])");
    const std::set<int> different = differentWidths(project, before);
    ASSERT_GT(different.size(), 40U);
    const Finding found = findingOf(project, "late-font", std::nullopt, options);
    EXPECT_EQ(found.severity, Severity::Warning);
    EXPECT_EQ(wholeWidthsOf(found), different);
    EXPECT_NE(found.says.find("until Vollkorn has loaded"), std::string::npos) << found.says;
    // With the reported size-adjust far fewer widths remain.
    const std::size_t at = found.says.find("size-adjust: ") + 13;
    const double share = std::stod(found.says.substr(at)) / 100;
    set(before, "text/heading/size", std::to_string(20 * share));
    EXPECT_LT(differentWidths(project, before).size(), different.size() / 3);

    project.fonts.front().family = "Karla";
    EXPECT_FALSE(has(project, "late-font", std::nullopt, options)) << "the heading does not use it";
}

}  // namespace
}  // namespace tenter::checks
