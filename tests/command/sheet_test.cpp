// The spec sheet as a file: PDF by the tag tree that pdfinfo (poppler) prints, HTML by its text.
#include <gtest/gtest.h>
#include <unistd.h>

#include <algorithm>
#include <cstdio>
#include <fstream>
#include <sstream>

#include "process.h"

namespace tenter::tests {
namespace {

const std::string sheetSamples = TENTER_SAMPLES "/";

std::string outputOf(const std::string& command) {
    std::string out;
    FILE* const pipe = popen(command.c_str(), "r");
    if (pipe == nullptr) return out;
    char piece[4096];
    for (std::size_t count = fread(piece, 1, sizeof piece, pipe); count > 0;
         count = fread(piece, 1, sizeof piece, pipe))
        out.append(piece, count);
    EXPECT_EQ(pclose(pipe), 0) << command;
    return out;
}

std::size_t countOf(const std::string& text, const std::string& what) {
    std::size_t found = 0;
    for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + 1))
        ++found;
    return found;
}

/// A PDF sheet of a sample, in a folder of its own.
class PdfSheet : public ::testing::TestWithParam<std::tuple<const char*, const char*>> {
protected:
    void SetUp() override {
        const auto [sample, paper] = GetParam();
        const Finished finished =
            tenterCli({"sheet", sheetSamples + sample + ".tenter.json", "--pdf", "--paper", paper, "--date",
                       "2026-11-29", "--out", folder_.file("sheet.pdf")});
        ASSERT_EQ(finished.code, 0) << finished.err;
        ASSERT_EQ(finished.err, "");
    }
    [[nodiscard]] std::string info(const std::string& options) const {
        return outputOf("pdfinfo " + options + " '" + folder_.file("sheet.pdf") + "' 2>&1");
    }
    Folder folder_;
};

TEST_P(PdfSheet, IsTaggedAndHasATitleADateAndThePaper) {
    const std::string info = this->info("");
    EXPECT_NE(info.find("Tagged:          yes"), std::string::npos) << info;
    EXPECT_NE(info.find(": spec sheet\n"), std::string::npos) << info;
    EXPECT_NE(info.find("29 00:00:00 2026"), std::string::npos) << info;
    const bool isLetter = std::string(std::get<1>(GetParam())) == "letter";
    EXPECT_NE(info.find(isLetter ? "612 x 792 pts (letter)" : "(A4)"), std::string::npos) << info;
    EXPECT_EQ(info.find("Error"), std::string::npos) << info;
    EXPECT_EQ(info.find("Warning"), std::string::npos) << info;
}

TEST_P(PdfSheet, HasHeadingsTablesFiguresAndFindingsInItsTagTree) {
    const std::string tree = info("-struct-text");
    EXPECT_EQ(tree.find("Error"), std::string::npos) << tree;
    EXPECT_EQ(countOf(tree, "H1 (block)"), 1U);
    EXPECT_GE(countOf(tree, "H2 (block)"), 2U);
    EXPECT_GE(countOf(tree, "H3 (block)"), 8U);
    EXPECT_GE(countOf(tree, "Table (block)"), 6U);
    EXPECT_GT(countOf(tree, "LBody"), 0U);
    // Every figure has an alternative text, every table head its scope.
    const std::string pdf = contentOf(folder_.file("sheet.pdf"));
    const std::size_t figures = countOf(pdf, "/S /Figure") - countOf(pdf, "/Alt <FEFF");
    EXPECT_GE(figures, 6U);
    EXPECT_EQ(countOf(tree, "Figure"), figures);
    EXPECT_EQ(countOf(pdf, "/Alt <FEFF"), figures);
    EXPECT_GT(countOf(tree, "/Scope /Column"), 30U);
    EXPECT_GT(countOf(tree, "/Scope /Row"), 20U);
    EXPECT_EQ(countOf(tree, "/Scope /"), countOf(tree, "TH:"));
    EXPECT_EQ(countOf(pdf, "/Lang (en)"), 1U);
    EXPECT_EQ(countOf(pdf, "/DisplayDocTitle true"), 1U);
    // The text is there as text, with spaces between the words of two lines.
    EXPECT_NE(
        tree.find(
            "Automated checks cover only a part of WCAG 2.2. They do not prove conformance. That needs"),
        std::string::npos);
    EXPECT_NE(tree.find("Check the licence of each font before it goes on a site"), std::string::npos);
    // No letter of a ligature is lost, nor what follows a no-break space.
    EXPECT_NE(tree.find("Width of the worst finding"), std::string::npos);
    EXPECT_NE(tree.find("\"1880 px, "), std::string::npos);
}

INSTANTIATE_TEST_SUITE_P(Samples, PdfSheet,
                         ::testing::Combine(::testing::Values("shore-walks", "season", "marsh-ar"),
                                            ::testing::Values("a4", "letter")),
                         [](const auto& each) {
                             std::string name =
                                 std::string(std::get<0>(each.param)) + std::get<1>(each.param);
                             std::erase(name, '-');
                             return name;
                         });

// A class that is broken at a hyphen cannot be copied.
TEST(Sheet, HasWholeClassesOnItsCover) {
    Folder folder;
    std::string project = contentOf(sheetSamples + "shore-walks.tenter.json");
    const std::vector<std::string> classes{"walks-in-three", "walks-by-the-shore-in-twos",
                                           "walks-around-the-year-in-fours"};
    for (std::size_t i = 0; i < classes.size(); ++i) {
        const std::string old = i == 0 ? "walks-trio" : i == 1 ? "walks-pair" : "walks-quartet";
        for (std::size_t at = project.find(old); at != std::string::npos; at = project.find(old, at))
            project.replace(at, old.size(), classes[i]);
    }
    ASSERT_EQ(symlink((sheetSamples + "pictures").c_str(), folder.file("pictures").c_str()), 0);
    std::ofstream(folder.file("walks.tenter.json")) << project;
    const Finished finished =
        tenterCli({"sheet", folder.file("walks.tenter.json"), "--pdf", "--out", folder.file("sheet.pdf")});
    ASSERT_EQ(finished.code, 0) << finished.err;
    // The text of the page as its lines are.
    const std::string page = outputOf("pdftotext -f 1 -l 1 '" + folder.file("sheet.pdf") + "' -");
    for (const std::string& name : classes)
        EXPECT_NE(page.find("." + name), std::string::npos) << name << " in " << page.substr(0, 600);
}

TEST(Sheet, IsHtmlWithTheDateOfTheEnvironmentOrTheArgument) {
    const Finished given = tenterCli({"sheet", sheetSamples + "shore-walks.tenter.json", "--date",
                                      "2025-03-01", "--variant", "walks-pair"});
    ASSERT_EQ(given.code, 0) << given.err;
    EXPECT_TRUE(given.out.starts_with("<!doctype html>"));
    EXPECT_NE(given.out.find("<time datetime=\"2025-03-01\">2025-03-01</time>"), std::string::npos);
    EXPECT_EQ(given.out.find("walks-trio"), std::string::npos);
    ASSERT_EQ(setenv("SOURCE_DATE_EPOCH", "86400", 1), 0);
    const Finished reproduced =
        tenterCli({"sheet", sheetSamples + "shore-walks.tenter.json", "--variant", "walks-pair"});
    unsetenv("SOURCE_DATE_EPOCH");
    EXPECT_NE(reproduced.out.find("1970-01-02"), std::string::npos);
}

TEST(Sheet, RefusesADateOrAPaperThatCannotBe) {
    for (const std::vector<std::string>& wrong : {std::vector<std::string>{"--date", "29.11.2026"},
                                                  {"--date", "2026-02-30"},
                                                  {"--pdf", "--paper", "a5"},
                                                  {"--paper", "a4"},
                                                  {"--variant", "none"}}) {
        std::vector<std::string> words{"sheet", sheetSamples + "shore-walks.tenter.json"};
        words.insert(words.end(), wrong.begin(), wrong.end());
        const Finished finished = tenterCli(words);
        EXPECT_EQ(finished.code, 2) << wrong.back();
        EXPECT_EQ(finished.out, "");
        EXPECT_EQ(finished.errorLines(), 1U) << finished.err;
    }
}

}  // namespace
}  // namespace tenter::tests
