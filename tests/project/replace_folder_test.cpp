// Folders that are written whole or not at all.
#include "project/replace_folder.h"

#include <sys/resource.h>
#include <unistd.h>

#include <csignal>

#include "given.h"

namespace tenter::project {
namespace {

namespace fs = std::filesystem;

class ReplaceFolder : public testing::Test {
protected:
    void SetUp() override {
        root = fs::temp_directory_path() / ("tenter-folder-" + std::to_string(getpid()));
        fs::create_directories(root);
        target = root / "site";
    }
    void TearDown() override { fs::remove_all(root); }
    [[nodiscard]] std::vector<std::string> names() const {
        std::vector<std::string> found;
        for (const auto& entry : fs::recursive_directory_iterator(root))
            found.push_back(entry.path().lexically_relative(root).generic_string());
        std::ranges::sort(found);
        return found;
    }
    static std::vector<FolderFile> files(const std::string& content) {
        return {{"index.html", content, {}}, {"pictures/a.png", "png", {}}};
    }

    fs::path root, target;
    Problems problems;
};

using Names = std::vector<std::string>;

TEST_F(ReplaceFolder, makes_a_folder_with_its_list_and_nothing_beside_it) {
    ASSERT_TRUE(replaceFolder(target, files("one"), problems)) << linesOf(problems);
    EXPECT_EQ(names(), (Names{"site", "site/index.html", "site/pictures", "site/pictures/a.png",
                              "site/tenter-folder.json"}));
    EXPECT_EQ(contentOf(target / "index.html"), "one");
}

TEST_F(ReplaceFolder, replaces_its_own_folder_and_an_empty_one_whole) {
    fs::create_directories(target);
    ASSERT_TRUE(replaceFolder(target, files("one"), problems)) << linesOf(problems);
    ASSERT_TRUE(replaceFolder(target / "", {{"index.html", "two", {}}}, problems)) << linesOf(problems);
    EXPECT_EQ(contentOf(target / "index.html"), "two");
    EXPECT_EQ(names(), (Names{"site", "site/index.html", "site/tenter-folder.json"}));
}

TEST_F(ReplaceFolder, copies_sources) {
    std::ofstream(root / "source.png") << "bytes";
    fs::permissions(root / "source.png", fs::perms::owner_read);
    ASSERT_TRUE(replaceFolder(target, {{"pictures/b.png", "", root / "source.png"}}, problems))
        << linesOf(problems);
    EXPECT_EQ(contentOf(target / "pictures/b.png"), "bytes");
    EXPECT_EQ((FolderFile{"", "", root / "source.png"}.size()), 5U);
}

TEST_F(ReplaceFolder, refuses_a_folder_with_a_file_that_it_did_not_write) {
    ASSERT_TRUE(replaceFolder(target, files("one"), problems));
    fs::create_directories(target / "notes");
    std::ofstream(target / "notes/mine.txt") << "mine";
    EXPECT_FALSE(replaceFolder(target, files("two"), problems));
    ASSERT_EQ(problems.size(), 1U);
    EXPECT_NE(problems[0].what.find("\"notes/mine.txt\""), std::string::npos) << problems[0].what;
    EXPECT_EQ(contentOf(target / "index.html"), "one");
    EXPECT_EQ(contentOf(target / "notes/mine.txt"), "mine");
}

TEST_F(ReplaceFolder, refuses_a_folder_with_the_list_of_another_program) {
    fs::create_directories(target);
    std::ofstream(target / folderListName) << R"({"format": "other", "files": ["tenter-folder.json"]})";
    EXPECT_FALSE(replaceFolder(target, files("two"), problems));
    fs::remove(target / folderListName);
    fs::remove(target);
    std::ofstream(target) << "a file";
    EXPECT_FALSE(replaceFolder(target, files("two"), problems));
    EXPECT_EQ(problems.size(), 2U);
}

TEST_F(ReplaceFolder, leaves_what_was_there_if_a_file_cannot_be_written) {
    ASSERT_TRUE(replaceFolder(target, files("one"), problems));
    const Names before = names();
    std::vector<FolderFile> broken = files("two");
    broken.push_back({"pictures/c.png", "", root / "missing.png"});
    EXPECT_FALSE(replaceFolder(target, broken, problems));
    broken.back() = {std::string(300, 'w'), "x", {}};
    EXPECT_FALSE(replaceFolder(target, broken, problems));
    EXPECT_EQ(problems.size(), 2U);
    EXPECT_EQ(contentOf(target / "index.html"), "one");
    EXPECT_EQ(names(), before);
}

// A limit on the size of files stops a write halfway, as a full disk does.
TEST_F(ReplaceFolder, leaves_nothing_half_written_on_a_full_disk) {
    ASSERT_TRUE(replaceFolder(target, files("one"), problems));
    const Names before = names();
    struct rlimit old = {};
    getrlimit(RLIMIT_FSIZE, &old);
    const auto handler = std::signal(SIGXFSZ, SIG_IGN);
    struct rlimit small = old;
    small.rlim_cur = 1000;
    setrlimit(RLIMIT_FSIZE, &small);
    const bool replaced = replaceFolder(target, files(std::string(5000, 'x')), problems);
    setrlimit(RLIMIT_FSIZE, &old);
    std::signal(SIGXFSZ, handler);
    EXPECT_FALSE(replaced);
    ASSERT_EQ(problems.size(), 1U);
    EXPECT_NE(problems[0].what.find("Nothing was changed"), std::string::npos) << problems[0].what;
    EXPECT_EQ(contentOf(target / "index.html"), "one");
    EXPECT_EQ(names(), before);
}

TEST_F(ReplaceFolder, needs_a_place_that_exists) {
    EXPECT_FALSE(replaceFolder(root / "none" / "site", files("one"), problems));
    EXPECT_FALSE(replaceFolder("/proc/site", files("one"), problems));
    EXPECT_EQ(problems.size(), 2U);
    EXPECT_TRUE(names().empty());
}

TEST_F(ReplaceFolder, stops_when_it_is_told_to) {
    std::vector<std::size_t> seen;
    EXPECT_FALSE(replaceFolder(target, files("one"), problems, [&](std::size_t index) {
        seen.push_back(index);
        return index == 0;
    }));
    EXPECT_EQ(seen, (std::vector<std::size_t>{0, 1}));
    EXPECT_TRUE(problems.empty());
    EXPECT_TRUE(names().empty());
}

}  // namespace
}  // namespace tenter::project
