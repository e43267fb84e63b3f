// Key widths and the reasons for them.
#include "checks/key_widths.h"

#include "checking.h"

namespace tenter::test {
namespace {

using Reasons = std::vector<std::pair<double, std::string>>;

Reasons reasonsOf(const project::Project& project, const std::vector<Finding>& findings = {}) {
    Reasons reasons;
    for (const checks::KeyWidth& key : checks::keyWidths(project, 0, findings))
        reasons.emplace_back(key.width, key.why);
    return reasons;
}

const char* const threeBands = R"([{"upTo": 600.5, "set": {"row": {"columns": 1}}},
                                   {"upTo": 900, "set": {"row": {"columns": 3}}}, {"set": {"row": {"columns": 3}}}])";

TEST(KeyWidthsTest, AreTheEndsOfTheRangeAndBothSidesOfEachBreakpoint) {
    project::Project project = quiet("", threeBands);
    project.leastWidth = 320;
    project.mostWidth = 1920;
    EXPECT_EQ(reasonsOf(project), (Reasons{{320, "narrowest viewport"},
                                           {600.5, "last width of 1 column"},
                                           {601, "first width of 3 columns"},
                                           {900, "last width of a band"},
                                           {901, "first width of a band"},
                                           {1920, "widest viewport"}}));
}

TEST(KeyWidthsTest, LeaveOutBreakpointsBeyondTheRange) {
    project::Project project = quiet("", threeBands);
    project.leastWidth = 700;
    project.mostWidth = 900;
    EXPECT_EQ(reasonsOf(project), (Reasons{{700, "narrowest viewport"}, {900, "widest viewport"}}));
}

TEST(KeyWidthsTest, IncludeTheWorstWidthOfTheFirstFinding) {
    project::Project project = quiet();
    project.leastWidth = 320;
    project.mostWidth = 1920;
    Finding finding;
    finding.check = "button-lines";
    finding.at = 412;
    EXPECT_EQ(reasonsOf(project, {finding})[1],
              (std::pair{412.0, std::string("width of the worst finding (Button lines)")}));
    finding.at = 320;
    EXPECT_EQ(reasonsOf(project, {finding})[0].second,
              "narrowest viewport, width of the worst finding (Button lines)");
}

// The worst width of a finding is within its widths.
TEST(KeyWidthsTest, FindingsAreWorstWithinTheirWidths) {
    project::Project project = quiet("", threeBands);
    set(project, "text/heading/colour", R"("#bbbbbb")");
    set(project, "text/body/size", R"([[320, 9], [1920, 30]])");
    std::size_t seen = 0;
    for (const Finding& finding : findingsOf(project)) {
        ++seen;
        EXPECT_TRUE(std::ranges::any_of(finding.widths, [&](const sweep::Interval& span) {
            return span.from <= finding.at && finding.at <= span.to;
        })) << finding.says;
    }
    EXPECT_GT(seen, 1U);
}

// The range includes its first width, a breakpoint is not in the band above it, and elsewhere the worst width
// is a whole number.
TEST(KeyWidthsTest, FindingsAreWorstAtAWholeWidthIfPossible) {
    project::Project project = quiet("", threeBands);
    project.leastWidth = 320;
    project.mostWidth = 1920;
    set(project, "text/body/size", R"([[320, 9], [1920, 30]])");
    EXPECT_EQ(findingOf(project, "small-type").at, 320);
    setInBand(project, 0, "text/body/size", "16");
    EXPECT_EQ(findingOf(project, "small-type").check, "");
    setInBand(project, 2, "text/body/size", R"([[900, 9], [1920, 30]])");
    EXPECT_EQ(findingOf(project, "small-type").at, 901);
    project.row().variants[0].bands[1].upTo = 900.5;
    EXPECT_EQ(findingOf(project, "small-type").at, 901);
}

}  // namespace
}  // namespace tenter::test
