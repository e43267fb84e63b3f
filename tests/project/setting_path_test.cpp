#include "given.h"

namespace tenter::project {
namespace {

/// True if set without a problem.
bool set(Settings& settings, const std::string& path, const Json& value) {
    Problems problems;
    const bool done = setSetting(settings, path, value, problems);
    EXPECT_EQ(done, problems.empty()) << linesOf(problems);
    return done;
}

TEST(SettingPath, sets_and_reads_a_value) {
    Settings settings;
    EXPECT_TRUE(set(settings, "row/columns", 3));
    EXPECT_TRUE(set(settings, "text/heading/margin/top", "auto"));
    EXPECT_TRUE(set(settings, "text/kicker/size", Json::parse("[[360, 12], [1480, 14]]")));
    EXPECT_TRUE(set(settings, "card/shadow/colour", "#0003"));
    EXPECT_EQ(settings.row.columns, 3);
    EXPECT_TRUE(settings.text.find("heading")->margin.top->isAuto());
    EXPECT_EQ(settings.text.find("kicker")->size, Ramp::between({360, 12}, {1480, 14}));
    EXPECT_EQ(settingAt(settings, "row/columns"), 3);
    EXPECT_EQ(settingAt(settings, "text/kicker/size").dump(), "[[360,12],[1480,14]]");
    EXPECT_EQ(settingAt(settings, "card/shadow/colour"), "#0003");
}

TEST(SettingPath, reads_null_for_what_is_not_set_or_does_not_exist) {
    Settings settings;
    settings.row.columns = 3;
    for (const char* path : {"row/width", "text/heading/size", "row/height", "rows", "row/columns/more",
                             "text/Bad/size", "card"}) {
        EXPECT_TRUE(settingAt(settings, path).is_null()) << path;
    }
}

TEST(SettingPath, unsets_with_null_and_leaves_no_empty_role) {
    Settings settings;
    set(settings, "row/columns", 3);
    set(settings, "text/kicker/weight", 500);
    EXPECT_TRUE(set(settings, "row/columns", nullptr));
    EXPECT_TRUE(set(settings, "text/kicker/weight", nullptr));
    EXPECT_EQ(settings, Settings{});
}

TEST(SettingPath, serves_groups_whole) {
    Settings settings;
    EXPECT_TRUE(set(settings, "card/shadow", Json::parse(R"({"y": "2px", "blur": "8px"})")));
    EXPECT_EQ(settings.card.shadow.blur, Length::px(8));
    EXPECT_EQ(settingAt(settings, "card/shadow").dump(), R"({"y":"2px","blur":"8px"})");
    EXPECT_TRUE(set(settings, "card/shadow", nullptr));
    EXPECT_TRUE(settingAt(settings, "card/shadow").is_null());
}

TEST(SettingPath, refuses_as_the_file_does_and_changes_nothing) {
    Settings settings;
    settings.row.columns = 3;
    const Settings before = settings;
    const std::vector<std::pair<std::string, Json>> wrong{{"row/columns", 13},
                                                          {"row/columns", "3"},
                                                          {"row/rowGap", "2%"},
                                                          {"row/height", "2px"},
                                                          {"row/columns/more", 1},
                                                          {"text/card/size", 12},
                                                          {"text/heading/size", 0},
                                                          {"text/heading/hue", 1},
                                                          {"card/padding/top", "-1px"},
                                                          {"card/shadow", "dark"},
                                                          {"", 3},
                                                          {"text/heading/margin/bottom", "auto"}};
    for (const auto& [path, value] : wrong) {
        EXPECT_FALSE(set(settings, path, value)) << path;
        EXPECT_EQ(settings, before) << path;
    }
}

TEST(SettingPath, has_place_and_fix) {
    Settings settings;
    Problems problems;
    setSetting(settings, "text/heading/weight", 5000, problems);
    setSetting(settings, "row/gap", "1px", problems);
    ASSERT_EQ(problems.size(), 2U);
    EXPECT_EQ(problems[0].line(),
              "/text/heading/weight: \"weight\" must be a number from 1 to 1000; it is 5000.");
    EXPECT_TRUE(problems[1].line().starts_with("/row/gap: There is no such setting. Use columns, "))
        << problems[1].line();
}

}  // namespace
}  // namespace tenter::project
