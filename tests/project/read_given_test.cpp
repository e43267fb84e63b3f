#include <filesystem>

#include "given.h"

namespace tenter::project {
namespace {

Json soundGiven() {
    return Json::parse(R"({"markup": "<ul class='walks-pair'><li>Ebb</li></ul>",
                           "selectors": {"row": "", "card": "li", "kicker": "li p"}})");
}

TEST(ReadGiven, has_markup_and_selectors_by_role) {
    const Project project = sound(smallProjectWith("/given", soundGiven()));
    ASSERT_TRUE(project.row().given);
    EXPECT_EQ(project.row().given->markup, "<ul class='walks-pair'><li>Ebb</li></ul>");
    ASSERT_NE(project.row().given->find("kicker"), nullptr);
    EXPECT_EQ(*project.row().given->find("kicker"), "li p");
    EXPECT_EQ(*project.row().given->find("row"), "");
    EXPECT_EQ(project.row().given->find("heading"), nullptr);
    EXPECT_FALSE(sound(smallProject().dump()).row().given);
}

TEST(ReadGiven, is_read_strictly) {
    const std::vector<std::pair<std::string, Json>> faults{{"/given", nullptr},
                                                           {"/given", ""},
                                                           {"/given/markup", 1},
                                                           {"/given/theme", Json::array()},
                                                           {"/given/selectors", ".walk"},
                                                           {"/given/selectors/heading", 3},
                                                           {"/given/selectors/heading", " \t"},
                                                           {"/given/selectors/card", ""},
                                                           {"/given/selectors/Big Text", "p"},
                                                           {"/given/selector", "p"}};
    for (const auto& [place, value] : faults) {
        Json json = Json::parse(smallProjectWith("/given", soundGiven()));
        json[Json::json_pointer(place)] = value;
        const Problems problems = problemsOf(json.dump());
        EXPECT_TRUE(problems.front().place.starts_with(place)) << linesOf(problems);
    }
    for (const char* key : {"row", "card"}) {
        Json json = Json::parse(smallProjectWith("/given", soundGiven()));
        json["given"]["selectors"].erase(key);
        EXPECT_EQ(problemsOf(json.dump()).front().place, "/given/selectors");
    }
    for (const char* key : {"markup", "selectors"}) {
        Json json = Json::parse(smallProjectWith("/given", soundGiven()));
        json["given"].erase(key);
        EXPECT_EQ(problemsOf(json.dump()).front().place, "/given");
    }
}

// A picture that a page shows is on the page; without given markup it must be beside the project.
TEST(ReadGiven, allows_missing_pictures) {
    const std::filesystem::path folder = std::filesystem::temp_directory_path();
    EXPECT_EQ(problemsOf(smallProject().dump(), folder).front().place, "/cards/0/parts/1/picture");
    Problems problems;
    EXPECT_TRUE(parse(smallProjectWith("/given", soundGiven()), "walks", folder, problems))
        << linesOf(problems);
    Json absolute = Json::parse(smallProjectWith("/given", soundGiven()));
    absolute["cards"][0]["parts"][1]["picture"] = "/shore.png";
    EXPECT_EQ(problemsOf(absolute.dump(), folder).front().place, "/cards/0/parts/1/picture");
}

}  // namespace
}  // namespace tenter::project
