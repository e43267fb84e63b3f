#include <random>
#include <set>

#include "given.h"

namespace tenter::project {
namespace {

// Whatever comes in, there is a project or there are problems, never both, never neither.
void expectAnswer(const std::string& text) {
    Problems problems;
    const std::optional<Project> project = parse(text, "hostile", {}, problems);
    ASSERT_NE(project.has_value(), !problems.empty()) << linesOf(problems);
    for (const Problem& problem : problems) {
        ASSERT_FALSE(problem.what.empty());
        ASSERT_TRUE(saysHowToFix(problem)) << problem.line();
        ASSERT_EQ(problem.line().find('\n'), std::string::npos);
    }
    if (project) {
        ASSERT_FALSE(write(*project).empty());
    }
}

TEST(HostileFile, random_bytes_are_always_a_problem) {
    std::mt19937 random(41);
    std::uniform_int_distribution<int> bytes(0, 255);
    for (int i = 0; i < 3000; ++i) {
        std::string text;
        for (int n = bytes(random); n > 0; --n)
            text += static_cast<char>(bytes(random));
        problemsOf(text);
        expectAnswer(text);
    }
}

TEST(HostileFile, a_file_cut_at_any_byte_is_always_a_problem) {
    std::string text = contentOf(testFile("rich.tenter.json"));
    text.erase(text.find_last_not_of('\n') + 1);
    for (std::size_t length = 0; length < text.size(); ++length)
        problemsOf(text.substr(0, length));
}

TEST(HostileFile, a_changed_byte_never_goes_unanswered) {
    const std::string text = contentOf(testFile("rich.tenter.json"));
    std::mt19937 random(43);
    std::uniform_int_distribution<int> bytes(0, 255);
    for (std::size_t at = 0; at < text.size(); at += 3) {
        std::string changed = text;
        changed[at] = static_cast<char>(bytes(random));
        expectAnswer(changed);
        changed.erase(at, 1);
        expectAnswer(changed);
    }
}

TEST(HostileFile, values_of_any_type_anywhere_never_go_unanswered) {
    const Json project = Json::parse(contentOf(testFile("rich.tenter.json")));
    const std::vector<Json> values{nullptr,
                                   true,
                                   -1,
                                   1e300,
                                   "",
                                   "\n",
                                   Json::array(),
                                   Json::object(),
                                   Json::array({1, 2}),
                                   "auto",
                                   "0",
                                   1,
                                   Json::array({Json::array({1, 1}), Json::array({1, 2})})};
    // Each value, and each object and list around it.
    std::set<std::string> places;
    const Json flat = project.flatten();
    for (const auto& [place, unused] : flat.items()) {
        for (Json::json_pointer pointer(place); !pointer.empty(); pointer = pointer.parent_pointer()) {
            places.insert(pointer.to_string());
        }
    }
    for (const std::string& place : places) {
        for (const Json& value : values) {
            Json changed = project;
            changed[Json::json_pointer(place)] = value;
            expectAnswer(changed.dump());
        }
    }
}

// Looking through all of them for each would take minutes.
TEST(HostileFile, many_keys_are_read_fast) {
    std::string text = R"({"format": "tenter-project", "version": 1, "name": "Walks", "cards": [],
                           "variants": [{"class": "walks", "bands": [{}]}])";
    for (int i = 0; i < 300000; ++i)
        text += ",\"x-" + std::to_string(i) + "\":0";
    const std::string written = write(sound(text + "}"));
    EXPECT_GT(written.size(), 300000U);
}

}  // namespace
}  // namespace tenter::project
