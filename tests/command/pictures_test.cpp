// tenter-cli pictures, and the markup that offers its files.
#include <gtest/gtest.h>

#include <filesystem>
#include <nlohmann/json.hpp>

#include "process.h"

namespace tenter::tests {
namespace {

using Json = nlohmann::json;
using Words = std::vector<std::string>;

class Pictures : public ::testing::Test {
protected:
    void SetUp() override {
        const std::filesystem::path samples = TENTER_SAMPLES;
        std::filesystem::copy(samples / "pictures", folder_.file("pictures"),
                              std::filesystem::copy_options::recursive);
        std::filesystem::copy(samples / "shore-walks.tenter.json", folder_.file("row.tenter.json"));
    }
    Finished run(const Words& words) const { return tenterCli(words, folder_.path()); }
    Finished cut(Words more = {}) const {
        Words words{"pictures", "row.tenter.json", "--into", "cut"};
        words.insert(words.end(), more.begin(), more.end());
        return run(words);
    }
    static std::size_t count(const std::string& text, const std::string& word) {
        std::size_t found = 0;
        for (std::size_t at = text.find(word); at != std::string::npos; at = text.find(word, at + 1))
            ++found;
        return found;
    }

    Folder folder_;
};

TEST_F(Pictures, AreWrittenAndListed) {
    const Finished finished = cut({"--format", "jpeg,webp", "--candidates", "2", "--json"});
    ASSERT_EQ(finished.code, 0) << finished.err;
    const Json json = Json::parse(finished.out);
    EXPECT_EQ(json["format"], "tenter-pictures");
    ASSERT_FALSE(json["files"].empty());
    for (const Json& file : json["files"]) {
        EXPECT_EQ(std::filesystem::file_size(folder_.path() / "cut" / file["name"].get<std::string>()),
                  file["bytes"].get<std::size_t>());
        EXPECT_FALSE(file["kept"].get<bool>());
    }
    for (const Json& picture : json["pictures"]) {
        EXPECT_EQ(picture["formats"].size(), 2U);
        EXPECT_NE(picture["sizes"].get<std::string>().find("vw"), std::string::npos);
    }
    const Finished again = cut({"--format", "jpeg,webp", "--candidates", "2", "--json"});
    const Json kept = Json::parse(again.out);
    for (const Json& file : kept["files"])
        EXPECT_TRUE(file["kept"].get<bool>());
    EXPECT_NE(again.err.find("0 files written"), std::string::npos) << again.err;
}

TEST_F(Pictures, PrintTheElementOfEach) {
    const Finished finished = cut({"--address", "/media"});
    ASSERT_EQ(finished.code, 0) << finished.err;
    const std::size_t pictures =
        count(contentOf(folder_.file("row.tenter.json")), "\"picture\": \"pictures/");
    EXPECT_GE(pictures, 1U);
    EXPECT_EQ(count(finished.out, "<img "), pictures);
    EXPECT_EQ(count(finished.out, "src=\"/media/"), pictures);
}

TEST_F(Pictures, AreInTheMarkup) {
    ASSERT_EQ(cut().code, 0);
    const Finished plain = run({"markup", "row.tenter.json"});
    const Finished with = run({"markup", "row.tenter.json", "--pictures", "cut"});
    ASSERT_EQ(with.code, 0) << with.err;
    EXPECT_EQ(with.err, "");
    EXPECT_EQ(count(with.out, "srcset=\"cut/"), count(plain.out, "<img "));
    EXPECT_EQ(count(plain.out, "srcset"), 0U);
}

TEST_F(Pictures, ThatWereNotCutAreNamed) {
    Finished finished = run({"markup", "row.tenter.json", "--pictures", "cut"});
    EXPECT_EQ(finished.code, 2);
    EXPECT_NE(finished.err.find("pictures.json"), std::string::npos) << finished.err;
    const Json project = Json::parse(contentOf(folder_.file("row.tenter.json")));
    ASSERT_GE(project["variants"].size(), 2U);
    ASSERT_EQ(cut().code, 0);
    const std::string other = project["variants"][1]["class"];
    finished = run({"markup", "row.tenter.json", "--pictures", "cut", "--variant", other});
    EXPECT_EQ(finished.code, 0);
    EXPECT_GE(finished.errorLines(), 1U);
    EXPECT_EQ(count(finished.out, "srcset"), 0U);
    ASSERT_EQ(cut({"--all-variants"}).code, 0);
    finished = run({"markup", "row.tenter.json", "--pictures", "cut", "--variant", other});
    EXPECT_EQ(finished.err, "");
    EXPECT_GE(count(finished.out, "srcset"), 1U);
}

TEST_F(Pictures, ThatCannotBeReadAreReportedInOneLine) {
    folder_.write("pictures/creek.jpg", "no picture");
    const Finished finished = cut({"--json"});
    EXPECT_NE(finished.err.find("\"pictures/creek.jpg\" is not a picture of a known format. Use a JPEG"),
              std::string::npos)
        << finished.err;
    const Json json = Json::parse(finished.out);
    EXPECT_FALSE(json["files"].empty()) << "the other pictures are cut";
    for (const Json& picture : json["pictures"])
        EXPECT_NE(picture["source"], "pictures/creek.jpg");
}

TEST_F(Pictures, RefuseWrongOptions) {
    for (const auto& [words, what] :
         std::vector<std::pair<Words, std::string>>{{{"--format", "bmp"}, "\"bmp\""},
                                                    {{"--format", ""}, "format"},
                                                    {{"--quality", "0"}, "--quality"},
                                                    {{"--candidates", "13"}, "--candidates"},
                                                    {{"--ratios", "2x"}, "\"2x\""},
                                                    {{"--ratios", "9"}, "\"9\""},
                                                    {{"--audience", "none.csv"}, "none.csv"}}) {
        const Finished finished = cut(words);
        EXPECT_EQ(finished.code, 2) << what;
        EXPECT_EQ(finished.errorLines(), 1U) << finished.err;
        EXPECT_NE(finished.err.find(what), std::string::npos) << finished.err;
    }
    EXPECT_FALSE(std::filesystem::exists(folder_.file("cut")));
    EXPECT_EQ(run({"pictures", "row.tenter.json"}).code, 2);
}

}  // namespace
}  // namespace tenter::tests
