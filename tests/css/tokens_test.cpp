// The source of these is CSS Syntax 3 § 3.3 and § 4; the clause stands beside each. tests/engines compares
// with a tokeniser that others wrote.
#include "css/tokens.h"

#include <gtest/gtest.h>

#include <random>

#include "css/places.h"

namespace tenter::css {
namespace {

using enum TokenKind;

// One token of a text that has no other.
Token only(std::string_view text) {
    const std::vector<Token> tokens = tokenise(text);
    EXPECT_EQ(tokens.size(), 2U) << text;
    return tokens.front();
}

std::vector<TokenKind> kinds(std::string_view text) {
    std::vector<TokenKind> result;
    for (const Token& token : tokenise(text))
        result.push_back(token.kind);
    result.pop_back();
    return result;
}

using Kinds = std::vector<TokenKind>;

TEST(CssTokens, AreThoseOfTheStandard) {
    EXPECT_EQ(kinds("a{b:1px}"), (Kinds{Ident, OpenCurly, Ident, Colon, Dimension, CloseCurly}));
    EXPECT_EQ(kinds("@media (a)"), (Kinds{AtKeyword, Whitespace, OpenRound, Ident, CloseRound}));
    EXPECT_EQ(kinds("<!-- -->"), (Kinds{Cdo, Whitespace, Cdc}));
    EXPECT_EQ(kinds("a/* b */c"), (Kinds{Ident, Ident}));
    EXPECT_EQ(kinds("/* never closed"), Kinds{});
    EXPECT_EQ(kinds("[a=b],;"), (Kinds{OpenSquare, Ident, Delim, Ident, CloseSquare, Comma, Semicolon}));
    EXPECT_EQ(kinds("# @ \\\n"), (Kinds{Delim, Whitespace, Delim, Whitespace, Delim, Whitespace}));
    EXPECT_EQ(kinds("--> --a -a - a"),
              (Kinds{Cdc, Whitespace, Ident, Whitespace, Ident, Whitespace, Delim, Whitespace, Ident}));
}

// § 4.3.3, § 4.3.12, § 4.3.13.
TEST(CssTokens, OfNumbersHaveValueUnitAndKind) {
    EXPECT_EQ(only("12").number, 12);
    EXPECT_TRUE(only("12").flag);
    EXPECT_EQ(only("-.5").number, -0.5);
    EXPECT_FALSE(only("-.5").flag);
    EXPECT_EQ(only("+1e3").number, 1000);
    EXPECT_FALSE(only("1e3").flag);
    EXPECT_EQ(only("8.333vw").text, "vw");
    EXPECT_EQ(only("8.333vw").number, 8.333);
    EXPECT_EQ(only("50%").kind, Percentage);
    EXPECT_EQ(only("1em").text, "em");
    EXPECT_EQ(only("1e-x").text, "e-x");
    EXPECT_EQ(only("1\\70x").text, "px");
    EXPECT_EQ(kinds("1."), (Kinds{Number, Delim}));
    EXPECT_EQ(kinds("1px+2px"), (Kinds{Dimension, Dimension}));
    EXPECT_EQ(kinds("1+-2"), (Kinds{Number, Delim, Number}));
}

TEST(CssTokens, OfNumbersAreFiniteHoweverLarge) {
    EXPECT_EQ(only("1e999999999999999999999").number, std::numeric_limits<double>::max());
    EXPECT_EQ(only("-" + std::string(400, '9')).number, -std::numeric_limits<double>::max());
    EXPECT_EQ(only("1e-999999999999999999999").number, 0);
    EXPECT_EQ(only("0." + std::string(400, '0') + "1").number, 0);
    EXPECT_EQ(only("0e999").number, 0);
}

// § 4.3.7.
TEST(CssTokens, HaveTheirEscapesRead) {
    EXPECT_EQ(only("\\66 \\6f\\00006f").text, "foo");
    EXPECT_EQ(only("a\\.b").text, "a.b");
    EXPECT_EQ(only("\\31 0").text, "10");
    EXPECT_EQ(only("\\1F600").text, "\xf0\x9f\x98\x80");
    EXPECT_EQ(only("\\e9\r\nt\\e9").text, "\xc3\xa9t\xc3\xa9");
    for (const char* none : {"\\0", "\\d800", "\\110000", "\\ffffff"})
        EXPECT_EQ(only(none).text, "\xef\xbf\xbd") << none;
    EXPECT_EQ(only("a\\").text, "a\xef\xbf\xbd");
}

// § 4.3.5.
TEST(CssTokens, OfStringsEndAtTheLinesEndUnlessEscaped) {
    EXPECT_EQ(only("'it\\'s'").text, "it's");
    EXPECT_EQ(only("\"a\\\nb\"").text, "ab");
    EXPECT_EQ(only("\"a\\\r\nb\"").text, "ab");
    EXPECT_EQ(only("'open").text, "open");
    EXPECT_EQ(only("'open\\").text, "open");
    EXPECT_EQ(kinds("'a\nb"), (Kinds{BadString, Whitespace, Ident}));
}

// § 4.3.4, § 4.3.6, § 4.3.14.
TEST(CssTokens, OfUrlsAreOneUnlessQuoted) {
    EXPECT_EQ(only("url( shore.png )").text, "shore.png");
    EXPECT_EQ(only("URL(a\\)b)").text, "a)b");
    EXPECT_EQ(only("url(").kind, Url);
    EXPECT_EQ(kinds("url( 'a' )"), (Kinds{Function, Whitespace, String, Whitespace, CloseRound}));
    EXPECT_EQ(kinds("url(a b) c"), (Kinds{BadUrl, Whitespace, Ident}));
    EXPECT_EQ(kinds("url(a(b\\)) c"), (Kinds{BadUrl, Whitespace, Ident}));
    EXPECT_EQ(only("url(a\x01)").kind, BadUrl);
}

// § 4.3.1: only a hash that is an identifier can be an id.
TEST(CssTokens, OfHashesSayWhetherTheyCanBeIds) {
    EXPECT_TRUE(only("#tide").flag);
    EXPECT_TRUE(only("#-tide").flag);
    EXPECT_FALSE(only("#012").flag);
    EXPECT_EQ(only("#012").text, "012");
}

// § 3.3: NUL becomes U+FFFD, which is a letter of names; so does what is no UTF-8. § 3.2: a byte order mark
// goes.
TEST(CssTokens, AcceptAnyBytes) {
    EXPECT_EQ(only(std::string_view("a\0b", 3)).text,
              "a\xef\xbf\xbd"
              "b");
    EXPECT_EQ(only("a\xff\xc3").text, "a\xef\xbf\xbd\xef\xbf\xbd");
    EXPECT_EQ(only("\xed\xa0\x80").kind, Ident);
    EXPECT_EQ(only("\xef\xbb\xbf"
                   "a")
                  .begin,
              3U);
    std::mt19937 random(7);
    for (int i = 0; i < 2000; ++i) {
        std::string bytes;
        for (auto n = random() % 60; n > 0; --n)
            bytes += static_cast<char>(random());
        std::size_t end = 0;
        for (const Token& token : tokenise(bytes)) {
            ASSERT_GE(token.begin, end);
            ASSERT_GE(token.end, token.begin);
            end = token.end;
        }
        ASSERT_EQ(end, bytes.size());
    }
}

// A million bytes of what is worst for it: anything but one pass would take hours.
TEST(CssTokens, AreReadInOnePass) {
    for (const char* piece : {"(", "a,", "url(", "/*", "\\", "'\n", "1e", "\xf0", "<!-", "#", "--"}) {
        std::string text;
        while (text.size() < 1'000'000)
            text += piece;
        Tokeniser tokeniser(text);
        std::size_t count = 0;
        while (!tokeniser.next().is(End))
            ++count;
        EXPECT_LE(count, text.size()) << piece;
    }
}

// § 3.3: CR, LF, FF and CR LF each end a line. Columns are in characters.
TEST(CssPlaces, AreCountedInLinesAndCharacters) {
    const std::string text =
        "a\r\nb\fc\r\xc3\xa9\xff"
        "d\n";
    const Lines lines(text);
    EXPECT_EQ(lines.placeOf(0), (Place{1, 1}));
    EXPECT_EQ(lines.placeOf(3), (Place{2, 1}));
    EXPECT_EQ(lines.placeOf(5), (Place{3, 1}));
    EXPECT_EQ(lines.placeOf(text.find('d')), (Place{4, 3}));
    EXPECT_EQ(lines.placeOf(text.size()), (Place{5, 1}));
    EXPECT_EQ(lines.lineOf(4), 2U);
}

}  // namespace
}  // namespace tenter::css
