// Where a stylesheet changes by the width. The source is Media Queries 4, whose clauses stand beside the
// cases.
#include "css/breakpoints.h"

#include <gtest/gtest.h>

#include "css/media.h"

namespace tenter::css {
namespace {

using Widths = std::vector<double>;

// § 2.4.3 and § 4.1; em is of the initial 16 px, § 1.3.
TEST(CssBreakpoints, AreWhereAConditionChanges) {
    EXPECT_EQ(mediaWidths("(max-width: 940px)"), Widths{940});
    EXPECT_EQ(mediaWidths("(min-width: 40em)"), Widths{640});
    EXPECT_EQ(mediaWidths("(400px <= width < 700px)"), (Widths{400, 700}));
    EXPECT_EQ(mediaWidths("screen and (min-width: 30rem) and (max-width: calc(50em + 0.5px))"),
              (Widths{480, 800.5}));
    EXPECT_EQ(mediaWidths("(width: 500px)"), Widths{500});
    EXPECT_EQ(mediaWidths("print, (min-width: 900px)"), Widths{900});
}

TEST(CssBreakpoints, AreEmptyForConditionsWithoutWidths) {
    EXPECT_EQ(mediaWidths("(hover: hover)"), Widths{});
    EXPECT_EQ(mediaWidths("print and (min-width: 900px)"), Widths{});
    EXPECT_EQ(mediaWidths("(min-width: 900px) or (max-width: 950px)"), Widths{});
    EXPECT_EQ(mediaWidths("(min-width: )("), Widths{});
    EXPECT_EQ(mediaWidths(""), Widths{});
}

TEST(CssBreakpoints, OfASheetAreThoseOfItsMediaRulesOnce) {
    const Sheet sheet = readSheet(
        ".a { color: red }"
        "@media (min-width: 720px) { .a { color: blue } @media (max-width: 1200px) { .b { top: 0 } } }"
        "@media (max-width: 720px) { .c { top: 0 } }"
        "@media (prefers-reduced-motion: reduce) { .d { top: 0 } }"
        "@container (min-width: 300px) { .e { top: 0 } }");
    const std::vector<Breakpoint> found = breakpointsOf(sheet);
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(found[0].width, 720);
    EXPECT_EQ(found[0].condition, "(min-width: 720px)");
    EXPECT_EQ(found[1].width, 1200);
}

}  // namespace
}  // namespace tenter::css
