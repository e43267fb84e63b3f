// `tenter-cli new`: from a text to a project that the other verbs read.
#include <gtest/gtest.h>

#include <algorithm>

#include "process.h"

namespace tenter::tests {
namespace {

class NewVerb : public ::testing::Test {
protected:
    Folder folder_;
};

TEST_F(NewVerb, PrintsAProjectWithoutErrors) {
    folder_.write("text.txt",
                  "Low tide\nTwo miles of sand and weed.\nBook\n\nGeese\nAt first light.\nJoin\n");
    const Finished made = tenterCli({"new", folder_.file("text.txt"), "--columns", "2", "--look", "lantern"});
    ASSERT_EQ(made.code, 0) << made.err;
    EXPECT_EQ(made.err, "");
    folder_.write("row.tenter.json", made.out);
    const Finished checked = tenterCli({"check", folder_.file("row.tenter.json"), "--fail-on", "error"});
    EXPECT_EQ(checked.code, 0) << checked.out;
    EXPECT_NE(made.out.find("\"low-tide-pair\""), std::string::npos);
    EXPECT_NE(made.out.find("At first light."), std::string::npos);
}

TEST_F(NewVerb, PrintsHowATextWasUnderstood) {
    folder_.write("table.csv", "Title,Text\nLow,Two\nGeese,First\n");
    const Finished read = tenterCli({"new", folder_.file("table.csv"), "--markdown"});
    EXPECT_EQ(read.code, 0);
    EXPECT_EQ(read.out, "## Low\n\nTwo\n\n## Geese\n\nFirst\n\n");
    const Finished plain = tenterCli({"new", folder_.file("table.csv"), "--markdown", "--format", "plain"});
    EXPECT_NE(plain.out, read.out);
}

TEST_F(NewVerb, SaysThatTheTextIsAnExample) {
    const Finished made = tenterCli({"new", "--language", "he", "--direction", "rtl", "--name", "Shore"});
    EXPECT_EQ(made.code, 0);
    EXPECT_NE(made.err.find("example"), std::string::npos);
    EXPECT_NE(made.out.find("\"direction\": \"rtl\""), std::string::npos);
    EXPECT_NE(made.out.find("\"name\": \"Shore\""), std::string::npos);
}

TEST_F(NewVerb, TakesTheSettingsOfAPageAsIntakeDoes) {
    const std::string page = std::string(TENTER_SAMPLES) + "/../tests/start/pages/plain.html";
    const Finished made = tenterCli({"new", "--page", page});
    EXPECT_EQ(made.code, 0) << made.err;
    EXPECT_NE(made.out.find("\"upTo\": 800"), std::string::npos);
    EXPECT_NE(made.out.find("\"maxWidth\": \"1180px\""), std::string::npos);
    const Finished read = tenterCli({"intake", page, "--out", folder_.file("row.tenter.json")});
    EXPECT_EQ(read.code, 0) << read.err;
    const Finished checked = tenterCli({"stylesheet", folder_.file("row.tenter.json"), "--markup", "given"});
    EXPECT_EQ(checked.code, 0) << checked.err;
    EXPECT_NE(checked.out.find("repeat(3, minmax(0, 1fr))"), std::string::npos);
}

TEST_F(NewVerb, RefusesWrongArgumentsInOneLine) {
    for (const std::vector<std::string>& arguments : {std::vector<std::string>{"new", "--look", "sepia"},
                                                      {"new", "--columns", "0"},
                                                      {"new", "--columns", "7"},
                                                      {"new", "--format", "rtf"},
                                                      {"new", "--direction", "up"},
                                                      {"new", "--language", "e"},
                                                      {"new", folder_.file("none.txt")},
                                                      {"new", "--picture", folder_.file("none.jpg")}}) {
        const Finished refused = tenterCli(arguments);
        EXPECT_EQ(refused.code, 2) << arguments[1];
        EXPECT_EQ(refused.out, "");
        EXPECT_EQ(std::count(refused.err.begin(), refused.err.end(), '\n'), 1) << refused.err;
    }
}

}  // namespace
}  // namespace tenter::tests
