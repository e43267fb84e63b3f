// The source of these is Media Queries 4; the clause stands beside each. tests/engines compares with a
// browser.
#include "css/media.h"

#include <gtest/gtest.h>

namespace tenter::css {
namespace {

void holdsFrom(std::string_view query, double from, double below) {
    EXPECT_EQ(mediaHolds(query, from), Truth::True) << query;
    EXPECT_EQ(mediaHolds(query, below), Truth::False) << query;
}

// § 4.1, § 2.4.3, § 1.3.
TEST(CssMedia, HoldsByTheWidth) {
    holdsFrom("(max-width: 940px)", 940, 940.5);
    holdsFrom("(min-width: 58.75em)", 940, 939.9);
    holdsFrom("(MIN-WIDTH:20rem)", 320, 319);
    holdsFrom("(width > 940px)", 940.1, 940);
    holdsFrom("(width>=940px)", 940, 939);
    holdsFrom("(940px < width)", 941, 940);
    holdsFrom("(400px <= width < 700px)", 400, 700);
    holdsFrom("(700px > width >= 400px)", 400, 700);
    holdsFrom("(width = 500px)", 500, 501);
    holdsFrom("(width: 500px)", 500, 501);
    holdsFrom("(width)", 1, 0);
    holdsFrom("(min-width: calc(20em + 10px))", 330, 329);
    holdsFrom("(min-width: 0)", 0, -1);
}

// § 3.
TEST(CssMedia, CombinesAsTheStandardDoes) {
    holdsFrom("screen and (min-width: 400px) and (max-width: 700px)", 500, 701);
    holdsFrom("only screen and (min-width: 400px)", 400, 399);
    holdsFrom("not screen and (min-width: 400px)", 399, 400);
    holdsFrom("not (min-width: 400px)", 399, 400);
    holdsFrom("print, (min-width: 400px)", 400, 399);
    holdsFrom("((min-width: 400px) and (max-width: 500px)) or (min-width: 900px)", 950, 600);
    holdsFrom("(not (width < 300px)) and (width < 600px)", 300, 600);
    holdsFrom(" /* all */ (min-width: 1px)", 1, 0.5);
    EXPECT_EQ(mediaHolds("", 500), Truth::True);
    EXPECT_EQ(mediaHolds("all", 500), Truth::True);
    EXPECT_EQ(mediaHolds("print", 500), Truth::False);
    EXPECT_EQ(mediaHolds("not print", 500), Truth::True);
}

// § 3.1: three values.
TEST(CssMedia, SaysWhatTheWidthDoesNotDecide) {
    EXPECT_EQ(mediaHolds("(hover: hover)", 500), Truth::Unknown);
    EXPECT_EQ(mediaHolds("(hover) and (min-width: 600px)", 500), Truth::False);
    EXPECT_EQ(mediaHolds("(hover) or (min-width: 400px)", 500), Truth::True);
    EXPECT_EQ(mediaHolds("not (orientation: landscape)", 500), Truth::Unknown);
    EXPECT_EQ(mediaHolds("(min-width: 30vh)", 500), Truth::Unknown);
    EXPECT_EQ(mediaHolds("(400px < width > 300px)", 500), Truth::Unknown);
    EXPECT_EQ(mediaHolds("f(x)", 500), Truth::Unknown);
}

// § 3.2: what is no query is `not all`, and the others of its list stand.
TEST(CssMedia, HoldsNowhereIfItIsNoQuery) {
    for (const char* wrong : {"and", "screen (min-width: 1px)", "(min-width: 1px) and (width) or (width)",
                              "1px", "&", "screen and (width) or (width)", "not", "(width) (width)", ","})
        EXPECT_EQ(mediaHolds(wrong, 500), Truth::False) << wrong;
    EXPECT_EQ(mediaHolds("&, (min-width: 400px)", 500), Truth::True);
}

TEST(CssMedia, AcceptsAnyInput) {
    for (const char* piece : {"(", "not (", "(not ", "a,", "(width)and", "(a:"}) {
        std::string text;
        while (text.size() < 90'000)
            text += piece;
        EXPECT_NE(mediaHolds(text, 500), Truth::True) << piece;
    }
    EXPECT_EQ(mediaHolds(std::string(5'000'000, '('), 500), Truth::Unknown);
}

}  // namespace
}  // namespace tenter::css
