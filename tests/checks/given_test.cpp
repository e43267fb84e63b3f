// Checks of a given page: its theme and its headings.
#include "checking.h"

namespace tenter::checks {
namespace {

using namespace test;  // NOLINT(google-build-using-namespace)

// Media Queries 4 § 4.3: a zoomed page can be 980.5 px wide, and neither condition holds there.
TEST(ThemeGapCheck, NotesWidthsBetweenTwoConditions) {
    project::Project project = quiet();
    project.row().given.emplace();
    project.row().given->theme =
        "@media (max-width: 980px) { .a { color: red } } @media (min-width: 981px) { .a { color: blue } }";
    expectSpans(findingOf(project, "theme-gap"), {{980, 981}});
    project.row().given->theme =
        "@media (width <= 980px) { .a { color: red } } @media (width > 980px) { .a { color: blue } }";
    EXPECT_FALSE(has(project, "theme-gap"));
    project.row().given->theme =
        "@media (max-width: 980px) { .a { color: red } } @media (min-width: 990px) { .a { color: blue } }";
    EXPECT_FALSE(has(project, "theme-gap"));
}

/// Two cards in the markup of a page, with these elements as headings.
project::Project printed(const std::string& one, const std::string& other) {
    project::Project project =
        quiet("[" + card("Low tide", "Out.") + ", " + card("High water", "Home.") + "]");
    project::Given& given = project.row().given.emplace();
    const auto cardOf = [](const std::string& heading) {
        return "<div class=walk>" + heading + "<p>Out.</p><a href=#b>Book</a></div>";
    };
    given.markup = "<div class=row>" + cardOf(one) + cardOf(other) + "</div>";
    given.selectors = {{"row", ""},
                       {"card", ".walk"},
                       {"heading", ".walk > :first-child"},
                       {"body", ".walk p:not(:first-child)"},
                       {"button", ".walk a"}};
    return project;
}

// CSS Cascade 5 § 6.1, § 6.4: no later stylesheet overrides an important declaration in a layer or in a style
// attribute.
TEST(ThemeObstacleCheck, ReportsWhatNoStylesheetOverrides) {
    project::Project project =
        printed("<h3>Low tide</h3>", "<h3 style='margin: 9px !important'>High water</h3>");
    project.row().given->theme =
        "@layer base;\n@layer base { .walk { float: left !important; color: red !important; } } /* "
        "look.css:12 */\n"
        ".walk p { float: left !important; }\n@layer base { @media print { p { float: left !important; } } "
        "}\n@layer base { h3::before { content: '1' !important; } }\n";
    std::vector<std::string> said;
    for (const Finding& finding : findingsOf(project))
        if (finding.check == "theme-obstacle") {
            EXPECT_EQ(finding.severity, Severity::Error);
            said.push_back(finding.says);
        }
    ASSERT_EQ(said.size(), 3U);
    const std::string all = said[0] + said[1] + said[2];
    EXPECT_NE(all.find("“.walk” in look.css:12 sets float of the card"), std::string::npos);
    EXPECT_NE(all.find("“style attribute” sets margin of the heading"), std::string::npos);
    EXPECT_NE(all.find("“h3::before” sets content of the heading"), std::string::npos);
    project::Project plain = printed("<h3>Low tide</h3>", "<h3>High water</h3>");
    plain.row().given->theme = ".walk { float: left !important; }\n";
    EXPECT_FALSE(has(plain, "theme-obstacle"));
}

// What the import could not read is an error until the page is measured.
TEST(ThemeObstacleCheck, ReportsWhatWasNotRead) {
    project::Project project = printed("<h3>Low tide</h3>", "<h3>High water</h3>");
    project.row().given->unread = {
        "The <main> around the row has max-width: 60vh (look.css:3), which is not supported. Check the "
        "container "
        "in the project."};
    const std::vector<Finding> all = findingsOf(project);
    EXPECT_EQ(std::ranges::count(all, "theme-obstacle", &Finding::check), 1);
    const Finding found = findingOf(project, "theme-obstacle");
    EXPECT_EQ(found.severity, Severity::Error);
    EXPECT_NE(found.says.find("has max-width: 60vh (look.css:3), which is not supported. So the row"),
              std::string::npos)
        << found.says;
}

// G141: a heading is at most one level deeper than the one before it.
TEST(HeadingLevelsCheck, ReportsHeadingsThatSkipALevel) {
    const Finding found = findingOf(printed("<h2>Low tide</h2>", "<h4>High water</h4>"), "heading-levels");
    EXPECT_EQ(found.severity, Severity::Warning);
    EXPECT_EQ(found.place->card, 1U);
    EXPECT_EQ(found.place->part, 0U);
    EXPECT_NE(found.says.find("is an h4, but the heading before it is an h2"), std::string::npos)
        << found.says;
    EXPECT_FALSE(has(printed("<h2>Low tide</h2>", "<h3>High water</h3>"), "heading-levels"));
    EXPECT_FALSE(has(printed("<h4>Low tide</h4>", "<h2>High water</h2>"), "heading-levels"));
    const std::string fourth = R"(<p role=heading aria-level=4>High water</p>)";
    EXPECT_TRUE(has(printed("<h2>Low tide</h2>", fourth), "heading-levels"));
    EXPECT_FALSE(has(printed("<h3>Low tide</h3>", fourth), "heading-levels"));
    EXPECT_FALSE(has(quiet(), "heading-levels"));
}

TEST(HeadingLevelsCheck, KnowsTheHeadingBeforeTheRow) {
    project::Project project = printed("<h3>Low tide</h3>", "<h3>High water</h3>");
    EXPECT_FALSE(has(project, "heading-levels"));
    project.row().given->levelBefore = 2;
    EXPECT_FALSE(has(project, "heading-levels"));
    project.row().given->levelBefore = 1;
    EXPECT_EQ(findingOf(project, "heading-levels").place->card, 0U);
}

}  // namespace
}  // namespace tenter::checks
