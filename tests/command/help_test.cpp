// The help of every verb: its first line, its examples, which must work as printed, and its exit codes.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <set>
#include <sstream>

#include "process.h"

namespace tenter::tests {
namespace {

using Words = std::vector<std::string>;

std::vector<std::string> linesOf(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);)
        lines.push_back(line);
    return lines;
}

std::size_t characters(const std::string& text) {
    return static_cast<std::size_t>(
        std::ranges::count_if(text, [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

/// The lines of a section of help, from its title to the next empty line, without the title.
std::vector<std::string> section(const std::string& help, const std::string& title) {
    const std::vector<std::string> lines = linesOf(help);
    auto at = std::ranges::find(lines, title + ":");
    std::vector<std::string> found;
    while (at != lines.end() && ++at != lines.end() && !at->empty())
        found.push_back(*at);
    return found;
}

/// The arguments of a command line as a shell would split it: at spaces, except inside double quotes.
Words shellWords(const std::string& line) {
    Words words{""};
    bool quoted = false;
    for (const char c : line) {
        if (c == '"') {
            quoted = !quoted;
        } else if (c == ' ' && !quoted) {
            if (!words.back().empty()) words.emplace_back();
        } else {
            words.back() += c;
        }
    }
    return words;
}

std::vector<std::string> verbs() {
    std::vector<std::string> names;
    for (const std::string& line : section(tenterCli({"--help"}).out, "Verbs"))
        if (line.starts_with("  ") && line[2] != ' ') names.push_back(line.substr(2, line.find(' ', 2) - 2));
    return names;
}

std::string helpOf(const std::string& verb) {
    const Finished finished = tenterCli({verb, "--help"});
    EXPECT_EQ(finished.code, 0) << verb;
    EXPECT_EQ(finished.err, "") << verb;
    return finished.out;
}

std::set<int> exitCodesIn(const std::string& help) {
    std::set<int> codes;
    for (const std::string& line : section(help, "Exit codes"))
        if (line.size() > 4 && line[2] >= '0' && line[2] <= '9') codes.insert(line[2] - '0');
    return codes;
}

/// A folder with the files that examples name.
class Examples : public ::testing::Test {
protected:
    void SetUp() override {
        const std::filesystem::path samples = TENTER_SAMPLES;
        std::filesystem::copy(samples / "pictures", folder_.file("pictures"),
                              std::filesystem::copy_options::recursive);
        std::filesystem::copy(samples / "shore-walks.tenter.json", folder_.file("row.tenter.json"));
        std::filesystem::copy(samples / "visits.csv", folder_.file("visits.csv"));
        folder_.write(
            "page.html",
            "<!doctype html><html lang=en><body><ul><li><h3>High water</h3><p>Twice a day, a little "
            "later each time.</p></li><li><h3>Low water</h3><p>When the steps are green and dry.</p>"
            "</li></ul></body></html>");
        folder_.write("requests.jsonl",
                      "{\"jsonrpc\": \"2.0\", \"id\": 1, \"method\": \"wraps\", \"params\": {\"project\": "
                      "\"row.tenter.json\"}}\n");
        folder_.write("theme.css", "html { font-size: 62.5% } li { float: left }");
        const Finished adopted =
            run({"adopt", "row.tenter.json", "page.html", "--out", "imported.tenter.json"});
        ASSERT_EQ(adopted.code, 0) << adopted.err;
        const Finished changed =
            run({"solve", "row.tenter.json", "body.size=-17", "--out", "changed.tenter.json"});
        ASSERT_EQ(changed.code, 0) << changed.err;
        ASSERT_EQ(run({"stylesheet", "row.tenter.json", "--out", "row.css"}).code, 0);
        ASSERT_EQ(run({"folder", "row.tenter.json", "--into", "site"}).code, 0);
    }
    Finished run(const Words& words) const { return tenterCli(words, folder_.path()); }

    void expectExamplesWork(const std::string& help, const std::set<int>& codes) const {
        const std::vector<std::string> examples = section(help, "Examples");
        EXPECT_EQ(examples.size(), 2U) << help;
        for (const std::string& example : examples) {
            Words words = shellWords(example.substr(std::min<std::size_t>(2, example.size())));
            ASSERT_EQ(words.front(), "tenter-cli") << example;
            words.erase(words.begin());
            const Finished finished = run(words);
            EXPECT_TRUE(codes.contains(finished.code)) << example << "\n" << finished.err;
            EXPECT_NE(finished.code, 2) << example << "\n" << finished.err;
        }
    }

    Folder folder_;
};

TEST_F(Examples, OfEveryVerbWorkAndGiveAListedExitCode) {
    ASSERT_GE(verbs().size(), 9U);
    for (const std::string& verb : verbs()) {
        SCOPED_TRACE(verb);
        const std::string help = helpOf(verb);
        expectExamplesWork(help, exitCodesIn(help));
        for (const std::string& example : section(help, "Examples"))
            EXPECT_TRUE(example.starts_with("  tenter-cli " + verb + " ")) << example;
    }
}

TEST_F(Examples, OfTheProgramWork) {
    expectExamplesWork(tenterCli({"--help"}).out, {0, 1});
}

// Only check, diff and solve have a result that is not simply done.
TEST(Help, ListsTheExitCodesOfTheVerb) {
    for (const std::string& verb : verbs()) {
        const bool judges = verb == "check" || verb == "diff" || verb == "solve";
        EXPECT_EQ(exitCodesIn(helpOf(verb)), (judges ? std::set{0, 1, 2} : std::set{0, 2})) << verb;
    }
}

TEST(Help, StartsWithALineOfAtMostSeventyCharacters) {
    for (const std::string& verb : verbs()) {
        const std::string first = linesOf(helpOf(verb)).front();
        EXPECT_GE(characters(first), 20U) << first;
        EXPECT_LE(characters(first), 70U) << first;
    }
    EXPECT_LE(characters(linesOf(tenterCli({"--help"}).out).front()), 70U);
}

TEST(Help, HasNoLineWiderThanATerminal) {
    std::vector<std::string> texts{tenterCli({"--help"}).out};
    for (const std::string& verb : verbs())
        texts.push_back(helpOf(verb));
    for (const std::string& text : texts)
        for (const std::string& line : linesOf(text))
            EXPECT_LE(characters(line), 100U) << line;
}

// An option that takes a value says which one is used without it.
TEST(Help, NamesTheDefaultOfEveryOptionThatTakesAValue) {
    for (const std::string& verb : verbs()) {
        std::vector<std::string> options;
        for (const std::string& line : section(helpOf(verb), "Options")) {
            if (line.starts_with("  -"))
                options.push_back(line);
            else if (!options.empty())
                options.back() += " " + line.substr(std::min(line.find_first_not_of(' '), line.size()));
        }
        EXPECT_FALSE(options.empty()) << verb;
        for (const std::string& option : options) {
            const std::string name = option.substr(2, option.find("  ", 2) - 2);
            const bool takesValue = name.find(' ') != std::string::npos && !name.starts_with("-h");
            const bool isOut = name.starts_with("--out ");
            if (takesValue && !isOut) {
                EXPECT_NE(option.find("Default: "), std::string::npos) << verb << ": " << option;
            }
        }
    }
}

}  // namespace
}  // namespace tenter::tests
