// `check` on a folder of projects, as pipelines use it.
#include <gtest/gtest.h>

#include <filesystem>
#include <nlohmann/json.hpp>
#include <set>

#include "process.h"

namespace tenter::tests {
namespace {

using Json = nlohmann::json;

/// The folder of samples under `row`, and what a search must not take for a project.
class CheckFolder : public ::testing::Test {
protected:
    void SetUp() override {
        namespace fs = std::filesystem;
        fs::create_directories(folder_.path() / "rows/more");
        fs::create_directories(folder_.path() / "rows/.cache");
        const fs::path samples = TENTER_SAMPLES;
        fs::copy(samples / "pictures", folder_.path() / "rows/pictures", fs::copy_options::recursive);
        fs::create_directory_symlink("../pictures", folder_.path() / "rows/more/pictures");
        fs::copy(samples / "shore-walks.tenter.json", folder_.path() / "rows/b.tenter.json");
        fs::copy(samples / "night-sky.tenter.json", folder_.path() / "rows/more/a.tenter.json");
        folder_.write("rows/.cache/broken.tenter.json", "{");
        folder_.write("rows/notes.json", "{");
    }
    Finished check(std::vector<std::string> words) const {
        words.insert(words.begin(), "check");
        return tenterCli(words, folder_.path());
    }
    Folder folder_;
};

TEST_F(CheckFolder, ChecksEveryProjectAndEndsWithASummary) {
    const Finished finished = check({"rows", "--fail-on", "error"});
    EXPECT_EQ(finished.code, 0) << finished.err;
    const Json first = Json::parse(check({"rows/b.tenter.json", "--json"}).out);
    const Json second = Json::parse(check({"rows/more/a.tenter.json", "--json"}).out);
    const auto count = [](const Json& findings, const std::string& severity) {
        std::size_t sum = 0;
        for (const Json& finding : findings)
            sum += finding.at("severity") == severity ? 1 : 0;
        return sum;
    };
    const std::string summary = finished.out.substr(finished.out.rfind("errors  warnings"));
    const auto line = [&](std::size_t errors, std::size_t warnings, std::size_t notes) {
        std::string text;
        for (const auto& [number, width] : {std::pair{errors, 6}, {warnings, 10}, {notes, 7}}) {
            const std::string digits = std::to_string(number);
            text += std::string(static_cast<std::size_t>(width) - digits.size(), ' ') + digits;
        }
        return text;
    };
    const auto lineOf = [&](const Json& findings) {
        return line(count(findings, "error"), count(findings, "warning"), count(findings, "note"));
    };
    EXPECT_NE(summary.find(lineOf(first)), std::string::npos) << summary;
    EXPECT_NE(summary.find(lineOf(second)), std::string::npos) << summary;
    EXPECT_NE(summary.find(line(count(first, "error") + count(second, "error"),
                                count(first, "warning") + count(second, "warning"),
                                count(first, "note") + count(second, "note"))),
              std::string::npos)
        << summary;
    EXPECT_NE(summary.find("all 2 projects"), std::string::npos) << summary;
    EXPECT_EQ(summary.find("cache"), std::string::npos) << summary;
}

TEST_F(CheckFolder, WritesTheFormatsOfPipelines) {
    const Json sarif = Json::parse(check({"rows", "--sarif"}).out);
    std::set<std::string> files;
    for (const Json& result : sarif.at("runs").at(0).at("results"))
        files.insert(result.at("locations").at(0).at("physicalLocation").at("artifactLocation").at("uri"));
    EXPECT_TRUE(files.contains("rows/b.tenter.json")) << sarif.dump().substr(0, 500);
    const std::string junit = check({"rows", "--junit"}).out;
    EXPECT_NE(junit.find("rows/more/a.tenter.json"), std::string::npos);
    EXPECT_EQ(check({"rows", "--fail-on", "note"}).code, 1);
}

TEST_F(CheckFolder, ReportsEveryProjectThatCannotBeRead) {
    folder_.write("rows/c.tenter.json", "{");
    folder_.write("rows/more/d.tenter.json", "[]");
    const Finished finished = check({"rows", "--out", "findings.txt"});
    EXPECT_EQ(finished.code, 2);
    EXPECT_EQ(finished.out, "");
    EXPECT_NE(finished.err.find("rows/c.tenter.json:"), std::string::npos) << finished.err;
    EXPECT_NE(finished.err.find("rows/more/d.tenter.json:"), std::string::npos) << finished.err;
    EXPECT_FALSE(std::filesystem::exists(folder_.file("findings.txt")));
}

TEST_F(CheckFolder, RefusesAFolderWithoutProjects) {
    const Finished finished = check({"rows/pictures"});
    EXPECT_EQ(finished.code, 2);
    EXPECT_EQ(finished.errorLines(), 1U) << finished.err;
    EXPECT_NE(finished.err.find("rows/pictures"), std::string::npos) << finished.err;
}

}  // namespace
}  // namespace tenter::tests
