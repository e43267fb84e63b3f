// What leaves this computer: nothing over a network, and in exports neither paths nor names nor data of
// pictures.
#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <csignal>
#include <cstdlib>

#include "../network.h"
#include "process.h"

namespace tenter::tests {
namespace {

int signalOf(int family) {
    const pid_t child = fork();
    if (child == 0) {
        if (!forbidNetwork()) _exit(1);
        _exit(socket(family, SOCK_STREAM, 0) >= 0 ? 0 : 2);
    }
    int status = 0;
    waitpid(child, &status, 0);
    return WIFSIGNALED(status) ? WTERMSIG(status) : 0;
}

// Every test that runs tenter-cli runs it in this way.
TEST(Network, EndsAProcessThatOpensAConnection) {
    EXPECT_EQ(signalOf(AF_INET), SIGSYS);
    EXPECT_EQ(signalOf(AF_INET6), SIGSYS);
    EXPECT_EQ(signalOf(AF_UNIX), 0);
}

/// The bytes that base64 text in `text` stands for, one after the other: pictures and fonts in a page.
std::string decodedIn(const std::string& text) {
    static const std::string digits = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    std::string out;
    const std::string start = ";base64,";
    for (std::size_t at = text.find(start); at != std::string::npos; at = text.find(start, at)) {
        unsigned bits = 0;
        int count = 0;
        for (at += start.size(); at < text.size(); ++at) {
            const std::size_t digit = digits.find(text[at]);
            if (digit == std::string::npos) break;
            bits = bits << 6U | static_cast<unsigned>(digit);
            if ((count += 6) >= 8) out += static_cast<char>(bits >> (count -= 8));
        }
    }
    return out;
}

/// A sample in a folder whose name, like that of the person, must not leave this computer.
class Privacy : public ::testing::Test {
protected:
    void SetUp() override {
        secret_ = folder_.path() / "secret-client";
        std::filesystem::create_directories(secret_ / "pictures");
        const std::filesystem::path samples = TENTER_SAMPLES;
        std::filesystem::copy_file(samples / "shore-walks.tenter.json", secret_ / "row.tenter.json");
        for (const auto& entry : std::filesystem::directory_iterator(samples / "pictures")) {
            std::string bytes = contentOf(entry.path().string());
            if (bytes.starts_with("\xFF\xD8"))
                bytes.insert(2, std::string("\xFF\xFE\0\x0Fsecret-camera", 17));
            folder_.write("secret-client/pictures/" + entry.path().filename().string(), bytes);
        }
        for (const auto& [name, value] : {std::pair{"HOME", "/secret-home"}, std::pair{"USER", "secret-user"},
                                          std::pair{"LOGNAME", "secret-user"}})
            setenv(name, value, 1);
    }

    void expectNoSecret(const std::string& content, const std::string& what) {
        for (const std::string& all : {content, decodedIn(content)}) {
            EXPECT_EQ(all.find("secret-"), std::string::npos) << what << ": " << around(all, "secret-");
            EXPECT_EQ(all.find(folder_.path().string()), std::string::npos) << what;
        }
    }
    static std::string around(const std::string& text, const std::string& found) {
        const std::size_t at = text.find(found);
        return at == std::string::npos ? "" : text.substr(at < 40 ? 0 : at - 40, 100);
    }
    [[nodiscard]] std::string project() const { return (secret_ / "row.tenter.json").string(); }

    Folder folder_;
    std::filesystem::path secret_;
};

TEST_F(Privacy, IsKeptByEveryExport) {
    ASSERT_NE(contentOf((secret_ / "pictures/creek.jpg").string()).find("secret-camera"), std::string::npos);
    const std::vector<std::vector<std::string>> exports{
        {"stylesheet"},      {"stylesheet", "--all-variants"},
        {"markup"},          {"page"},
        {"tokens"},          {"sheet"},
        {"sheet", "--pdf"},  {"picture", "--width", "800"},
        {"solve"},           {"picture", "--width", "800", "--svg"},
        {"wraps", "--json"}, {"check", "--json"}};
    for (std::vector<std::string> arguments : exports) {
        arguments.push_back(project());
        const Finished finished = tenterCli(arguments);
        ASSERT_TRUE(finished.code == 0 || finished.code == 1) << arguments[0] << ": " << finished.err;
        ASSERT_FALSE(finished.out.empty());
        expectNoSecret(finished.out, arguments[0]);
    }
}

TEST_F(Privacy, IsKeptByFoldersThatAreWritten) {
    for (const std::string verb : {"folder", "pictures"}) {
        const std::filesystem::path into = folder_.path() / ("out-" + verb);
        ASSERT_EQ(tenterCli({verb, project(), "--into", into.string()}).code, 0);
        std::size_t files = 0;
        for (const auto& entry : std::filesystem::recursive_directory_iterator(into)) {
            if (!entry.is_regular_file()) continue;
            ++files;
            expectNoSecret(contentOf(entry.path().string()), entry.path().filename().string());
        }
        EXPECT_GT(files, 3U);
    }
}

// The project's own page carries the picture, not what the camera said.
TEST_F(Privacy, LosesNoPictures) {
    const std::string page = tenterCli({"page", project()}).out;
    EXPECT_NE(decodedIn(page).find("JFIF"), std::string::npos);
}

// The names in a project file are relative to it, so that it can move with its files.
TEST_F(Privacy, RefusesAbsoluteNames) {
    folder_.write("secret.jpg", contentOf((secret_ / "pictures/creek.jpg").string()));
    const auto with = [](const std::string& file) {
        return R"({"format": "tenter-project", "version": 1, "name": "Walks", "cards": [{"parts": [{"picture": ")" +
               file +
               R"(", "size": [3, 2], "alt": "x"}]}], "variants": [{"class": "walks", "bands": [{}]}]})";
    };
    const std::string absolute = (folder_.path() / "secret.jpg").string();
    const Finished finished =
        tenterCli({"page", folder_.write("secret-client/outside.tenter.json", with(absolute))});
    EXPECT_EQ(finished.code, 2);
    EXPECT_EQ(finished.errorLines(), 1U) << finished.err;
    const std::string inside =
        folder_.write("secret-client/inside.tenter.json", with("pictures/../pictures/creek.jpg"));
    EXPECT_EQ(tenterCli({"page", inside}).code, 0);
}

}  // namespace
}  // namespace tenter::tests
