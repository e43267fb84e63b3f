#include <unistd.h>

#include "given.h"

namespace tenter::project {
namespace {

namespace fs = std::filesystem;

class ReplaceFile : public testing::Test {
protected:
    void SetUp() override {
        folder = fs::temp_directory_path() / ("tenter-replace-" + std::to_string(getpid()));
        fs::create_directories(folder);
    }
    void TearDown() override { fs::remove_all(folder); }
    [[nodiscard]] std::size_t count() const {
        return static_cast<std::size_t>(
            std::distance(fs::directory_iterator(folder), fs::directory_iterator()));
    }

    fs::path folder;
    Problems problems;
};

TEST_F(ReplaceFile, makes_a_file_and_replaces_it_whole) {
    const fs::path file = folder / "walks.tenter.json";
    EXPECT_TRUE(replaceFile(file, "a long first content", problems));
    EXPECT_EQ(contentOf(file), "a long first content");
    EXPECT_TRUE(replaceFile(file, std::string("short\0", 6), problems));
    EXPECT_EQ(contentOf(file), std::string("short\0", 6));
    EXPECT_EQ(count(), 1U);
    EXPECT_TRUE(problems.empty()) << linesOf(problems);
}

TEST_F(ReplaceFile, keeps_permissions) {
    const fs::path file = folder / "walks.tenter.json";
    replaceFile(file, "first", problems);
    const fs::perms perms = fs::perms::owner_read | fs::perms::owner_write | fs::perms::group_read;
    fs::permissions(file, perms);
    EXPECT_TRUE(replaceFile(file, "second", problems));
    EXPECT_EQ(fs::status(file).permissions(), perms);
}

TEST_F(ReplaceFile, follows_a_link_and_leaves_it_a_link) {
    const fs::path file = folder / "walks.tenter.json";
    const fs::path link = folder / "link.tenter.json";
    replaceFile(file, "first", problems);
    fs::create_symlink(file, link);
    EXPECT_TRUE(replaceFile(link, "second", problems));
    EXPECT_TRUE(fs::is_symlink(link));
    EXPECT_EQ(contentOf(file), "second");
}

TEST_F(ReplaceFile, says_why_it_failed_and_leaves_nothing_behind) {
    EXPECT_FALSE(replaceFile(folder, "x", problems));
    EXPECT_FALSE(replaceFile(folder / "none" / "walks.tenter.json", "x", problems));
    EXPECT_FALSE(replaceFile(folder / std::string(300, 'w'), "x", problems));
    EXPECT_FALSE(replaceFile("/dev/null", "x", problems));
    EXPECT_EQ(problems.size(), 4U);
    for (const Problem& problem : problems)
        EXPECT_FALSE(problem.what.empty() || problem.fix.empty());
    EXPECT_EQ(count(), 0U);
}

TEST_F(ReplaceFile, reads_back_what_was_written) {
    const Project project = sound(contentOf(testFile("common_practice.tenter.json")));
    const fs::path file = folder / "walks.tenter.json";
    ASSERT_TRUE(replaceFile(file, write(project), problems));
    EXPECT_EQ(read(file, problems), project) << linesOf(problems);
}

}  // namespace
}  // namespace tenter::project
