#include "units/ramp.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <limits>
#include <random>

namespace tenter::units {
namespace {

Ramp ramp(RampPoint from, RampPoint to) {
    return Ramp::between(from, to).value();
}

LengthBasis pageOf(double width, double root = 16) {
    return {root, root, 0, width, 0};
}

TEST(Ramp, is_a_line_between_its_points_and_flat_outside_them) {
    const Ramp line = ramp({400, 15}, {1400, 20});
    EXPECT_EQ(line.sizeAt(300), 15);
    EXPECT_EQ(line.sizeAt(400), 15);
    EXPECT_EQ(line.sizeAt(900), 17.5);
    EXPECT_EQ(line.sizeAt(1400), 20);
    EXPECT_EQ(line.sizeAt(5000), 20);
}

TEST(Ramp, puts_its_points_in_order) {
    EXPECT_EQ(ramp({1400, 20}, {400, 15}), ramp({400, 15}, {1400, 20}));
    EXPECT_EQ(ramp({700, 15}, {700, 15}), Ramp::flat(15));
}

TEST(Ramp, refuses_points_that_define_no_line) {
    constexpr double nan = std::numeric_limits<double>::quiet_NaN();
    constexpr double infinity = std::numeric_limits<double>::infinity();
    EXPECT_FALSE(Ramp::between({700, 15}, {700, 16}));
    EXPECT_FALSE(Ramp::between({700, 15}, {700.001, 16}));
    EXPECT_FALSE(Ramp::between({700, 0}, {900, 16}));
    EXPECT_FALSE(Ramp::between({700, -3}, {900, 16}));
    EXPECT_FALSE(Ramp::between({-1, 15}, {900, 16}));
    EXPECT_FALSE(Ramp::between({nan, 15}, {900, 16}));
    EXPECT_FALSE(Ramp::between({700, nan}, {900, 16}));
    EXPECT_FALSE(Ramp::between({700, 15}, {infinity, 16}));
    EXPECT_FALSE(Ramp::between({700, 15}, {900, infinity}));
}

// Published: P. Rodriguez, "Linearly Scale font-size with CSS clamp()", CSS-Tricks, 2020: 1rem at 360 px
// and 3.5rem at 840 px give -0.875rem + 8.333vw, published to three decimals.
TEST(FluidSize, gives_the_published_worked_size) {
    const FluidSize size = FluidSize::from(ramp({360, 16}, {840, 56}), 16, Unit::Rem, Unit::Vw);
    EXPECT_EQ(size.css(), "clamp(1rem, -0.875rem + 8.3333vw, 3.5rem)");
    EXPECT_EQ(size.base().value(), -0.875);
    EXPECT_NEAR(size.slope().value(), 8.333, 0.0005);
    EXPECT_NEAR(size.resolve(pageOf(360)), 16, 0.01);
    EXPECT_NEAR(size.resolve(pageOf(840)), 56, 0.01);
    EXPECT_EQ(size.resolve(pageOf(100)), 16);
    EXPECT_EQ(size.resolve(pageOf(3000)), 56);
}

TEST(FluidSize, prints_px_if_asked_and_rem_by_the_theme) {
    const Ramp line = ramp({400, 15}, {1400, 20});
    EXPECT_EQ(FluidSize::from(line, 16, Unit::Px, Unit::Vw).css(), "clamp(15px, 13px + 0.5vw, 20px)");
    EXPECT_EQ(FluidSize::from(line, 10, Unit::Rem, Unit::Vw).css(), "clamp(1.5rem, 1.3rem + 0.5vw, 2rem)");
    EXPECT_EQ(FluidSize::from(line, 10, Unit::Rem, Unit::Cqi).css(), "clamp(1.5rem, 1.3rem + 0.5cqi, 2rem)");
}

TEST(FluidSize, is_a_plain_length_if_flat) {
    EXPECT_EQ(FluidSize::from(Ramp::flat(18), 16, Unit::Rem, Unit::Vw).css(), "1.125rem");
    EXPECT_EQ(FluidSize::from(ramp({400, 18}, {900, 18}), 16, Unit::Px, Unit::Vw).css(), "18px");
    EXPECT_EQ(FluidSize::from(Ramp::flat(18), 16, Unit::Rem, Unit::Vw).resolve(pageOf(777)), 18);
}

// CSS Values 4 § 10.1: in a calculation a bare 0 is a number, which cannot be added to a length.
TEST(FluidSize, omits_a_zero_term) {
    EXPECT_EQ(FluidSize::from(ramp({400, 8}, {1000, 20}), 16, Unit::Px, Unit::Vw).css(),
              "clamp(8px, 2vw, 20px)");
}

TEST(FluidSize, may_fall_as_the_width_grows) {
    const FluidSize size = FluidSize::from(ramp({400, 20}, {900, 15}), 16, Unit::Px, Unit::Vw);
    EXPECT_EQ(size.css(), "clamp(15px, 24px - 1vw, 20px)");
    EXPECT_EQ(size.resolve(pageOf(650)), 17.5);
    EXPECT_EQ(size.resolve(pageOf(1000)), 15);
}

// Measured in Firefox 153: at 800 px the term -0.2375vw is 1/60 px shorter than 1.9 px, because -0.2375 is a
// float.
TEST(FluidSize, is_truncated_as_the_engine_does) {
    const FluidSize size = FluidSize::from(ramp({561, 18.759}, {1688, 16.082}), 16, Unit::Rem, Unit::Vw);
    EXPECT_NEAR(size.resolve(pageOf(800)), 18.1912, 1e-4);
    EXPECT_NEAR(size.resolveTruncated(pageOf(800), 1.0 / 60), 18.2079, 1e-4);
}

// CSS Values 4 § 10.2: clamp(a, b, c) = max(a, min(b, c)).
TEST(FluidSize, is_clamped_as_css_clamps) {
    std::mt19937 random(3);
    std::uniform_real_distribution<double> sizes(1, 400);
    std::uniform_real_distribution<double> widths(0, 10000);
    for (int i = 0; i < 2000; ++i) {
        const auto line = Ramp::between({widths(random), sizes(random)}, {widths(random), sizes(random)});
        if (!line) continue;
        const FluidSize size = FluidSize::from(*line, 16, Unit::Rem, Unit::Vw);
        const LengthBasis basis = pageOf(widths(random));
        const double a = size.minimum().resolve(basis);
        const double b = size.base().resolve(basis) + size.slope().resolve(basis);
        const double c = size.maximum().resolve(basis);
        ASSERT_LE(a, c);
        ASSERT_EQ(size.resolve(basis), std::max(a, std::min(b, c)));
    }
}

// The promise: rounding to the numbers of the stylesheet changes no size by more than 0.01 px at any width in
// range.
TEST(FluidSize, is_within_a_hundredth_of_a_pixel_of_the_ramp) {
    std::mt19937 random(29);
    std::uniform_real_distribution<double> sizes(8, 120);
    std::uniform_real_distribution<double> widths(200, 5000);
    std::uniform_real_distribution<double> roots(8, 100);
    for (int i = 0; i < 3000; ++i) {
        const auto line = Ramp::between({widths(random), sizes(random)}, {widths(random), sizes(random)});
        if (!line) continue;
        const double root = i % 3 == 0 ? roots(random) : (i % 3 == 1 ? 16 : 10);
        const FluidSize size = FluidSize::from(*line, root, i % 2 == 0 ? Unit::Rem : Unit::Px, Unit::Vw);
        for (int n = 0; n < 20; ++n) {
            const double width = widths(random);
            ASSERT_NEAR(size.resolve(pageOf(width, root)), line->sizeAt(width), 0.01)
                << size.css() << " at " << width << ", root " << root;
        }
    }
}

// CSS Containment 3 § 7: 1cqi is a hundredth of the container's content width.
TEST(FluidSize, follows_the_card_if_asked) {
    const FluidSize size = FluidSize::from(ramp({200, 15}, {600, 21}), 16, Unit::Rem, Unit::Cqi);
    EXPECT_NEAR(size.resolve({16, 16, 0, 3000, 400}), 18, 0.01);
}

}  // namespace
}  // namespace tenter::units
