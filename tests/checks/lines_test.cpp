// Checks of words, lines and measures. Limits from common practice; layouts are the reference.
#include <set>

#include "checking.h"
#include "layout/prepared.h"

namespace tenter::checks {
namespace {

using namespace test;  // NOLINT(google-build-using-namespace)

TEST(WordCheck, ReportsWordsThatBreakAndWordsThatOverflow) {
    project::Project project = headed("Saltmarshwatchersassociation");
    set(project, "text/heading/size", "40");
    const Finding cut = findingOf(project, "word");
    EXPECT_NE(cut.says.find("breaks in two"), std::string::npos) << cut.says;
    const layout::PreparedRow row(project, 0, checkStore(), text::blink());
    // Only the width of the word matters.
    const double wide = layout::layOut(row, 1900).lines.front().line.width;
    expectSpans(cut, {{320, wide}}, 1e-3);
    set(project, "text/heading/overflowWrap", R"("normal")");
    EXPECT_NE(findingOf(project, "word").says.find("overflows it"), std::string::npos);
    set(project, "text/heading/size", "[[320, 16], [1920, 24]]");
    EXPECT_FALSE(has(project, "word"));
}

TEST(SmallTypeCheck, ReportsTextBelowTheSmallestSize) {
    project::Project project = quiet();
    // 12 px at 720.
    set(project, "text/body/size", "[[320, 11], [1120, 13]]");
    expectSpans(findingOf(project, "small-type"), {{320, 720}}, 0.2);
    set(project, "text/body/size", "12");
    EXPECT_FALSE(has(project, "small-type"));
    set(project, "text/button/size", "11");
    EXPECT_FALSE(has(project, "small-type"));
    set(project, "text/button/size", "10.9");
    EXPECT_TRUE(has(project, "small-type"));
}

// A wish and a finding use the same limit.
TEST(Wishes, AreTheLimitsOfFindings) {
    project::Project project = quiet("[" + card("Low tide", "Out and back.") + "]");
    project::RoleWishes body;
    body.role = "body";
    body.leastSize = 17;
    project::RoleWishes wide = body;
    wide.from = 800;
    wide.leastSize = 15;
    project.row().wishes.emplace().roles = {body, wide};
    // The body is 16 px.
    expectSpans(findingOf(project, "small-type"), {{320, 800}});
    EXPECT_NE(findingOf(project, "small-type").says.find("The wish is at least 17\u00A0px."),
              std::string::npos);

    project = quiet("[" + card("A heading of two lines on a phone, and of one beyond it", "Out.") + "]");
    EXPECT_FALSE(has(project, "heading-lines"));
    project::RoleWishes heading;
    heading.role = "heading";
    heading.lines = 1;
    project.row().wishes.emplace().roles = {heading};
    EXPECT_EQ(wholeWidthsOf(findingOf(project, "heading-lines")), widthsOver(project, "heading", 1));
    project.row().wishes->roles[0].upTo = 400;
    EXPECT_EQ(findingOf(project, "heading-lines").widths.back().to, 400);
}

// Layouts at every whole width are the reference.
TEST(HeadingLinesCheck, HasExactlyTheWidthsWithTooManyLines) {
    project::Project project = headed("Up the creek at dusk with lanterns, for whoever likes to walk slowly");
    set(project, "text/heading/size", "[[500, 32], [900, 60]]");
    Options options;
    options.profile = &text::blink();
    const std::set<int> over = widthsOver(project, "heading", 3);
    ASSERT_GT(over.size(), 20U);
    const Finding found = findingOf(project, "heading-lines", std::nullopt, options);
    EXPECT_EQ(found.severity, Severity::Warning);
    EXPECT_EQ(wholeWidthsOf(found), over);
    // The worst width is well inside the range.
    EXPECT_TRUE(over.contains(static_cast<int>(found.at) - 5) &&
                over.contains(static_cast<int>(found.at) + 5))
        << found.at;
    EXPECT_FALSE(has(headed("Low tide"), "heading-lines"));
}

TEST(ButtonLinesCheck, ReportsLabelsThatWrap) {
    project::Project project = quiet(
        R"([{"parts": [{"role": "button", "copy": "Book a slow walk along the shore", "link": "#a"}]}])");
    EXPECT_FALSE(has(project, "button-lines"));
    set(project, "text/button/size", "30");
    Options options;
    options.profile = &text::blink();
    const Finding found = findingOf(project, "button-lines", std::nullopt, options);
    EXPECT_EQ(wholeWidthsOf(found), widthsOver(project, "button", 1));
    // A break in the text is a choice.
    set(project, "text/button/size", "12");
    std::get<project::TextPart>(project.row().cards[0].parts[0]).copy = {
        {project::Run::Kind::Plain, "Book", {}},
        {project::Run::Kind::Break, {}, {}},
        {project::Run::Kind::Plain, "Go", {}}};
    EXPECT_FALSE(has(project, "button-lines"));
}

// SC 1.4.8 (AAA): 80 characters, counted on the lines of layouts without the last line and without spaces at
// ends.
TEST(MeasureCheck, ReportsLinesTooLongAndTooShort) {
    const project::Project project = quiet("[" + card("Low tide", longText) + "]");
    const layout::PreparedRow row(project, 0, checkStore(), text::blink());
    Options options;
    options.profile = &text::blink();
    const Finding found = findingOf(project, "measure", Severity::Warning, options);
    ASSERT_EQ(found.widths.size(), 1U);
    const auto longest = [&](double width) {
        const layout::Layout laid = layout::layOut(row, width);
        const layout::LaidPart& part = laid.parts[1];
        std::uint32_t most = 0;
        for (std::uint32_t i = 0; i + 1 < part.lineCount; ++i) {
            const text::Line& line = laid.lines[part.firstLine + i].line;
            most = std::max(most, part.paragraph->graphemes(line.first, line.end));
        }
        return most;
    };
    EXPECT_LE(longest(found.widths[0].from - 0.01), 80U);
    EXPECT_GT(longest(found.widths[0].from + 0.01), 80U);
    EXPECT_NE(found.says.find("hold up to " + std::to_string(longest(found.at)) + " characters"),
              std::string::npos)
        << found.says;
    EXPECT_EQ(layout::layOut(row, found.widths[0].to - 0.01).parts[1].lineCount, 3U);
    EXPECT_EQ(layout::layOut(row, found.widths[0].to + 0.01).parts[1].lineCount, 2U);
    EXPECT_FALSE(has(project, "measure", Severity::Note));

    const project::Project narrow =
        quiet("[" + card("Low tide", longText) + "]", "[{}]", R"({"columns": 1, "width": "190px"})");
    EXPECT_TRUE(has(narrow, "measure", Severity::Note));
    EXPECT_FALSE(has(narrow, "measure", Severity::Warning));
}

// Layouts at every whole width are the reference.
TEST(LastWordCheck, HasExactlyTheWidthsWithASingleWord) {
    project::Project project = headed("Out to Tern Holm between the tall poles at low tide");
    set(project, "text/heading/size", "[[320, 21], [1920, 126]]");
    Options options;
    options.profile = &text::blink();
    const std::vector<Finding> all = findingsOf(project, options);
    const layout::PreparedRow row(project, 0, checkStore(), text::blink());
    std::set<int> lonely;
    for (int width = 320; width <= 1920; ++width) {
        const layout::Layout laid = layout::layOut(row, width);
        const layout::LaidPart& part = laid.parts[0];
        const text::Line& line = laid.lines[part.firstLine + part.lineCount - 1].line;
        const std::string last = part.paragraph->utf8(line.first, line.end);
        if (part.lineCount > 1 && last.find(' ') == std::string::npos && last.size() <= 6)
            lonely.insert(width);
    }
    const Finding* found = find(all, "last-word");
    if (lonely.size() > 165) {
        ASSERT_NE(found, nullptr);
        EXPECT_EQ(wholeWidthsOf(*found), lonely);
    } else {
        EXPECT_EQ(found, nullptr);
    }
}

TEST(LastWordCheck, ReportsAFixedHeadingInAFixedColumn) {
    project::Project project = headed("The long way round the saltmarsh at dusk");
    const layout::PreparedRow row(project, 0, checkStore(), text::blink());
    const double whole = layout::layOut(row, 1900).lines.front().line.width;
    set(project, "row/width", R"(")" + std::to_string(whole - 5) + R"(px")");
    EXPECT_NE(findingOf(project, "last-word").says.find("“dusk”"), std::string::npos);
    project.row().cards[0] = headed("The long way round the saltmarsh at\u00A0dusk").row().cards[0];
    EXPECT_FALSE(has(project, "last-word"));
}

// A soft hyphen is visible where a line breaks at it. CSS Text 3 § 6.1.
TEST(LastWordCheck, ReportsTheEndOfAWordOnItsOwnLine) {
    project::Project project = headed("Over the flats and home by the seaside\u00ADbus");
    const layout::PreparedRow row(project, 0, checkStore(), text::blink());
    const double whole = layout::layOut(row, 1900).lines.front().line.width;
    set(project, "row/width", R"(")" + std::to_string(whole - 5) + R"(px")");
    const Finding found = findingOf(project, "last-word");
    EXPECT_NE(found.says.find("only the end of a word, “bus”"), std::string::npos) << found.says;
    project.row().cards[0] = headed("Over the flats and home by the seasidebus").row().cards[0];
    EXPECT_FALSE(has(project, "last-word"));
}

// A text test changes texts that nobody needs to fix; parts keep the names of their own texts.
TEST(LastWordCheck, LeavesOutTextsChangedByATextTest) {
    project::Project project = headed("The long way round the saltmarsh at dusk");
    const layout::PreparedRow row(project, 0, checkStore(), text::blink());
    const double whole = layout::layOut(row, 1900).lines.front().line.width;
    set(project, "row/width", R"(")" + std::to_string(whole - 5) + R"(px")");
    ASSERT_TRUE(has(project, "last-word"));
    checks::Options options;
    const auto own = std::make_shared<project::Project>(project);
    std::get<project::TextPart>(own->row().cards[0].parts[0]).copy[0].text = "At dusk";
    options.untried = own;
    EXPECT_FALSE(has(project, "last-word", std::nullopt, options));
    set(project, "text/heading/size", "9");
    ASSERT_FALSE(findingsOf(project, options).empty());
    for (const Finding& finding : findingsOf(project, options))
        EXPECT_EQ(finding.says.find("saltmarsh"), std::string::npos) << finding.says;
}

}  // namespace
}  // namespace tenter::checks
