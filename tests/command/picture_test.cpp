// The verbs that draw, without a display: what they print, and what they say when they cannot.
#include <gtest/gtest.h>

#include <filesystem>

#include "process.h"

namespace tenter::tests {
namespace {

const std::string shoreWalks = TENTER_SAMPLES "/shore-walks.tenter.json";

TEST(Picture, IsPngOfTheWidestViewportUnlessAWidthIsGiven) {
    const Finished widest = tenterCli({"picture", shoreWalks});
    ASSERT_EQ(widest.code, 0) << widest.err;
    EXPECT_TRUE(widest.out.starts_with("\x89PNG"));
    EXPECT_EQ(widest.err, "");
    EXPECT_EQ(widest.out.substr(16, 4), std::string("\0\0\x07\x58", 4));  // 1880
    const Finished narrow = tenterCli({"picture", shoreWalks, "--width", "360", "--ratio", "2"});
    EXPECT_EQ(narrow.out.substr(16, 4), std::string("\0\0\x02\xD0", 4));  // 720
}

TEST(Picture, IsTheSameEveryTime) {
    EXPECT_EQ(tenterCli({"picture", shoreWalks, "--width", "500"}).out,
              tenterCli({"picture", shoreWalks, "--width", "500"}).out);
    EXPECT_EQ(tenterCli({"picture", shoreWalks, "--width", "500", "--svg"}).out,
              tenterCli({"picture", shoreWalks, "--width", "500", "--svg"}).out);
}

TEST(Picture, SaysWhichPictureFilesCannotBeRead) {
    const Folder folder;
    const std::string project = folder.write("row.tenter.json", contentOf(shoreWalks));
    std::filesystem::create_directory(folder.file("pictures"));
    for (const auto& entry : std::filesystem::directory_iterator(TENTER_SAMPLES "/pictures"))
        folder.write("pictures/" + entry.path().filename().string(), "not a picture");
    const Finished finished = tenterCli({"picture", project, "--width", "500"});
    EXPECT_EQ(finished.code, 0);
    EXPECT_TRUE(finished.out.starts_with("\x89PNG"));
    EXPECT_GE(finished.errorLines(), 1U);
    EXPECT_NE(finished.err.find("\" cannot be read; an empty place"), std::string::npos) << finished.err;
}

TEST(Picture, RefusesWidthsAndRatiosThatCannotBe) {
    for (const std::vector<std::string>& wrong : {std::vector<std::string>{"--width", "0"},
                                                  {"--width", "wide"},
                                                  {"--ratio", "9"},
                                                  {"--svg", "--ratio", "2"},
                                                  {"--width", "9000", "--ratio", "8"}}) {
        std::vector<std::string> words{"picture", shoreWalks};
        words.insert(words.end(), wrong.begin(), wrong.end());
        const Finished finished = tenterCli(words);
        EXPECT_EQ(finished.code, 2) << wrong[0];
        EXPECT_EQ(finished.out, "");
        EXPECT_EQ(finished.errorLines(), 1U) << finished.err;
    }
}

TEST(Picture, ThatCannotBeWrittenChangesNoFile) {
    const Folder folder;
    std::filesystem::create_directory(folder.file("folder"));
    for (const std::string& out :
         {folder.file("folder"), folder.file("no-folder/row.png"), std::string("/dev/full")}) {
        const Finished refused = tenterCli({"picture", shoreWalks, "--width", "500", "--out", out});
        EXPECT_EQ(refused.code, 2) << out;
        EXPECT_EQ(refused.errorLines(), 1U) << refused.err;
        EXPECT_EQ(folder.names(), std::vector<std::string>{"folder"});
    }
}

}  // namespace
}  // namespace tenter::tests
