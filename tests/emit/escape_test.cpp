#include "emit/escape.h"

#include <gtest/gtest.h>

#include "emit/address.h"

namespace tenter::emit {
namespace {

using std::string_literals::operator""s;

// CSSOM § 2.1, "serialize a string"; the escapes of <, > and & are CSS Syntax 3 § 4.3.7.
TEST(CssString, QuotesAndEscapes) {
    EXPECT_EQ(cssString("Vollkorn"), "\"Vollkorn\"");
    EXPECT_EQ(cssString(R"(A "B" \C)"), R"("A \"B\" \\C")");
    EXPECT_EQ(cssString("a\nb\x7F"), R"("a\a b\7f ")");
    EXPECT_EQ(cssString("</style>&"), R"("\3c /style\3e \26 ")");
    EXPECT_EQ(cssString("a\0b"s),
              "\"a\xEF\xBF\xBD"
              "b\"");
}

// CSSOM § 2.1, "serialize an identifier".
TEST(CssIdentifier, EscapesWhatAnIdentifierCannotHold) {
    EXPECT_EQ(cssIdentifier("walks-trio"), "walks-trio");
    EXPECT_EQ(cssIdentifier("3up"), "\\33 up");
    EXPECT_EQ(cssIdentifier("-3up"), "-\\33 up");
    EXPECT_EQ(cssIdentifier("-"), "\\-");
    EXPECT_EQ(cssIdentifier("a.b<c"), "a\\.b\\3c c");
}

// CSS Syntax 3 § 4.3.2: a comment ends at the first */.
TEST(CssComment, CannotBeEndedByWhatIsInIt) {
    EXPECT_EQ(cssComment("a */ b"), "a * / b");
    EXPECT_EQ(cssComment("**//"), "** //");
    EXPECT_EQ(cssComment("Salt & <sand>\n"), "Salt + (sand) ");
    EXPECT_EQ(cssComment(cssComment("*/*/")).find("*/"), std::string::npos);
}

// HTML § 13.1.2.3 and § 13.2.5.1: NUL is no character of a document.
TEST(Html, EscapesTextAndAttributes) {
    EXPECT_EQ(html("<a href=\"x\">R&D</a>"), "&lt;a href=&quot;x&quot;&gt;R&amp;D&lt;/a&gt;");
    EXPECT_EQ(html("a\0b"s),
              "a\xEF\xBF\xBD"
              "b");
    EXPECT_EQ(html("tab\tcr\rlf\n"), "tab\tcr\rlf\n");
}

// Unicode 15 § 3.9, table 3-8 and its neighbours: one U+FFFD for each maximal subpart.
TEST(Repaired, ReplacesIllFormedSequences) {
    const std::string replacement = "\xEF\xBF\xBD";
    EXPECT_EQ(repaired("caf\xC3\xA9 \xF0\x9F\x8C\x8A"), "caf\xC3\xA9 \xF0\x9F\x8C\x8A");
    EXPECT_EQ(repaired("\xC0\xAF\xE0\x80\xBF\xF0\x81\x82\x41"), replacement + replacement + replacement +
                                                                    replacement + replacement + replacement +
                                                                    replacement + replacement + "\x41");
    EXPECT_EQ(repaired("\xE1\x80\xE2\xF0\x91\x92\xF1\xBF\x41"),
              replacement + replacement + replacement + replacement + "\x41");
    EXPECT_EQ(repaired("\xED\xA0\x80"), replacement + replacement + replacement);  // a lone surrogate
    EXPECT_EQ(repaired("\xF0\x9F\x8C"), replacement);
}

// RFC 8259 § 7.
TEST(JsonString, EscapesControlsAndQuotes) {
    EXPECT_EQ(jsonString("a\"\\\n\x01"), R"("a\"\\\n\u0001")");
}

// RFC 3986 § 2.1.
TEST(Address, OfAFileIsPercentEncoded) {
    EXPECT_EQ(pathAddress("pictures/low tide.png"), "pictures/low%20tide.png");
    EXPECT_EQ(pathAddress("javascript:1\"<"), "javascript%3A1%22%3C");
}

}  // namespace
}  // namespace tenter::emit
