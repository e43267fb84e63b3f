// The source of these is Selectors 4; the clause stands beside each. tests/engines compares specificities and
// what is selected with what others wrote.
#include "css/selectors.h"

#include <gtest/gtest.h>

#include <random>

namespace tenter::css {
namespace {

SelectorList list(std::string_view text) {
    Problems problems;
    auto read = readSelectors(text, problems);
    EXPECT_TRUE(read) << text << ": " << (problems.empty() ? "" : problems.front().what);
    EXPECT_TRUE(problems.empty()) << text << ": " << problems.front().what;
    return read.value_or(SelectorList());
}

Specificity specificity(std::string_view text) {
    return specificityOf(list(text).at(0));
}

// Where and why a list is refused.
Problem refusedSelector(std::string_view text) {
    Problems problems;
    EXPECT_FALSE(readSelectors(text, problems)) << text;
    EXPECT_EQ(problems.size(), 1U) << text;
    return problems.empty() ? Problem() : problems.front();
}

// § 17's own examples, those of § 17 and of § 4.2.
TEST(CssSpecificity, EqualsThatOfTheStandardsExamples) {
    EXPECT_EQ(specificity("*"), (Specificity{0, 0, 0}));
    EXPECT_EQ(specificity("LI"), (Specificity{0, 0, 1}));
    EXPECT_EQ(specificity("UL LI"), (Specificity{0, 0, 2}));
    EXPECT_EQ(specificity("UL OL+LI"), (Specificity{0, 0, 3}));
    EXPECT_EQ(specificity("H1 + *[REL=up]"), (Specificity{0, 1, 1}));
    EXPECT_EQ(specificity("UL OL LI.red"), (Specificity{0, 1, 3}));
    EXPECT_EQ(specificity("LI.red.level"), (Specificity{0, 2, 1}));
    EXPECT_EQ(specificity("#x34y"), (Specificity{1, 0, 0}));
    EXPECT_EQ(specificity("#s12:not(FOO)"), (Specificity{1, 0, 1}));
    EXPECT_EQ(specificity(".foo :is(.bar, #baz)"), (Specificity{1, 1, 0}));
    EXPECT_EQ(specificity(":is(em, #foo)"), (Specificity{1, 0, 0}));
    EXPECT_EQ(specificity(".qux:where(em, #foo#bar#baz)"), (Specificity{0, 1, 0}));
    EXPECT_EQ(specificity(":nth-child(even of li, .item)"), (Specificity{0, 2, 0}));
    EXPECT_EQ(specificity(":not(em, strong#foo)"), (Specificity{1, 0, 1}));
    EXPECT_EQ(specificity("a::before"), (Specificity{0, 0, 2}));
    EXPECT_EQ(specificity("a:hover"), (Specificity{0, 1, 1}));
}

TEST(CssSelectors, KeepCompoundsCombinatorsAndPlaces) {
    const SelectorList read = list(" .shore > a.walk ~ b , i+u");
    ASSERT_EQ(read.size(), 2U);
    ASSERT_EQ(read[0].compounds.size(), 3U);
    EXPECT_EQ(read[0].compounds[1].combinator, Combinator::Child);
    EXPECT_EQ(read[0].compounds[2].combinator, Combinator::SubsequentSibling);
    EXPECT_EQ(read[0].compounds[1].simples[1].name, "walk");
    EXPECT_EQ(read[0].begin, 1U);
    EXPECT_EQ(read[0].end, 20U);
    EXPECT_EQ(read[1].compounds[1].combinator, Combinator::NextSibling);
}

// § 6.
TEST(CssSelectors, ReadEveryOperatorOfAttributes) {
    const std::vector<std::pair<std::string, Comparison>> all = {
        {"", Comparison::Exists},        {"=", Comparison::Equals},      {"~=", Comparison::Includes},
        {"|=", Comparison::DashMatches}, {"^=", Comparison::StartsWith}, {"$=", Comparison::EndsWith},
        {"*=", Comparison::Contains}};
    for (const auto& [mark, comparison] : all) {
        const std::string text = mark.empty() ? "[ Data-tide ]" : "[ Data-tide " + mark + " 'High' i]";
        const Simple simple = list(text)[0].compounds[0].simples[0];
        EXPECT_EQ(simple.name, "data-tide");
        EXPECT_EQ(simple.comparison, comparison) << text;
        if (!mark.empty()) {
            EXPECT_EQ(simple.value, "High");
            EXPECT_EQ(simple.ignoresCase, true);
        }
    }
}

// CSS Syntax 3 § 6.1's examples, and what § 6.2 calls invalid.
TEST(CssSelectors, CountByAnPlusB) {
    const auto nth = [](const std::string& text) {
        return list(":nth-child(" + text + ")")[0].compounds[0].simples[0].nth;
    };
    EXPECT_EQ(nth("2n+0"), (Nth{2, 0}));
    EXPECT_EQ(nth("even"), (Nth{2, 0}));
    EXPECT_EQ(nth(" ODD "), (Nth{2, 1}));
    EXPECT_EQ(nth("4n+1"), (Nth{4, 1}));
    EXPECT_EQ(nth("-1n+6"), (Nth{-1, 6}));
    EXPECT_EQ(nth("-4n+10"), (Nth{-4, 10}));
    EXPECT_EQ(nth("0n+5"), (Nth{0, 5}));
    EXPECT_EQ(nth("5"), (Nth{0, 5}));
    EXPECT_EQ(nth("n"), (Nth{1, 0}));
    EXPECT_EQ(nth("-n- 1"), (Nth{-1, -1}));
    EXPECT_EQ(nth("+3n - 2"), (Nth{3, -2}));
    EXPECT_EQ(nth("99999999999n + 4"), (Nth{1'000'000'000, 4}));
    for (const char* none : {"3 n", "+ 2n", "+ 2", "3n + -6", "2n 1", "", "n of", "1.5", "x"})
        refusedSelector(":nth-child(" + std::string(none) + ")");
    refusedSelector(":nth-of-type(2n of a)");
}

// § 7 to § 10, § 11.
TEST(CssSelectors, KnowDynamicConditionsAndPseudoElements) {
    EXPECT_TRUE(isDynamic(list("a:hover")[0]));
    EXPECT_TRUE(isDynamic(list("a:is(b, :not(:focus-visible)) c")[0]));
    EXPECT_FALSE(isDynamic(list("a:first-child:link")[0]));
    const Complex drawn = list("a b:Before")[0];
    ASSERT_EQ(drawn.pseudoElements().size(), 1U);
    EXPECT_EQ(drawn.pseudoElements()[0].name, "before");
    EXPECT_EQ(list("a::part( tide )")[0].pseudoElements()[0].argument, "tide");
    EXPECT_EQ(list("a::-webkit-anything")[0].pseudoElements()[0].name, "-webkit-anything");
    EXPECT_TRUE(isDynamic(list("a::after:hover")[0]));
}

// § 3.9: what is not valid or not known makes the list so.
TEST(CssSelectors, RefuseTheWholeListForOneAndSayWhere) {
    EXPECT_EQ(refusedSelector("a, b:no-such").offset, 5U);
    EXPECT_EQ(refusedSelector("a, b:no-such").what, "The pseudo-class :no-such is not known.");
    EXPECT_EQ(refusedSelector("a::no-such").what, "The pseudo-element ::no-such is not known.");
    EXPECT_EQ(refusedSelector("a >").what, "Expected a selector, but the text ends.");
    EXPECT_EQ(refusedSelector("#1").offset, 0U);
    for (const char* wrong : {"",
                              ",",
                              "a,",
                              ",a",
                              "a b,,c",
                              ".",
                              ".1",
                              "a..b",
                              "> a",
                              "a > > b",
                              "a*",
                              "[",
                              "[a=]",
                              "[=b]",
                              "[a=b c]",
                              "[a!=b]",
                              "a:",
                              "a::",
                              ": hover",
                              "a {",
                              "a)",
                              ":not()",
                              ":not(:no-such)",
                              ":not(a::before)",
                              ":has()",
                              ":has(:has(a))",
                              "a::before b",
                              "a::before.b",
                              "a::before:first-child",
                              "x|a",
                              "|a",
                              "&",
                              "a:hover()",
                              ":is",
                              "a || b",
                              "'a'",
                              "1",
                              "\"",
                              ":nth-child(2n of)",
                              ":nth-child(2n of :no-such)"}) {
        const Problem problem = refusedSelector(wrong);
        EXPECT_FALSE(problem.fix.empty()) << wrong;
        EXPECT_LE(problem.offset, std::string(wrong).size());
    }
}

// § 4.2, § 18.1: :is() and :where() forgive, and it is told.
TEST(CssSelectors, ForgiveWithinIsAndWhere) {
    Problems problems;
    const auto read = readSelectors(":is(a, :no-such(b, c), d::before, [e=,], f)", problems);
    ASSERT_TRUE(read);
    EXPECT_EQ((*read)[0].compounds[0].simples[0].arguments.size(), 2U);
    EXPECT_EQ(problems.size(), 3U);
    problems.clear();
    EXPECT_TRUE(readSelectors(":where()", problems));
    EXPECT_TRUE(problems.empty());
}

// CSS Syntax 3 § 5.4.9: what is open at the end is closed there.
TEST(CssSelectors, CloseAtTheEndWhatIsOpen) {
    EXPECT_EQ(specificity(":not(.a"), (Specificity{0, 1, 0}));
    EXPECT_EQ(specificity("[a=b"), (Specificity{0, 1, 0}));
}

TEST(CssSelectors, SkipComments) {
    EXPECT_EQ(specificity("a/**/.b /* c */ /**/ #d"), (Specificity{1, 1, 1}));
}

TEST(CssSelectors, AddTheOffsetOfTheirText) {
    Problems problems;
    EXPECT_FALSE(readSelectors("a:no-such", problems, 100));
    EXPECT_EQ(problems.at(0).offset, 102U);
}

TEST(CssSelectors, AcceptAnyInput) {
    const auto repeated = [](std::string_view piece, std::size_t bytes) {
        std::string text;
        while (text.size() < bytes)
            text += piece;
        return text;
    };
    for (const char* piece :
         {"(", "a,", ":not(", ":is(", ":is(a,", ":has(", ":nth-child(2n of ", "[", "a>", "*", ".a", "\\"}) {
        Problems problems;
        readSelectors(repeated(piece, 100'000), problems);
        readSelectors(repeated(piece, 100'000) + "a", problems);
        EXPECT_FALSE(readSelectors(repeated(piece, 5'000'000), problems)) << piece;
        EXPECT_FALSE(problems.empty());
    }
    std::mt19937 random(11);
    const std::string letters = "ab.#:[]()=>+~* ,|n2\"'\\-\xff";
    for (int i = 0; i < 5000; ++i) {
        std::string text = i % 2 == 0 ? ":is(" : "";
        for (auto n = random() % 30; n > 0; --n)
            text += letters[random() % letters.size()];
        Problems problems;
        const auto read = readSelectors(text, problems);
        if (!read) {
            ASSERT_EQ(problems.size(), 1U) << text;
            ASSERT_LE(problems[0].offset, text.size());
        }
    }
}

}  // namespace
}  // namespace tenter::css
