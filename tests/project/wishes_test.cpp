#include "project/wishes.h"
#include "given.h"

namespace tenter::project {
namespace {

Wishes wishesFrom(const std::string& roles) {
    return *sound(smallProjectWith("/wishes", Json::parse(R"({"roles": )" + roles + "}"))).row().wishes;
}

TEST(Wishes, hold_for_their_widths_the_later_over_the_earlier) {
    const Wishes wishes = wishesFrom(R"([{"role": "heading", "lines": 2},
        {"role": "body", "lines": 9},
        {"role": "heading", "from": 600, "upTo": 900, "lines": 3},
        {"role": "heading", "from": 800, "leastSize": 20}])");
    const auto lines = wishRanges(wishes, "heading", &RoleWishes::lines);
    ASSERT_EQ(lines.size(), 3U);
    EXPECT_EQ(lines[0].value, 2);
    EXPECT_EQ(lines[0].to, 600);
    EXPECT_EQ(lines[1].value, 3);
    EXPECT_EQ(lines[1].from, 600);
    EXPECT_EQ(lines[1].to, 900);
    EXPECT_EQ(lines[2].value, 2);
    EXPECT_EQ(lines[2].from, 900);
    EXPECT_EQ(wishRanges(wishes, "heading", &RoleWishes::leastSize).at(0).from, 800);
    EXPECT_TRUE(wishRanges(wishes, "button", &RoleWishes::lines).empty());
}

TEST(Wishes, of_a_project_are_laid_on_the_usual_ones) {
    Project project = sound(smallProject().dump());
    EXPECT_EQ(effectiveWishes(project), defaultWishes(project));
    project.row().wishes = wishesFrom(R"([{"role": "heading", "lines": 2}])");
    const Wishes wishes = effectiveWishes(project);
    EXPECT_EQ(wishRanges(wishes, "heading", &RoleWishes::lines).at(0).value, 2);
    EXPECT_EQ(wishRanges(wishes, "heading", &RoleWishes::leastSize).at(0).value, 11);
    EXPECT_EQ(wishRanges(wishes, "button", &RoleWishes::lines).at(0).value, 1);
    EXPECT_EQ(wishes.aim, Aim::Nearest);
}

// WCAG 2.2 SC 1.4.8: 80 characters to a line, 40 where they are Chinese, Japanese or Korean.
TEST(Wishes, ask_half_the_measure_of_ideographs) {
    Project project = sound(smallProject().dump());
    EXPECT_EQ(wishRanges(defaultWishes(project), "body", &RoleWishes::mostMeasure).at(0).value, 80);
    for (const char* language : {"ja", "zh-Hant", "ko-KR"}) {
        project.language = language;
        EXPECT_EQ(wishRanges(defaultWishes(project), "body", &RoleWishes::mostMeasure).at(0).value, 40);
    }
}

TEST(Wishes, are_refused_with_their_place_and_fix) {
    const std::vector<std::pair<std::string, std::string>> wrong{
        {R"([{"lines": 2}])", "/wishes/roles/0/role"},
        {R"([{"role": "heading", "lines": 0}])", "/wishes/roles/0/lines"},
        {R"([{"role": "heading", "lines": 2.5}])", "/wishes/roles/0/lines"},
        {R"([{"role": "heading", "from": 900, "upTo": 600}])", "/wishes/roles/0/upTo"},
        {R"([{"role": "body", "leastMeasure": 80, "mostMeasure": 30}])", "/wishes/roles/0/leastMeasure"},
        {R"([{"role": "body", "leastSize": 20, "mostSize": 15}])", "/wishes/roles/0/leastSize"},
        {R"([{"role": "heading", "ratio": 1.2}])", "/wishes/roles/0/ratio"},
        {R"([{"role": "heading", "leastRatio": 1.2, "ratioTo": "heading"}])", "/wishes/roles/0/leastRatio"},
        {R"([{"role": "heading", "breakpoints": "smooth"}])", "/wishes/roles/0/breakpoints"},
        {R"([{"role": "heading", "sameInVariants": "walks-trio"}])", "/wishes/roles/0/sameInVariants"},
        {R"([{"role": "heading", "line": 2}])", "/wishes/roles/0/line"}};
    for (const auto& [roles, place] : wrong) {
        const Problems problems =
            problemsOf(smallProjectWith("/wishes", Json::parse(R"({"roles": )" + roles + "}")));
        ASSERT_EQ(problems.size(), 1U) << roles << "\n" << linesOf(problems);
        EXPECT_EQ(problems[0].place, place);
        EXPECT_TRUE(saysHowToFix(problems[0])) << problems[0].line();
    }
    EXPECT_EQ(problemsOf(smallProjectWith("/wishes", Json::parse(R"({"reserve": 0.6})")))[0].place,
              "/wishes/reserve");
    EXPECT_EQ(problemsOf(smallProjectWith("/wishes", Json::parse(R"({"grid": "5%"})")))[0].place,
              "/wishes/grid");
    EXPECT_EQ(problemsOf(smallProjectWith("/wishes", Json::parse(R"({"without": [1.5]})")))[0].place,
              "/wishes/without/0");
}

}  // namespace
}  // namespace tenter::project
