// The verbs that hand results to other programs: tokens, diff, and check for pipelines.
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <set>

#include "process.h"

namespace tenter::tests {
namespace {

using Json = nlohmann::json;

std::string sample(const std::string& name) {
    return TENTER_SAMPLES "/" + name + ".tenter.json";
}

TEST(Diff, ExitsWithOneIfProjectsDiffer) {
    const Finished same = tenterCli({"diff", sample("season"), sample("season")});
    EXPECT_EQ(same.code, 0);
    EXPECT_EQ(same.out, "The projects do not differ.\n");
    const Folder folder;
    const std::string solved = folder.file("solved.tenter.json");
    ASSERT_EQ(tenterCli({"solve", sample("shore-walks"), "body.size=-17", "--out", solved}).code, 0);
    const Finished differs = tenterCli({"diff", sample("shore-walks"), solved});
    EXPECT_EQ(differs.code, 1);
    EXPECT_NE(differs.out.find("Text › Font size of Body"), std::string::npos) << differs.out;
    const Finished json = tenterCli({"diff", sample("shore-walks"), solved, "--json"});
    EXPECT_EQ(json.code, 1);
    for (const Json& one : Json::parse(json.out)) {
        EXPECT_TRUE(one.contains("kind") && one.contains("says")) << one;
        EXPECT_TRUE(one.contains("old") || one.contains("new")) << one;
    }
}

TEST(Diff, RefusesAFileThatIsNoProject) {
    const Folder folder;
    const Finished refused = tenterCli({"diff", sample("season"), folder.write("broken.tenter.json", "{")});
    EXPECT_EQ(refused.code, 2);
    EXPECT_EQ(refused.out, "");
    EXPECT_EQ(refused.errorLines(), 1U) << refused.err;
}

TEST(Check, ChecksSeveralProjectsAtOnce) {
    const Finished list = tenterCli({"check", sample("shore-walks"), sample("night-sky")});
    EXPECT_NE(list.out.find("shore-walks.tenter.json\n"), std::string::npos);
    EXPECT_NE(list.out.find("night-sky.tenter.json\n"), std::string::npos);
    const Json json =
        Json::parse(tenterCli({"check", sample("shore-walks"), sample("night-sky"), "--json"}).out);
    std::set<std::string> files;
    for (const Json& finding : json)
        files.insert(finding.at("project").get<std::string>());
    EXPECT_EQ(files.size(), 2U);
    const Json one = Json::parse(tenterCli({"check", sample("shore-walks"), "--json"}).out);
    EXPECT_FALSE(one.at(0).contains("project"));
    EXPECT_EQ(tenterCli({"check", sample("shore-walks"), sample("night-sky"), "--room"}).code, 2);
}

TEST(Check, PrintsTheFormatsOfPipelines) {
    const Finished sarif = tenterCli({"check", sample("shore-walks"), "--sarif", "--fail-on", "warning"});
    EXPECT_EQ(sarif.code, 1);
    EXPECT_EQ(Json::parse(sarif.out)["version"], "2.1.0");
    const Finished junit = tenterCli({"check", sample("shore-walks"), "--junit", "--fail-on", "warning"});
    EXPECT_EQ(junit.code, 1);
    EXPECT_TRUE(junit.out.starts_with("<?xml")) << junit.out.substr(0, 200);
    EXPECT_EQ(tenterCli({"check", sample("shore-walks"), "--sarif", "--junit"}).code, 2);
    EXPECT_EQ(tenterCli({"check", sample("shore-walks"), "--sarif", "--json"}).code, 2);
}

TEST(Tokens, AreOfAllVariantsOrOne) {
    const Finished all = tenterCli({"tokens", sample("shore-walks")});
    ASSERT_EQ(all.code, 0) << all.err;
    EXPECT_TRUE(Json::parse(all.out)["walks"].contains("walks-pair"));
    const Finished one = tenterCli({"tokens", sample("shore-walks"), "--variant", "walks-trio"});
    EXPECT_FALSE(Json::parse(one.out)["walks"].contains("walks-pair"));
    EXPECT_EQ(tenterCli({"tokens", sample("shore-walks"), "--unit", "em"}).code, 2);
}

}  // namespace
}  // namespace tenter::tests
