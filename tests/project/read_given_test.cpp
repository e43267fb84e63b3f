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

// A text as it is, as earlier files have it, or an English text with its values.
TEST(ReadGiven, has_sentences_for_readers_of_every_language) {
    Json json = Json::parse(smallProjectWith("/given", soundGiven()));
    const Json unread = Json::parse(R"(["As it is, %1.", ["%1 of %2", ["The %1", "row"], "page"]])");
    json["given"]["unread"] = unread;
    const Project project = sound(json.dump());
    ASSERT_EQ(project.row().given->unread.size(), 2U);
    EXPECT_EQ(project.row().given->unread[0].worded(), "As it is, %1.");
    EXPECT_EQ(project.row().given->unread[1].worded(), "The row of page");
    EXPECT_EQ(Json::parse(write(project))["given"]["unread"], unread);
    std::string deep = "\"a\"";
    for (int i = 0; i < 30; ++i)
        deep = "[\"%1\", " + deep + "]";
    for (const Json& fault :
         {Json(3), Json::array(), Json::parse("[3]"), Json::parse(R"(["a", 3])"),
          Json::parse(R"(["a","1","2","3","4","5","6","7","8","9","10"])"), Json::parse(deep)}) {
        json["given"]["unread"] = Json::array({fault});
        EXPECT_TRUE(problemsOf(json.dump()).front().place.starts_with("/given/unread/0")) << fault;
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
