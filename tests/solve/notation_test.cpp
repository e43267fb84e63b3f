#include "solve/notation.h"

#include "solving.h"

namespace tenter::test {
namespace {

const project::Project& walks() {
    static const project::Project project = samples().at("shore-walks.tenter.json");
    return project;
}

project::Wishes saidBy(const std::vector<std::string>& wishes) {
    project::Project none = walks();
    none.wishes.reset();
    return *wishing(none, wishes).wishes;
}

TEST(WishNotation, says_every_wish_there_is) {
    const auto of = [](const std::string& wish) { return saidBy({wish}).roles.at(0); };
    EXPECT_EQ(of("heading.lines=2").lines, 2);
    EXPECT_EQ(of("body.measure=35-75").leastMeasure, 35);
    EXPECT_EQ(of("body.measure=35-75").mostMeasure, 75);
    EXPECT_EQ(of("body.measure=-75").leastMeasure, std::nullopt);
    EXPECT_EQ(of("body.size=15.5-").leastSize, 15.5);
    EXPECT_EQ(of("body.size=-20").mostSize, 20);
    EXPECT_EQ(of("button.size=locked").locked, true);
    EXPECT_EQ(of("heading.ratio=body*1.25").ratio, 1.25);
    EXPECT_EQ(of("heading.ratio=body*1.25").ratioTo, "body");
    EXPECT_EQ(of("heading.ratio=body*1.25-").leastRatio, 1.25);
    EXPECT_EQ(of("heading.growth=0.8").growth, 0.8);
    EXPECT_EQ(of("heading.column=free").withColumn, false);
    EXPECT_EQ(of("heading.zoom=300%").zoom, 3);
    EXPECT_EQ(of("body.breakpoints=same").breakpoints, project::AtBreakpoints::Same);
    EXPECT_EQ(of("heading.variants=same").sameInVariants, true);
    EXPECT_EQ(of("heading.variants=free@-600").sameInVariants, false);
    EXPECT_EQ(of("heading.lines=3@-600").upTo, 600);
    EXPECT_EQ(of("heading.lines=3@-600").from, std::nullopt);
    EXPECT_EQ(of("heading.lines=3@980.5-1400").from, 980.5);
    EXPECT_EQ(saidBy({"reserve=20%"}).reserve, 0.2);
    EXPECT_EQ(saidBy({"slack=0.02"}).slack, 0.02);
    EXPECT_EQ(saidBy({"narrow-slack=3%"}).narrowSlack, 0.03);
    EXPECT_EQ(saidBy({"grid=0.5px"}).grid, units::Length::px(0.5));
    EXPECT_EQ(saidBy({"grid=0.0625rem"}).grid, units::Length::rem(0.0625));
    EXPECT_EQ(saidBy({"aim=calmest"}).aim, project::Aim::Calmest);
    EXPECT_EQ(saidBy({"without=1,3"}).without, (std::vector<int>{0, 2}));
}

TEST(WishNotation, refuses_what_is_no_wish_with_its_mend) {
    const std::vector<std::pair<std::string, std::string>> wrong{
        {"heading", "this is no wish"},
        {"heading.lines", "this is no wish"},
        {"headin.lines=2", "did you mean \"heading\"?"},
        {"heading.line=2", "there is no wish \"line\""},
        {"heading.lines=two", "is no number"},
        {"heading.lines=0", ": 0 is out of range"},
        {"heading.lines=1.5", "not a whole number"},
        {"body.measure=35", "is no range"},
        {"body.measure=75-35", "above the most"},
        {"body.size=0-", "out of range"},
        {"heading.ratio=1.25", "is no ratio"},
        {"heading.ratio=boddy*1.25", "did you mean \"body\"?"},
        {"heading.ratio=heading*1.25", "to no other role"},
        {"heading.lines=2@980", "is no range"},
        {"heading.lines=2@980-600", "end before they start"},
        {"heading.column=perhaps", "write with or free"},
        {"heading.variants=walks-pair", "write same or free"},
        {"reserve=much", "is no share"},
        {"reserve=80%", "out of range"},
        {"grid=1em", "cannot be used here"},
        {"aim=big", "nearest"},
        {"without=0", "is none of the cards"},
        {"without=99", "is none of the cards"},
        {"size=15-", "there is no wish \"size\""}};
    for (const auto& [wish, told] : wrong) {
        project::Wishes wishes;
        project::Problems problems;
        EXPECT_FALSE(solve::addWish(wish, walks(), wishes, problems)) << wish;
        ASSERT_EQ(problems.size(), 1U) << wish;
        EXPECT_NE(problems[0].line().find(told), std::string::npos) << problems[0].line();
        EXPECT_TRUE(problems[0].line().starts_with(wish + ": ")) << problems[0].line();
        EXPECT_FALSE(problems[0].mend.empty()) << wish;
        EXPECT_EQ(wishes, project::Wishes()) << wish;
    }
}

}  // namespace
}  // namespace tenter::test
