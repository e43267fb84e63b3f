// The source of these is CSS Syntax 3 § 5, CSS Conditional 3 and CSS Cascade 5 § 6.4; the clause stands
// beside each. tests/engines compares rule lists with what others read.
#include "css/rules.h"

#include <gtest/gtest.h>

#include <random>

namespace tenter::css {
namespace {

// `a|b {c: d; e: f!}`, one after the other.
std::string summary(const Sheet& sheet) {
    std::string text;
    for (const StyleRule& rule : sheet.rules) {
        text += text.empty() ? "" : " ";
        text += rule.selectorText + "{";
        for (const Declaration& each : rule.declarations)
            text += each.property + ":" + each.value + (each.important ? "!" : "") + ";";
        text += "}";
    }
    return text;
}

std::string rulesOf(std::string_view source) {
    return summary(readSheet(source));
}

std::string repeated(std::string_view piece, std::size_t bytes) {
    std::string text;
    while (text.size() < bytes)
        text += piece;
    return text;
}

TEST(CssRules, AreReadInTheOrderOfTheSource) {
    EXPECT_EQ(rulesOf(".a { COLOR : red ; margin: 0 auto } b , i{--Tide:  High ;}"),
              ".a{color:red;margin:0 auto;} b , i{--Tide:High;}");
    EXPECT_EQ(rulesOf("<!-- a{} -->"), "a{}");
    EXPECT_EQ(rulesOf("/* x */ a /* y */ { /* z */ b : /* u */ c /* v */ ; }"), "a{b:c;}");
}

TEST(CssRules, HaveTheirPositions) {
    const Sheet sheet = readSheet("a {}\n\n.b {\n  color: red;\n  gap:\n 1px !important }");
    ASSERT_EQ(sheet.rules.size(), 2U);
    EXPECT_EQ(sheet.rules[1].line, 3U);
    EXPECT_EQ(sheet.rules[1].declarations[1].line, 5U);
    EXPECT_EQ(sheet.rules[1].declarations[1].value, "1px");
    EXPECT_EQ(sheet.rules[1].declarations[1].valueOffset, 33U);
}

// § 5.5.6.
TEST(CssRules, KnowWhatIsImportant) {
    EXPECT_EQ(rulesOf("a{b:c!important;d:e ! IMPORTANT;f:g /**/!/**/important}"), "a{b:c!;d:e!;f:g!;}");
    EXPECT_EQ(rulesOf("a{b:c!x;d:!important;e:f!important g;h:! important!important;i:j}"), "a{i:j;}");
    EXPECT_EQ(rulesOf("a{--b:c!important;--d:;--e:{f:g}}"), "a{--b:c!;--d:;--e:{f:g};}");
}

// § 2.2 and § 5.5: what is wrong is dropped up to its end, and nothing after it.
TEST(CssRules, LoseNothingAfterWhatIsWrong) {
    EXPECT_EQ(rulesOf("a{color;b:c}"), "a{b:c;}");
    EXPECT_EQ(rulesOf("a{:x;b:c}"), "a{b:c;}");
    EXPECT_EQ(rulesOf("a{b c:d;e:f}"), "a{e:f;}");
    EXPECT_EQ(rulesOf("a{b:'open\n;c:d} e{}"), "a{c:d;} e{}");
    EXPECT_EQ(rulesOf("a{b:(;c:d} e{}"), "a{}");
    EXPECT_EQ(rulesOf("a{b:);c:d}"), "a{c:d;}");
    EXPECT_EQ(rulesOf("a{b:url(x y);c:d}"), "a{c:d;}");
    EXPECT_EQ(rulesOf("a{b:{};c:d}"), "a{c:d;}");
    EXPECT_EQ(rulesOf("a{} , {b:c} d{e:f}"), "a{} d{e:f;}");
    EXPECT_EQ(rulesOf("} a{} b{}"), "b{}");
    EXPECT_EQ(rulesOf("a; b{} c{}"), "c{}");
    EXPECT_EQ(rulesOf("a:no-such, b{c:d} e{}"), "e{}");
    EXPECT_EQ(rulesOf("--a:hover{b:c} d{}"), "d{}");
    EXPECT_EQ(rulesOf("a{b:c"), "a{b:c;}");
    EXPECT_EQ(rulesOf("a"), "");
    EXPECT_EQ(rulesOf("@media x{a{b:c"), "a{b:c;}");
    EXPECT_EQ(rulesOf("@media x{a;b{c:d} i{}} e{}"), "i{} e{}");
    EXPECT_EQ(rulesOf("@media x{color:red;b:hover{c:d}i:hover{j:k}} e{}"), "i:hover{j:k;} e{}");
    EXPECT_EQ(readSheet("a{color;b:c}").problems.at(0).offset, 2U);
}

// CSS Nesting 1 § 3: `&` stands for the outer selectors; a selector without it is inside them; declarations
// after a nested rule come after it.
TEST(CssRules, ReadNestedRules) {
    const Sheet sheet = readSheet(
        "a, u { b: c; &:hover { d: e } i:hover, > s & {f:g} @media print { h: j; b { y: z } } k: l } m {}");
    EXPECT_EQ(summary(sheet),
              "a, u{b:c;} :is(a, u):hover{d:e;} :is(a, u) i:hover, :is(a, u) > s :is(a, u){f:g;} a, u{h:j;} "
              ":is(a, u) b{y:z;} a, u{k:l;} m{}");
    EXPECT_EQ(sheet.problems.size(), 0U);
    ASSERT_EQ(sheet.conditionsOf(sheet.rules[3]).size(), 1U);
    EXPECT_EQ(sheet.conditionsOf(sheet.rules[4])[0]->text, "print");
    EXPECT_EQ(sheet.conditionsOf(sheet.rules[5]).size(), 0U);
    const Sheet deeper = readSheet(".a { .b { &.c { d: e } } }");
    EXPECT_EQ(deeper.rules.back().selectorText, ":is(:is(.a) .b).c");
    EXPECT_EQ(specificityOf(deeper.rules.back().selectors[0]), (Specificity{0, 3, 0}));
}

TEST(CssRules, DoNotGrowWithoutLimitWhenNested) {
    std::string css = "a{";
    for (int i = 0; i < 40; ++i)
        css += "& & &{";
    const Sheet sheet = readSheet(css + "b:c");
    EXPECT_LT(sheet.rules.size(), 40U);
    EXPECT_EQ(sheet.problems.size(), 1U);
}

TEST(CssRules, ReadSeveralSheetsAsOne) {
    const std::vector<SheetSource> sources{
        {"@layer b; a { c: d }", {}, {}},
        {"e { f: g } @layer a { h { i: j } }",
         {{ConditionKind::Media, "print"}, {ConditionKind::Supports, "(k: l)"}},
         {"b", ""}}};
    const Sheet sheet = readSheets(sources);
    ASSERT_EQ(sheet.rules.size(), 3U);
    EXPECT_EQ(sheet.rules[1].source, 1U);
    EXPECT_EQ(sheet.conditionsOf(sheet.rules[1]).size(), 2U);
    const Layer& layer = sheet.layers[*sheet.rules[1].layer];
    EXPECT_EQ(layer.name, "");
    EXPECT_EQ(sheet.layers[*layer.parent].name, "b");
    EXPECT_FALSE(sheet.rules[0].layer.has_value());
}

// CSS Cascade 5 § 2.
TEST(CssRules, ReadImports) {
    std::string_view before;
    const auto imports = importsOf(
        "@charset \"UTF-8\"; @layer a, b; @import url(one.css); @import \"two.css\" layer(a.b) "
        "supports(display: grid) "
        "screen and (min-width: 9px); @import url('three.css') layer; c {} @import 'four.css';",
        before);
    ASSERT_EQ(imports.size(), 3U);
    EXPECT_EQ(imports[0].address, "one.css");
    EXPECT_EQ(imports[1].layer, "a.b");
    EXPECT_EQ(imports[1].supports, "display: grid");
    EXPECT_EQ(imports[1].media, "screen and (min-width: 9px)");
    EXPECT_EQ(imports[2].address, "three.css");
    EXPECT_EQ(imports[2].layer, "");
    EXPECT_NE(before.find("@layer a, b;"), std::string_view::npos);
}

// CSS Properties and Values 1 § 2.
TEST(CssRules, ReadRegisteredProperties) {
    const Sheet sheet =
        readSheet("@property --tide { syntax: '<length>'; inherits: false; initial-value: 4px } a { b: c }");
    ASSERT_EQ(sheet.properties.size(), 1U);
    EXPECT_EQ(sheet.properties[0].name, "--tide");
    EXPECT_FALSE(sheet.properties[0].inherits);
    EXPECT_EQ(sheet.properties[0].initialValue, "4px");
    EXPECT_EQ(sheet.rules.size(), 1U);
}

TEST(CssRules, KeepWhatTheyDependOn) {
    const Sheet sheet = readSheet(
        "@media screen /* wide */ { a{} @supports (display: grid) { @container shelf (width > 300px) { b{} } "
        "} c{} } d{}");
    ASSERT_EQ(sheet.rules.size(), 4U);
    EXPECT_EQ(sheet.conditionsOf(sheet.rules[0]).size(), 1U);
    const auto conditions = sheet.conditionsOf(sheet.rules[1]);
    ASSERT_EQ(conditions.size(), 3U);
    EXPECT_EQ(conditions[0]->kind, ConditionKind::Media);
    EXPECT_EQ(conditions[0]->text, "screen");
    EXPECT_EQ(conditions[1]->text, "(display: grid)");
    EXPECT_EQ(conditions[2]->kind, ConditionKind::Container);
    EXPECT_EQ(conditions[2]->text, "shelf (width > 300px)");
    EXPECT_EQ(sheet.conditionsOf(sheet.rules[2]).size(), 1U);
    EXPECT_TRUE(sheet.conditionsOf(sheet.rules[3]).empty());
}

TEST(CssRules, PassOverOtherAtRulesWhole) {
    const Sheet sheet = readSheet(
        "@charset \"utf-8\"; @import url(a.css);\n@font-face { font-family: A } @keyframes b { from { c: d } "
        "} "
        "@unknown { e{} } @page{} f{}");
    EXPECT_EQ(summary(sheet), "f{}");
    ASSERT_EQ(sheet.skipped.size(), 6U);
    EXPECT_EQ(sheet.skipped[2].name, "font-face");
    EXPECT_EQ(sheet.skipped[2].line, 2U);
}

// CSS Cascade 5 § 6.4.1 and § 6.4.4, its examples' shape.
TEST(CssRules, KeepTheOrderOfLayers) {
    const Sheet sheet = readSheet(
        "@layer reset, base.type; @layer base { a{} @layer form { b{} } } @layer { c{} } @layer reset { d{} "
        "} "
        "@layer base.type { e{} } f{}");
    std::vector<std::string> names;
    for (const Layer& layer : sheet.layers)
        names.push_back(layer.name);
    EXPECT_EQ(names, (std::vector<std::string>{"reset", "type", "form", "base", ""}));
    EXPECT_EQ(sheet.layers[1].parent, 3U);
    std::vector<std::optional<std::size_t>> layers;
    for (const StyleRule& rule : sheet.rules)
        layers.push_back(rule.layer);
    EXPECT_EQ(layers, (std::vector<std::optional<std::size_t>>{3, 2, 4, 0, 1, std::nullopt}));
    EXPECT_TRUE(sheet.problems.empty());
    const Sheet wrong = readSheet("@layer a, b { c{} } @layer d .e { f{} } g{}");
    EXPECT_EQ(summary(wrong), "g{}");
    EXPECT_EQ(wrong.problems.size(), 2U);
}

// § 5.4.5, what a style attribute holds.
TEST(CssDeclarations, AreReadWithoutARule) {
    Problems problems;
    const auto read = readDeclarations("color: red; ; gap }: 1px; margin: 0 !important", problems);
    ASSERT_EQ(read.size(), 2U);
    EXPECT_EQ(read[1].property, "margin");
    EXPECT_TRUE(read[1].important);
    EXPECT_EQ(problems.size(), 1U);
}

// The selectors of a nested rule stand for more text than the source has.
TEST(CssRules, HaveProblemsInsideTheSource) {
    const std::string source = "a, b, c { d:is(::before) {} } @scope (e) { f:is(::after) {} }";
    const Sheet sheet = readSheet(source);
    ASSERT_EQ(sheet.problems.size(), 2U);
    EXPECT_EQ(sheet.problems[0].offset, source.find("d:is"));
    EXPECT_EQ(sheet.problems[1].offset, source.find("f:is"));
}

TEST(CssRules, OfTooLongTextsAreNotRead) {
    const std::string half = repeated("a{}", longestSheet / 2);
    EXPECT_EQ(readSheet(half).problems.size(), 0U);
    const Sheet whole = readSheet(half + half + "a{}");
    EXPECT_TRUE(whole.rules.empty());
    ASSERT_EQ(whole.problems.size(), 1U);
    const std::vector<SheetSource> sources{{"b{}"}, {half}, {half + "a{}"}, {"c{}"}};
    const Sheet several = readSheets(sources);
    ASSERT_FALSE(several.rules.empty());
    EXPECT_EQ(several.rules.back().selectorText, "c");
    EXPECT_EQ(several.rules.back().source, 3U);
    EXPECT_EQ(several.problems.size(), 1U);
}

TEST(CssRules, AcceptAnyInput) {
    for (const char* piece :
         {"(", "a,", "a{", "}", "@media x{", "@layer a{", "@layer a.", "a:b{}", "a;", "a:b;", "@a;", "a{b:c}",
          "a{b:{}", "\"", "@layer{}", "--a:b{}", "a{b:!", "@media (a){b{}", ":is("}) {
        readSheet(repeated(piece, 60'000));
        readSheet("@media x{" + repeated(piece, 60'000));
        readSheet("a{" + repeated(piece, 60'000) + "}");
    }
    EXPECT_TRUE(readSheet(repeated("(", 4'000'000)).rules.empty());
    EXPECT_TRUE(readSheet(repeated("a,", 4'000'000) + "a{}").rules.empty());
    EXPECT_EQ(readSheet(repeated("@media x{", 4'000'000)).conditions.size(), 32U);
    std::mt19937 random(5);
    const std::string letters = "ab:;{}()@!\"'/*\n \\,.\xff-";
    for (int i = 0; i < 3000; ++i) {
        std::string text;
        for (auto n = random() % 50; n > 0; --n)
            text += letters[random() % letters.size()];
        const Sheet sheet = readSheet(text + "\n*/'\"\n)]}))]}} ;} z{y:x}");
        for (const Problem& problem : sheet.problems)
            ASSERT_FALSE(problem.fix.empty());
    }
}

}  // namespace
}  // namespace tenter::css
