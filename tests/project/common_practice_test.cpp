// The usual numbers of the trade. Common practice, no source: they are checked here and used nowhere else.
#include <array>

#include "given.h"
#include "project/cascade.h"

namespace tenter::project {
namespace {

using units::FluidSize;
using units::LengthBasis;
using units::Unit;

struct CommonPractice : testing::Test {
    Project project = sound(contentOf(testFile("common_practice.tenter.json")));
    Settings stacked = resolve(project, project.row().variants[0], 0);
    Settings wide = resolve(project, project.row().variants[0], 1);

    [[nodiscard]] static double sizeAt(const Settings& settings, const std::string& role, double width) {
        const FluidSize size = FluidSize::from(*settings.text.find(role)->size, 16, Unit::Rem, Unit::Vw);
        return size.resolve({16, 16, 0, width, 0});
    }
};

// Common practice, no source: padding of 0.5em and 1em is 7 and 14 px at 14 px, 10 and 20 px at 20 px.
TEST_F(CommonPractice, button_padding_follows_the_type) {
    const Sides padding = wide.text.find("button")->padding;
    for (const auto& [width, block, inlineSide] :
         {std::array{981.0, 7.0, 14.0}, std::array{1920.0, 10.0, 20.0}}) {
        const LengthBasis basis{sizeAt(wide, "button", width), 16, 0, width, 0};
        EXPECT_NEAR(padding.top->resolve(basis), block, 0.01);
        EXPECT_NEAR(padding.bottom->resolve(basis), block, 0.01);
        EXPECT_NEAR(padding.left->resolve(basis), inlineSide, 0.01);
        EXPECT_NEAR(padding.right->resolve(basis), inlineSide, 0.01);
    }
}

// Common practice, no source: 14 to 20 px over 981 to 1920, and again over 320 to 980.
TEST_F(CommonPractice, heading_runs_from_14_to_20_pixels_twice) {
    EXPECT_NEAR(sizeAt(stacked, "heading", 320), 14, 0.01);
    EXPECT_NEAR(sizeAt(stacked, "heading", 980), 20, 0.01);
    EXPECT_NEAR(sizeAt(wide, "heading", 981), 14, 0.01);
    EXPECT_NEAR(sizeAt(wide, "heading", 1920), 20, 0.01);
}

// Common practice, no source: 80 % of 980 px is a 784 px slot, where columns stack.
TEST_F(CommonPractice, stacked_slot_is_784_pixels) {
    EXPECT_EQ(bandAt(project.row().variants[0], 980), 0U);
    EXPECT_EQ(bandAt(project.row().variants[0], 981), 1U);
    EXPECT_EQ(stacked.row.columns, 1);
    EXPECT_EQ(stacked.row.width->resolve({16, 16, 980, 980, 0}), 784);
}

// Common practice, no source: 2em above the heading, 5 % at the sides, 1em below the button.
TEST_F(CommonPractice, margins_are_in_ems_and_percentages) {
    const LengthBasis basis{20, 16, 784, 980, 0};
    EXPECT_EQ(stacked.text.find("heading")->margin.top->resolve(basis), 40);
    EXPECT_NEAR(stacked.text.find("heading")->margin.left->resolve(basis), 39.2, 1e-9);
    EXPECT_EQ(stacked.text.find("button")->margin.bottom->resolve(basis), 20);
    EXPECT_TRUE(stacked.text.find("button")->margin.top->isAuto());
}

}  // namespace
}  // namespace tenter::project
