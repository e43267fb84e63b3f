// Reading files as a whole: what is no file, is too large or cannot be read has no bytes.
#include "project/file_bytes.h"

#include <gtest/gtest.h>
#include <sys/stat.h>
#include <unistd.h>

#include <fstream>

namespace tenter::project {
namespace {

class FileBytes : public testing::Test {
protected:
    void SetUp() override {
        folder = std::filesystem::temp_directory_path() / ("tenter-bytes-" + std::to_string(getpid()));
        std::filesystem::create_directories(folder);
    }
    void TearDown() override { std::filesystem::remove_all(folder); }

    std::filesystem::path folder;
};

TEST_F(FileBytes, are_those_of_a_file_up_to_the_limit) {
    const auto file = folder / "notes.css";
    std::ofstream(file, std::ios::binary) << std::string("a\0b\n", 4);
    EXPECT_EQ(fileBytes(file, 4), std::string("a\0b\n", 4));
    EXPECT_EQ(fileBytes(file, 3), std::nullopt);
}

TEST_F(FileBytes, are_not_read_from_folders_pipes_and_devices) {
    const auto pipe = folder / "pipe";
    ASSERT_EQ(mkfifo(pipe.c_str(), 0600), 0);
    EXPECT_EQ(fileBytes(pipe, 100), std::nullopt);
    EXPECT_EQ(fileBytes(folder, 100000), std::nullopt);
    EXPECT_EQ(fileBytes("/dev/zero", 100), std::nullopt);
    EXPECT_EQ(fileBytes(folder / "missing", 100), std::nullopt);
}

// The kernel answers a read of this file with an input/output error, as a failing disk does. It has no size,
// so the answer is no bytes; a stream iterator throws here. proc(5), /proc/pid/mem.
TEST_F(FileBytes, are_missing_without_an_exception_if_reading_fails) {
    EXPECT_EQ(fileBytes("/proc/self/mem", 100).value_or(""), "");
}

}  // namespace
}  // namespace tenter::project
