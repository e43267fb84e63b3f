#include "units/root_size.h"

#include <gtest/gtest.h>

#include <cmath>

namespace tenter::units {
namespace {

RootSize parsed(const std::string& text) {
    const auto size = RootSize::parse(text);
    EXPECT_TRUE(size.has_value()) << text;
    return size.value_or(RootSize());
}

// CSS Fonts 4 § 2.5: a percentage on the root refers to the initial font size, the reader's.
TEST(RootSize, follows_the_readers_text_size_if_it_is_a_number_or_a_percentage) {
    EXPECT_EQ(RootSize(10).resolve(24, 1000.0), 15);
    EXPECT_EQ(parsed("62.5%").resolve(16, 1000.0), 10);
    EXPECT_EQ(parsed("62.5%").resolve(24, 1000.0), 15);
    EXPECT_EQ(parsed("10px").resolve(24, 1000.0), 10);
    EXPECT_EQ(parsed("calc(10px + 1vw)").resolve(24, 1000.0), 20);
}

// CSS Values 4 § 10.2: clamp(a, b, c) is max(a, min(b, c)); § 10.1: a font size is not negative.
TEST(RootSize, is_limited) {
    const RootSize both = parsed("clamp(15px, 14px + 0.5vw, 18px)");
    EXPECT_EQ(both.resolve(16, 100.0), 15);
    EXPECT_EQ(both.resolve(16, 600.0), 17);
    EXPECT_EQ(both.resolve(16, 1600.0), 18);
    EXPECT_EQ(parsed("max(15px, 0.5vw)").resolve(16, 4000.0), 20);
    EXPECT_EQ(parsed("min(0.5vw, 15px)").resolve(16, 4000.0), 15);
    EXPECT_EQ(parsed("calc(10px - 2vw)").resolve(16, 1000.0), 0);
}

TEST(RootSize, is_linear_up_to_its_limits) {
    const RootSize both = parsed("clamp(15px, 14px + 0.5vw, 18px)");
    double from = 0;
    for (const double end : {200.0, 800.0}) {
        const Linear size = both.resolve(16, Linear(from, 1));
        EXPECT_NEAR(from + size.until, end, 1e-9);
        EXPECT_NEAR(size.at(size.until / 2), both.resolve(16, from + size.until / 2), 1e-9);
        from = end;
    }
    EXPECT_TRUE(std::isinf(both.resolve(16, Linear(from, 1)).until));
}

TEST(RootSize, reads_what_it_prints) {
    for (const char* text : {"62.5%", "16px", "calc(14px + 0.3vw)", "calc(20px - 0.3vw)", "calc(0px + 1vw)",
                             "min(14px + 0.3vw, 18px)", "max(15px, 14px + 0.3vw)",
                             "clamp(15px, 14px + 0.3vw, 18px)", "clamp(15px, 14px, 18px)"}) {
        EXPECT_EQ(parsed(text).css(), text);
        EXPECT_EQ(parsed(parsed(text).css()), parsed(text));
    }
    EXPECT_EQ(parsed(" 1vw ").css(), "calc(0px + 1vw)");
    EXPECT_EQ(parsed("calc(0.3vw + 14px)").css(), "calc(14px + 0.3vw)");
}

TEST(RootSize, does_not_read_other_text) {
    for (const char* text :
         {"", "14", "1rem", "2em", "auto", "calc()", "calc(14px + 1rem)", "calc(14px+0.3vw)", "calc(14px",
          "clamp(15px, 14px)", "clamp(1vw, 14px, 18px)", "clamp(15px, 14px, 18px, 19px)", "min(14px)",
          "max(14px, 15%)", "14px + 10%", "none",
          "calc(14px + 0.3vw) "
          "x"})
        EXPECT_FALSE(RootSize::parse(text).has_value()) << text;
}

TEST(RootSize, prints_for_the_readers_text_size) {
    EXPECT_EQ(RootSize(10).cssFor(24), "15px");
    EXPECT_EQ(parsed("125%").cssFor(16), "20px");
    EXPECT_EQ(parsed("10px").cssFor(24), "10px");
    EXPECT_EQ(parsed("clamp(15px, 14px + 0.3vw, 18px)").cssFor(24), "clamp(15px, 14px + 0.3vw, 18px)");
}

}  // namespace
}  // namespace tenter::units
