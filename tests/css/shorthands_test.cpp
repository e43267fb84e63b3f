// The source of these is the module that defines each shorthand; it stands beside each.
#include "css/shorthands.h"

#include <gtest/gtest.h>

namespace tenter::css {
namespace {

std::string expanded(std::string_view property, std::string_view value) {
    std::string text;
    for (const Longhand& each : longhandsOf(property, value))
        text += (text.empty() ? "" : "; ") + each.property + ": " + each.value.value_or("?");
    return text;
}

// CSS Box 4 § 3.2 and § 4.2.
TEST(CssShorthands, GiveEachSideItsValue) {
    EXPECT_EQ(expanded("MARGIN", "1px"),
              "margin-top: 1px; margin-right: 1px; margin-bottom: 1px; margin-left: 1px");
    EXPECT_EQ(expanded("padding", "1px 2%"),
              "padding-top: 1px; padding-right: 2%; padding-bottom: 1px; padding-left: 2%");
    EXPECT_EQ(expanded("inset", "0 auto 2em"), "top: 0; right: auto; bottom: 2em; left: auto");
    EXPECT_EQ(
        expanded("margin", "calc(1px + 2vw) 2px  max(1em, 3px) 4px"),
        "margin-top: calc(1px + 2vw); margin-right: 2px; margin-bottom: max(1em, 3px); margin-left: 4px");
    EXPECT_EQ(expanded("border-width", "thin 2px").substr(0, 47),
              "border-top-width: thin; border-right-width: 2px");
}

// CSS Align 3 § 8.4, CSS Overflow 3 § 3.1.
TEST(CssShorthands, GiveEachAxisItsValue) {
    EXPECT_EQ(expanded("gap", "1em 2em"), "row-gap: 1em; column-gap: 2em");
    EXPECT_EQ(expanded("gap", "1em"), "row-gap: 1em; column-gap: 1em");
    EXPECT_EQ(expanded("overflow", "hidden auto"), "overflow-x: hidden; overflow-y: auto");
}

// CSS Flexbox 1 § 7.1, CSS Backgrounds 3 § 2.10 and § 3.4.
TEST(CssShorthands, NameWhatTheySetWhereTheyDoNotDivide) {
    EXPECT_EQ(expanded("flex", "1 1 0"), "flex-grow: ?; flex-shrink: ?; flex-basis: ?");
    EXPECT_EQ(expanded("border-left", "1px solid"),
              "border-left-width: ?; border-left-style: ?; border-left-color: ?");
    EXPECT_EQ(longhandsOf("border", "0").size(), 17U);
    EXPECT_EQ(longhandsOf("background", "red").size(), 8U);
    EXPECT_EQ(expanded("gap", "1px 2px 3px"), "row-gap: ?; column-gap: ?");
    EXPECT_EQ(expanded("gap", "var(--tide)"), "row-gap: ?; column-gap: ?");
    EXPECT_EQ(expanded("flex", "inherit"), "flex-grow: inherit; flex-shrink: inherit; flex-basis: inherit");
    EXPECT_EQ(expanded("color", "red"), "");
}

}  // namespace
}  // namespace tenter::css
