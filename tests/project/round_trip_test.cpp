#include "given.h"
#include "project/json_text.h"
#include "random_project.h"

namespace tenter::project {
namespace {

// The file's own promise: what was read and not changed is written as it was, but for white space.
TEST(RoundTrip, keeps_a_rich_file_byte_for_byte) {
    const std::string text = contentOf(testFile("rich.tenter.json"));
    EXPECT_EQ(write(sound(text)), text);
}

TEST(RoundTrip, keeps_the_common_practice_file_byte_for_byte) {
    const std::string text = contentOf(testFile("common_practice.tenter.json"));
    EXPECT_EQ(write(sound(text)), text);
}

TEST(RoundTrip, keeps_random_projects_whole) {
    RandomProject random(20261125);
    for (int i = 0; i < 200; ++i) {
        const std::string text = prettyJson(random.next());
        Problems problems;
        const std::optional<Project> project = parse(text, "random", {}, problems);
        ASSERT_TRUE(project) << linesOf(problems) << text;
        const std::string again = write(*project);
        ASSERT_EQ(again, text);
        ASSERT_EQ(sound(again), *project);
    }
}

TEST(RoundTrip, writes_values_in_one_way) {
    const Project project = sound(smallProjectWith(
        "/style",
        Json::parse(R"({"row": {"width": "80.0%", "columnGap": "+.5REM"}, "card": {"background": "#FFFFFF"},
                                  "text": {"body": {"size": [[900, 20], [300, 15]], "weight": 4e2}}})")));
    const Json style = Json::parse(write(project))["style"];
    EXPECT_EQ(style.dump(), R"({"row":{"width":"80%","columnGap":"0.5rem"},"card":{"background":"#fff"},)"
                            R"("text":{"body":{"size":[[300,15],[900,20]],"weight":400}}})");
}

TEST(RoundTrip, writes_defaults_only_if_they_were_there) {
    EXPECT_EQ(Json::parse(write(sound(smallProject().dump()))), smallProject());
    const Json withDefault = Json::parse(smallProjectWith("/language", "en"));
    EXPECT_EQ(Json::parse(write(sound(withDefault.dump()))), withDefault);
}

TEST(RoundTrip, writes_a_new_setting_behind_those_that_were_there) {
    Project project = sound(smallProjectWith("/style", Json::parse(R"({"x-a": 1, "text": {}, "row": {}})")));
    project.row().style.card.bleed = true;
    project.row().style.row.columns = 2;
    EXPECT_EQ(Json::parse(write(project))["style"].dump(),
              R"({"x-a":1,"text":{},"row":{"columns":2},"card":{"bleed":true}})");
}

// A project made by the program holds whatever text it was given, even bytes that are no text.
TEST(RoundTrip, writes_bad_utf8_as_replacement_characters) {
    Project project = sound(smallProject().dump());
    project.name = "Low\xff tide";
    EXPECT_EQ(sound(write(project)).name, "Low\xef\xbf\xbd tide");
}

TEST(RoundTrip, reads_every_sample_project_as_it_is_written) {
    int count = 0;
    for (const auto& entry : std::filesystem::directory_iterator(TENTER_SOURCE_DIR "/sample-projects")) {
        if (!entry.path().string().ends_with(".tenter.json")) continue;
        Problems problems;
        const std::optional<Project> project = read(entry.path(), problems);
        ASSERT_TRUE(project) << linesOf(problems);
        EXPECT_EQ(Json::parse(write(*project)), Json::parse(contentOf(entry.path()))) << entry.path();
        ++count;
    }
    EXPECT_GT(count, 0);
}

}  // namespace
}  // namespace tenter::project
