#include "emit/findings.h"

#include <gtest/gtest.h>

namespace tenter::emit {
namespace {

TEST(FindingsList, NamesThreeRunsOfWidthsAndCountsTheOthers) {
    checks::Finding finding;
    finding.check = "out-of-line";
    finding.share = 0.125;
    finding.widths = {{320, 400}, {410.25, 420}, {500, 500}};
    EXPECT_NE(findingsList({{finding}, {}}, "the widths")
                  .find("at 320 to 400, 410.3 to 420, 500 px, 12.5 % of the widths"),
              std::string::npos);
    finding.widths.push_back({600, 601});
    finding.widths.push_back({700, 701});
    const std::string list = findingsList({{finding}, {}}, "the visits");
    EXPECT_NE(list.find("at 320 to 400, 410.3 to 420, 500 px and at 2 more, 12.5 % of the visits"),
              std::string::npos)
        << list;
}

}  // namespace
}  // namespace tenter::emit
