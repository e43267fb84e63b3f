#include "units/colour.h"

#include <gtest/gtest.h>

#include <random>

namespace tenter::units {
namespace {

// CSS Color 4 § 5.2: three and four digits are doubled.
TEST(Colour, reads_hexadecimal_notation) {
    EXPECT_EQ(Colour::parse("#123"), (Colour{0x11, 0x22, 0x33, 255}));
    EXPECT_EQ(Colour::parse("#1238"), (Colour{0x11, 0x22, 0x33, 0x88}));
    EXPECT_EQ(Colour::parse("#0aF56b"), (Colour{0x0a, 0xf5, 0x6b, 255}));
    EXPECT_EQ(Colour::parse("#0af56b80"), (Colour{0x0a, 0xf5, 0x6b, 0x80}));
}

// CSS Color 4 § 6.3: `transparent` is transparent black.
TEST(Colour, reads_transparent) {
    EXPECT_EQ(Colour::parse("transparent"), (Colour{0, 0, 0, 0}));
    EXPECT_EQ(Colour::parse("#ff000000"), Colour::parse("transparent"));
    EXPECT_EQ(Colour::parse("transparent")->css(), "transparent");
}

TEST(Colour, refuses_everything_else) {
    for (const char* text : {"", "#", "#1", "#12", "#12345", "#1234567", "#123456789", "123", "#12g", "#-12",
                             "#+12", "# 12", "red", "rgb(0 0 0)", "#12\xff"}) {
        EXPECT_EQ(Colour::parse(text), std::nullopt) << text;
    }
}

TEST(Colour, prints_the_shortest_form) {
    EXPECT_EQ(Colour::parse("#FFFFFF")->css(), "#fff");
    EXPECT_EQ(Colour::parse("#11223344")->css(), "#1234");
    EXPECT_EQ(Colour::parse("#112234")->css(), "#112234");
    EXPECT_EQ(Colour::parse("#11223345")->css(), "#11223345");
}

TEST(Colour, reads_back_what_it_prints) {
    std::mt19937 random(11);
    std::uniform_int_distribution<int> channels(0, 255);
    const auto channel = [&] { return static_cast<std::uint8_t>(channels(random)); };
    for (int i = 0; i < 5000; ++i) {
        const Colour colour{channel(), channel(), channel(), static_cast<std::uint8_t>(channel() | 1U)};
        ASSERT_EQ(Colour::parse(colour.css()), colour) << colour.css();
    }
}

}  // namespace
}  // namespace tenter::units
