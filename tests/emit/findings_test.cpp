#include "emit/findings.h"

#include <gtest/gtest.h>

namespace tenter::emit {
namespace {

project::Project project() {
    project::Project project;
    project.leastWidth = 320;
    project.mostWidth = 1920;
    return project;
}

checks::Finding finding() {
    checks::Finding finding;
    finding.check = "out-of-line";
    finding.severity = checks::Severity::Warning;
    finding.share = 0.125;
    finding.widths = {{640, 840}};
    finding.says = "From 641 to 840\u00A0px, the heading has 3 lines. It is long. Shorten it.";
    finding.source = "common practice, no source";
    return finding;
}

TEST(FindingsList, HasAHeadTheTextAndTheSource) {
    EXPECT_EQ(findingParagraphs(project(), {finding()}, "widths"),
              "warning  Out of line  13\u00A0% of widths\n"
              "  From 641 to 840\u00A0px, the heading has 3 lines. It is long. Shorten it.\n"
              "  Basis: common practice, no source\n\n");
}

TEST(FindingsList, NamesFourRangesOfWidthsAndCountsTheOthers) {
    checks::Finding several = finding();
    several.widths = {{320, 400}, {410.25, 420}, {500, 500}, {640, 840}};
    EXPECT_NE(findingsList(project(), {{several}, {}}, "widths")
                  .find("\n  All affected widths: 320–400, 411–420, 500, 641–840\u00A0px\n"),
              std::string::npos);
    several.widths.push_back({900, 901});
    several.widths.push_back({1000, 1001});
    const std::string list = findingsList(project(), {{several}, {}}, "visits");
    EXPECT_NE(
        list.find("\n  All affected widths: 320–400, 411–420, 500, 641–840\u00A0px and 2 more ranges\n"),
        std::string::npos)
        << list;
    EXPECT_NE(list.find("13\u00A0% of visits\n"), std::string::npos) << list;
}

TEST(FindingsList, HasNoShareOfASingleWidth) {
    checks::Finding single = finding();
    single.widths = {{800, 800}};
    single.share = 0;
    single.says = "Just above 800\u00A0px, body text jumps.";
    EXPECT_EQ(findingParagraphs(project(), {single}, "widths", 2),
              "  warning  Out of line\n    Just above 800\u00A0px, body text jumps.\n"
              "    Basis: common practice, no source\n\n");
    single.widths = {{800, 801}};
    single.share = 0.0004;
    EXPECT_NE(findingParagraphs(project(), {single}, "widths").find("under 1\u00A0% of widths"),
              std::string::npos);
}

TEST(FindingsJson, NamesTheEnginesThatHaveTheFinding) {
    checks::Finding one = finding();
    EXPECT_EQ(findingsJson({one}).find("engine"), std::string::npos);
    one.profiles = {&text::gecko()};
    EXPECT_NE(findingsJson({one}).find(R"(, "engine": "gecko", "says")"), std::string::npos);
    one.profiles = {&text::blink(), &text::gecko()};
    EXPECT_NE(findingsJson({one}).find(R"(, "engine": ["blink", "gecko"], "says")"), std::string::npos);
}

TEST(FindingsList, EndsWithSilencedFindingsCountsAndCaution) {
    const std::string list =
        findingsList(project(), {{finding()}, {{finding(), "the client wants it so"}}}, "widths");
    EXPECT_NE(list.find("silenced  Out of line  13\u00A0% of widths\n  Reason: the client wants it so\n"),
              std::string::npos)
        << list;
    EXPECT_NE(list.find("0 errors, 1 warning, 0 notes.\n" + std::string(checks::caution)), std::string::npos)
        << list;
}

}  // namespace
}  // namespace tenter::emit
