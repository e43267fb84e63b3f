// Adding a check touches one new file and one line of the registry: this program is linked with both and with
// the unchanged library.
#include <gtest/gtest.h>

#include <algorithm>

#include "../checking.h"
#include "checks/registry.h"
#include "emit/findings.h"

namespace tenter::checks {
namespace {

using namespace test;  // NOLINT(google-build-using-namespace)

TEST(AddedCheck, RunsWithTheOthers) {
    const std::vector<Finding> all = check(quiet(), 0, checkStore());
    EXPECT_EQ(std::ranges::count(all, "added-check", &Finding::check), 1);
    EXPECT_NE(find(all, "added-check"), nullptr);
    EXPECT_NE(
        emit::findingsJson(all).find(R"({"check": "added-check", "severity": "note", "card": 0, "part": 0)"),
        std::string::npos);
    EXPECT_EQ(registry().back()->name, "added-check");
    EXPECT_TRUE(has(headed("Tern Holm/Causeway/Sluice/Quay/Old Creek/Saltmarsh"), "engines"));
}

TEST(AddedCheck, IsSilencedByItsName) {
    project::Project project = quiet();
    project.checking.silenced.push_back({"added-check", "a test"});
    const std::string text = project::write(project);
    project::Problems problems;
    const auto again = project::parse(text, "silenced", {}, problems, isCheckName);
    ASSERT_TRUE(again.has_value());
    const Checked checked = checkAll(*again, 0, checkStore());
    ASSERT_EQ(checked.silenced.size(), 1U);
    EXPECT_EQ(checked.silenced[0].finding.check, "added-check");
}

}  // namespace
}  // namespace tenter::checks
