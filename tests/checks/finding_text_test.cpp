// The texts of findings: every check, in plain words, with the labels of the window.
#include "checking.h"
#include "checks/phrases.h"
#include "checks/registry.h"
#include "rows.h"

namespace tenter::checks {
namespace {

using namespace test;  // NOLINT(google-build-using-namespace)

// `findingsOf` tests each text: see readable.h.
TEST(FindingTexts, AreReadableForEveryCheck) {
    std::set<std::string_view> found;
    for (const auto& [check, project] : test::rows::rowsByCheck()) {
        SCOPED_TRACE(check);
        const std::vector<Finding> findings = findingsOf(project);
        EXPECT_NE(find(findings, check), nullptr);
        for (const Finding& finding : findings)
            found.insert(*std::ranges::find(checkNames(), finding.check));
    }
    for (const std::string_view name : checkNames())
        EXPECT_TRUE(found.contains(name)) << name;
}

TEST(FindingTexts, AreThreeSentencesOfAStatement) {
    const Statement statement{"from 931 to 1320\u00A0px, the heading has 3 lines", "It is long",
                              "Shorten it"};
    EXPECT_EQ(textOf(statement),
              "From 931 to 1320\u00A0px, the heading has 3 lines. It is long. Shorten it.");
    EXPECT_EQ(textOf(statement, {&text::gecko()}),
              "Firefox only: from 931 to 1320\u00A0px, the heading has 3 lines. It is long. Shorten it.");
    EXPECT_EQ(textOf({"card 1 is empty", "It looks odd", ""}), "Card 1 is empty. It looks odd.");
}

TEST(FindingTexts, NameWidthsAsPeopleSetThem) {
    project::Project project;
    project.leastWidth = 320;
    project.mostWidth = 1920;
    EXPECT_EQ(atWidths(project, {320, 640}), "from 320 to 640\u00A0px");
    // A breakpoint belongs to the band below it.
    EXPECT_EQ(atWidths(project, {640, 1920}), "from 641 to 1920\u00A0px");
    EXPECT_EQ(atWidths(project, {640.2, 700.9}), "from 641 to 700\u00A0px");
    EXPECT_EQ(atWidths(project, {388.2, 388.5}), "at 388.5\u00A0px");
    EXPECT_EQ(atWidths(project, {320, 1920}), "at every width");
}

TEST(FindingTexts, NeedNoListOfTheWidthsTheyName) {
    project::Project project;
    project.leastWidth = 320;
    project.mostWidth = 1920;
    Finding finding;
    finding.widths = {{640, 980}};
    finding.says = "From 641 to 980\u00A0px, the heading has 3 lines.";
    EXPECT_EQ(widthsBeyondText(project, finding, 3), "");
    finding.says = "From 700 to 980\u00A0px, the heading has 3 lines.";
    EXPECT_EQ(widthsBeyondText(project, finding, 3), "641–980\u00A0px");
    finding.widths = {{320, 1920}};
    EXPECT_EQ(widthsBeyondText(project, finding, 3), "every width");
    finding.says = "At 320\u00A0px, the heading has 3 lines.";
    EXPECT_EQ(widthsBeyondText(project, finding, 3), "every width");
    finding.says = "At every width, text grows from 14 to 16\u00A0px.";
    EXPECT_EQ(widthsBeyondText(project, finding, 3), "");
    finding.says = "The heading has no font.";
    EXPECT_EQ(widthsBeyondText(project, finding, 3), "");
    finding.widths = {{320, 400}, {410.25, 420}, {500, 500}, {600, 601}, {700, 720}};
    EXPECT_EQ(widthsBeyondText(project, finding, 3), "320–400, 411–420, 500\u00A0px and 2 more ranges");
    EXPECT_EQ(widthsBeyondText(project, finding, 4), "320–400, 411–420, 500, 601\u00A0px and 1 more range");
}

// The test of texts must fail on texts that are not plain.
TEST(FindingTexts, AreJudgedByRulesThatCanFail) {
    EXPECT_EQ(sentenceCount("One. Two. Three. Four."), 4U);
    EXPECT_EQ(sentenceCount("The picture a.jpg is 1.5 times as large as “Out. And back.” here."), 1U);
    project::Project project = quiet();
    EXPECT_TRUE(namesAPlace("the heading “” has 3 lines", project));
    EXPECT_FALSE(namesAPlace("something is wrong", project));
    EXPECT_EQ(withoutQuotations("in “Low tide” and “High”"), "in “” and “”");
}

}  // namespace
}  // namespace tenter::checks
