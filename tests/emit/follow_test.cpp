#include "emit/follow.h"

#include <gtest/gtest.h>

#include <cmath>

#include "project/cascade.h"
#include "sample.h"

namespace tenter::emit {
namespace {

using project::Follow;

class FollowTest : public ::testing::Test {
protected:
    project::Project follow(const project::Project& project, Follow target) {
        return following(project, target, {0, 1}, store_, text::blink(), problems_);
    }
    double size(const project::Project& project, std::size_t variant, double width) {
        const layout::PreparedRow row(project, variant, store_, text::blink());
        return row.fontSize(0, width);
    }

    text::Fonts fonts_;
    text::ParagraphStore store_{fonts_};
    project::Problems problems_;
};

// CSS Values 4 § 6.1.4 and CSS Containment 3 § 7: vw and cqi are hundredths of two widths; where one is a
// straight line of the other, so is the size. Emitted numbers have four decimals.
TEST_F(FollowTest, KeepsSizesWhereTheCardIsAStraightLineOfThePage) {
    const project::Project before = tests::walks();
    const project::Project after = follow(before, Follow::Card);
    EXPECT_TRUE(problems_.empty());
    for (const std::size_t variant : {0U, 1U}) {
        const project::Settings settings = project::resolve(after, after.row().variants[variant], 0);
        EXPECT_EQ(settings.text.find("heading")->follow, Follow::Card);
        for (const double width : {320.0, 400.0, 520.0, 640.0, 641.0, 900.0, 980.5, 1000.0, 1500.0, 1920.0})
            EXPECT_NEAR(size(after, variant, width), size(before, variant, width), 0.02) << width;
    }
}

TEST_F(FollowTest, ComesBackToTheSameSizes) {
    const project::Project before = tests::walks();
    const project::Project back = follow(follow(before, Follow::Card), Follow::Viewport);
    EXPECT_TRUE(problems_.empty());
    for (const double width : {320.0, 500.0, 640.0, 700.0, 1300.0, 1920.0})
        EXPECT_NEAR(size(back, 0, width), size(before, 0, width), 0.02) << width;
}

TEST_F(FollowTest, ReportsSizesThatGrowWhereTheCardDoesNot) {
    project::Project project = tests::walks();
    project.row().style.row.maxWidth = units::Length::px(900);
    follow(project, Follow::Card);
    ASSERT_FALSE(problems_.empty());
    EXPECT_NE(problems_.front().what.find("the size changes by up to "), std::string::npos);
}

// The card stops at 900 px of row; where its ramp ends there too, the page's ramp ends where the row stops
// growing.
TEST_F(FollowTest, EndsAViewportRampWhereTheCardStopsGrowing) {
    project::Project project = tests::walks();
    project.row().style.row.maxWidth = units::Length::px(900);
    project.row().style.text.of("heading").follow = Follow::Card;
    project.row().style.text.of("heading").size = units::Ramp::between({100, 15}, {600, 30}).value();
    const project::Project after = follow(project, Follow::Viewport);
    EXPECT_TRUE(problems_.empty());
    for (const double width : {320.0, 640.0, 650.0, 899.0, 901.0, 1200.0, 1920.0})
        EXPECT_NEAR(size(after, 0, width), size(project, 0, width), 0.02) << width;
}

// CSS Grid 2 § 7.2 (subgrid): a container is no subgrid.
TEST_F(FollowTest, KeepsSizesWherePartsAreAligned) {
    project::Project project = tests::walks();
    project.row().variants[1].bands[1].set.row.level = project::Level::Subgrid;
    const project::Project after = follow(project, Follow::Card);
    EXPECT_EQ(project::resolve(after, after.row().variants[1], 0).text.find("heading")->follow, Follow::Card);
    EXPECT_EQ(project::resolve(after, after.row().variants[1], 1).text.find("heading")->follow,
              Follow::Viewport);
    ASSERT_EQ(problems_.size(), 3U);  // heading, body and button
    EXPECT_NE(problems_.front().line().find("up to 980.5\u00A0px"), std::string::npos)
        << problems_.front().line();
}

TEST_F(FollowTest, KeepsASizeThatGrowsWhereTheCardDoesNot) {
    project::Project project = tests::walks();
    project.row().style.row.width = units::Length::px(300);
    const project::Project after = follow(project, Follow::Card);
    EXPECT_FALSE(problems_.empty());
    EXPECT_NEAR(size(after, 0, 1000), size(project, 0, 1000), 1e-9);
}

}  // namespace
}  // namespace tenter::emit
