#include "solve/notation.h"

#include "solving.h"

namespace tenter::test {
namespace {

const project::Project& walks() {
    static const project::Project project = samples().at("shore-walks.tenter.json");
    return project;
}

project::Wishes wishesOf(const std::vector<std::string>& wishes) {
    project::Project none = walks();
    none.row().wishes.reset();
    return *wishing(none, wishes).row().wishes;
}

TEST(WishNotation, covers_every_wish) {
    const auto of = [](const std::string& wish) { return wishesOf({wish}).roles.at(0); };
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
    EXPECT_EQ(wishesOf({"reserve=20%"}).reserve, 0.2);
    EXPECT_EQ(wishesOf({"slack=0.02"}).slack, 0.02);
    EXPECT_EQ(wishesOf({"narrow-slack=3%"}).narrowSlack, 0.03);
    EXPECT_EQ(wishesOf({"grid=0.5px"}).grid, units::Length::px(0.5));
    EXPECT_EQ(wishesOf({"grid=0.0625rem"}).grid, units::Length::rem(0.0625));
    EXPECT_EQ(wishesOf({"aim=calmest"}).aim, project::Aim::Calmest);
    EXPECT_EQ(wishesOf({"without=1,3"}).without, (std::vector<int>{0, 2}));
}

TEST(WishNotation, refuses_invalid_wishes_and_says_how_to_fix_them) {
    const std::vector<std::pair<std::string, std::string>> wrong{
        {"heading", "This is not a wish."},
        {"heading.lines", "This is not a wish."},
        {"headin.lines=2", "Did you mean \"heading\"?"},
        {"heading.line=2", "There is no wish named \"line\"."},
        {"heading.lines=two", "is not a number."},
        {"heading.lines=0", ": \"lines\" must be a whole number from 1 to 50; it is 0."},
        {"heading.lines=1.5", "must be a whole number from 1 to 50; it is 1.5."},
        {"body.measure=35", "is not a range."},
        {"body.measure=75-35", "The smallest measure is above the largest."},
        {"body.size=0-", "must be a number from 1 to 400; it is 0."},
        {"heading.ratio=1.25", "is not a ratio."},
        {"heading.ratio=boddy*1.25", "Did you mean \"body\"?"},
        {"heading.ratio=heading*1.25", "to no other role"},
        {"heading.lines=2@980", "is not a range."},
        {"heading.lines=2@980-600", "\"from\" must be smaller than \"upTo\"."},
        {"heading.column=perhaps", "Write with or free."},
        {"heading.variants=walks-pair", "Write same or free."},
        {"reserve=much", "is not a share."},
        {"reserve=80%", "must be a number from 0 to 0.5; it is 0.8."},
        {"grid=1em", "must be a length in px or rem"},
        {"aim=big", "nearest"},
        {"without=0", "is not a card."},
        {"without=99", "is not a card."},
        {"size=15-", "There is no wish named \"size\"."}};
    for (const auto& [wish, told] : wrong) {
        project::Wishes wishes;
        project::Problems problems;
        EXPECT_FALSE(solve::addWish(wish, walks(), wishes, problems)) << wish;
        ASSERT_EQ(problems.size(), 1U) << wish;
        EXPECT_NE(problems[0].line().find(told), std::string::npos) << problems[0].line();
        EXPECT_TRUE(problems[0].line().starts_with(wish + ": ")) << problems[0].line();
        // What is wrong names the allowed values, or there is advice.
        EXPECT_TRUE(!problems[0].fix.empty() || problems[0].what.find(" must be ") != std::string::npos)
            << problems[0].line();
        EXPECT_EQ(wishes, project::Wishes()) << wish;
    }
}

}  // namespace
}  // namespace tenter::test
