// What a page's theme says of its row. That rows so read are laid out as browsers do is checked in
// tests/engines.
#include "markup/theme.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

#include "markup/theme_facts.h"
#include "markup/theme_page.h"

namespace tenter::markup {
namespace {

Tree treeOf(const std::string& html) {
    project::Problems problems;
    std::optional<Tree> tree = parse(html, "page.html", problems);
    EXPECT_TRUE(tree.has_value());
    return tree ? std::move(*tree) : Tree{};
}

NodeId byClass(const Tree& tree, std::string_view className) {
    for (NodeId at = 0; at < tree.size(); ++at)
        if (!tree[at].isText() && tree[at].hasClass(className)) return at;
    return noNode;
}

std::string themed(const std::string& css,
                   const std::string& row = "<div class=row><p class=tide>Low</p></div>") {
    const Tree page = treeOf("<style>" + css + "</style>" + row);
    std::vector<std::string> report;
    return PageStyles(sheetsOf(page, "page.html", report)).affecting(page, byClass(page, "row"));
}

TEST(Theme, KeepsTheRulesThatAffectTheRow) {
    EXPECT_EQ(
        themed(".row { float: left } .menu { float: right } .row .tide:hover { color: red !important }"),
        ".row { float: left; }\n.row .tide:hover { color: red !important; }\n");
}

// CSS Conditional 3 § 2, CSS Cascade 5 § 6.4: what a rule stands in decides when it holds and over what it
// wins.
TEST(Theme, KeepsTheAtRulesAroundRules) {
    EXPECT_EQ(themed("@layer base { @media (min-width: 700px) { .tide { margin: 0 } } }"),
              "@layer base;\n@layer base { @media (min-width: 700px) { .tide { margin: 0; } } }\n");
}

TEST(Theme, ReadsSheetsSavedWithThePageAndReportsOthers) {
    const std::filesystem::path folder = std::filesystem::path(TENTER_BINARY_DIR) / "theme-test";
    std::filesystem::create_directories(folder / "page_files");
    std::ofstream(folder / "page_files" / "look.css") << ".tide { float: left } .menu { color: red }";
    const Tree page = treeOf(
        "<link rel=stylesheet media=print href=https://theme.example/look.css><link rel=stylesheet "
        "href=gone.css>"
        "<div class=tide>Low</div>");
    std::vector<std::string> report;
    EXPECT_EQ(PageStyles(sheetsOf(page, folder / "page.html", report)).affecting(page, byClass(page, "tide")),
              "@media print { .tide { float: left; } } /* look.css:1 */\n");
    ASSERT_EQ(report.size(), 1U);
    EXPECT_NE(report[0].find("gone.css"), std::string::npos);
    std::filesystem::remove_all(folder);
}

// CSS Cascade 5 § 2: imported rules come first; the layers of the page keep their order.
TEST(Theme, ReadsImportedSheets) {
    const std::filesystem::path folder = std::filesystem::path(TENTER_BINARY_DIR) / "theme-imports";
    std::filesystem::create_directories(folder / "css");
    std::ofstream(folder / "css" / "all.css") << "@layer late, early;\n@import 'inner.css' layer(early) "
                                                 "screen;\n@layer late { .tide { order: 1 } }\n"
                                                 ".tide { order: 2 }";
    std::ofstream(folder / "css" / "inner.css") << "\n.tide { order: 3 }";
    const Tree page = treeOf("<link rel=stylesheet href=css/all.css><div class=tide>Low</div>");
    std::vector<std::string> report;
    EXPECT_EQ(PageStyles(sheetsOf(page, folder / "page.html", report)).affecting(page, byClass(page, "tide")),
              "@layer late, early;\n"
              "@layer early { @media screen { .tide { order: 3; } } } /* inner.css:2 */\n"
              "@layer late { .tide { order: 1; } } /* all.css:3 */\n"
              ".tide { order: 2; } /* all.css:4 */\n");
    EXPECT_EQ(report.size(), 0U);
    std::filesystem::remove_all(folder);
}

TEST(Theme, NamesTheFileOfARule) {
    const std::string theme = "a { b: c; }\n.tide { order: 3; } /* inner.css:2 */\n";
    EXPECT_EQ(originOfRule(theme, 2), "inner.css:2");
    EXPECT_EQ(originOfRule(theme, 1), "");
    EXPECT_EQ(originOfRule(theme, 9), "");
}

class Facts : public testing::Test {
protected:
    Tree tree = treeOf("<div class=row><p class=tide style='color: red'>Low</p></div>");
    Subjects tide{{byClass(tree, "tide")}, ""};
};

TEST_F(Facts, GiveTheSpecificityOfTheTheme) {
    const ThemeFacts facts(tree,
                           "p { float: left } .row .tide { float: right } .tide { clear: both !important }");
    const ThemeValue says = facts.valueOf(tide, "float", "none", false);
    EXPECT_TRUE(says.differs);
    EXPECT_EQ(says.most, (css::Specificity{0, 2, 0}));
    EXPECT_EQ(says.selector, ".row .tide");
    EXPECT_FALSE(says.important);
    EXPECT_TRUE(facts.valueOf(tide, "clear", "none", false).important);
    EXPECT_FALSE(facts.valueOf(tide, "order", "0", false).differs);
}

TEST_F(Facts, ExpandShorthands) {
    const ThemeFacts facts(tree,
                           ".tide { padding: 0 1em; font: 16px serif; grid-area: a; max-inline-size: 60ch }");
    EXPECT_FALSE(facts.valueOf(tide, "padding-top", "0", false).differs);
    EXPECT_TRUE(facts.valueOf(tide, "padding", "0", false).differs);
    EXPECT_FALSE(facts.valueOf(tide, "font-kerning", "auto", false).differs);
    EXPECT_TRUE(facts.valueOf(tide, "line-height", "1.4", false).differs);
    EXPECT_TRUE(facts.valueOf(tide, "grid-column", "auto", false).differs);
    EXPECT_TRUE(facts.valueOf(tide, "max-width", "none", false).differs);
}

// The siblings of the row and of its ancestors are not kept, so conditions on them may be true.
TEST_F(Facts, AllowForSiblingsThatAreNotKept) {
    const Tree kept = treeOf("<main><div class=row><p class=tide>Low</p><p>High</p></div></main>");
    const Subjects low{{byClass(kept, "tide")}, ""};
    const auto differs = [&](const std::string& selector) {
        return ThemeFacts(kept, selector + " { order: 3 }").valueOf(low, "order", "0", false).differs;
    };
    EXPECT_TRUE(differs("main:nth-child(2) .tide"));
    EXPECT_TRUE(differs("main:not(:first-child) .tide"));
    EXPECT_TRUE(differs("header + main .tide"));
    EXPECT_TRUE(differs(".row:not(h2 + .row) .tide"));
    EXPECT_FALSE(differs(".tide:nth-child(2)"));
    EXPECT_FALSE(differs("p + .tide"));
    EXPECT_FALSE(differs("header + .pool .tide"));
}

TEST_F(Facts, KnowNamesOfOldAndTransitionsOfColours) {
    const ThemeFacts facts(
        tree,
        ".tide { word-wrap: break-word; -webkit-order: 2; transition: color 0.2s "
        "cubic-bezier(0.1, 0.2, 0.3, 1), border-color 1s } .row { transition: all 0.2s ease }");
    EXPECT_TRUE(facts.valueOf(tide, "overflow-wrap", "normal", false).differs);
    EXPECT_TRUE(facts.valueOf(tide, "order", "0", false).differs);
    EXPECT_FALSE(facts.valueOf(tide, "transition", "none", false).differs);
    EXPECT_TRUE(facts.valueOf({{byClass(tree, "row")}, ""}, "transition", "none", false).differs);
}

TEST_F(Facts, KnowNegativeLengths) {
    const ThemeFacts facts(
        tree,
        ":root { --gap: 8px } .tide { margin-top: calc(-1 * var(--gap)); margin-bottom: 2em } "
        "@media (max-width: 400px) { .tide { margin-bottom: -1px } }");
    EXPECT_TRUE(facts.canBeNegative(byClass(tree, "tide"), "margin-top"));
    EXPECT_TRUE(facts.canBeNegative(byClass(tree, "tide"), "margin-bottom"));
    EXPECT_FALSE(facts.canBeNegative(byClass(tree, "row"), "margin-bottom"));
}

// A style attribute wins over every selector. CSS Style Attributes § 3.
TEST_F(Facts, CountStyleAttributesAsImportant) {
    EXPECT_TRUE(ThemeFacts(tree, "").valueOf(tide, "color", "#000", false).important);
}

// HTML § 15.3.3: paragraphs have margins of their own.
TEST_F(Facts, KnowHtmlsOwnStyleSheet) {
    const ThemeValue says = ThemeFacts(tree, "").valueOf(tide, "margin", "0", false);
    EXPECT_TRUE(says.differs);
    EXPECT_EQ(says.selector, "");
}

TEST_F(Facts, LookAboveForWhatIsInherited) {
    const ThemeFacts facts(tree, "body { text-indent: 2em }");
    EXPECT_TRUE(facts.valueOf(tide, "text-indent", "0", true).differs);
    EXPECT_FALSE(facts.valueOf(tide, "text-indent", "0", false).differs);
}

ThemePage pageOf(const std::string& css, const std::string& opening = "<div class=outer><div class=wrap>") {
    const Tree tree = treeOf(opening + "<div class=row><p>Low</p></div>");
    return themePage(tree, byClass(tree, "row"), css::readSheet("body { margin: 0 } " + css), 320, 1920);
}

// CSS Values 4 § 6.2: a percentage of a root's size is of the initial 16 px.
TEST(ThemePage, ReadsTheRootsSize) {
    EXPECT_DOUBLE_EQ(pageOf("html { font-size: 62.5% }").rootSize(), 10);
    EXPECT_DOUBLE_EQ(pageOf("html { font-size: 18px }").rootSize(), 18);
    EXPECT_DOUBLE_EQ(pageOf("").rootSize(), 16);
    EXPECT_NEAR(pageOf("html { font-size: calc(1em + 1vw) }").ranges[0].rootSize.perPx, 0.01, 1e-12);
    EXPECT_EQ(pageOf("").cautions.size(), 0U);
}

// CSS Box 4 § 4 and CSS Sizing 3 § 3.3: min(90 % of W less 48 px, 1000 px).
TEST(ThemePage, PutsBoxesInBoxesTogether) {
    const project::Container inner =
        pageOf(".outer { padding: 0 24px } .wrap { max-width: 1000px; margin: 0 auto }").container();
    EXPECT_EQ(inner.maxWidth, units::Length::px(1048));
    EXPECT_EQ(inner.padding.left, units::Length::px(24));
    const project::Container share = pageOf(
                                         ".outer, .wrap { margin: 0 auto } .outer { width: 90% } .wrap { "
                                         "max-width: 900px; padding: 0 1rem; "
                                         "box-sizing: border-box }")
                                         .container();
    EXPECT_EQ(share.width, units::Length::percent(90));
    EXPECT_EQ(share.maxWidth, units::Length::px(900));
    EXPECT_EQ(share.padding.right, units::Length::px(16));
    EXPECT_EQ(pageOf(".outer { padding: 0 5% }").container().width, units::Length::percent(90));
}

TEST(ThemePage, KnowsContentBoxes) {
    const project::Container read =
        pageOf(".wrap { max-width: 900px; padding: 0 20px; margin: 0 auto }").container();
    EXPECT_EQ(read.maxWidth, units::Length::px(940));
    EXPECT_EQ(read.padding.left, units::Length::px(20));
}

// HTML § 15.3.3.
TEST(ThemePage, KnowsTheBodysMargin) {
    const Tree tree = treeOf("<div class=row><p>Low</p></div>");
    EXPECT_EQ(themePage(tree, byClass(tree, "row"), css::Sheet(), 320, 1920).container().padding.left,
              units::Length::px(8));
}

TEST(ThemePage, CautionsAboutWhatItCannotRead) {
    const ThemePage page = pageOf(".wrap { width: calc(100% - 3vh) }");
    EXPECT_EQ(page.cautions,
              std::vector<std::string>{"The <div class=\"wrap\"> around the row has width: calc(100% - 3vh), "
                                       "which is not supported. Check the container in the project."});
    EXPECT_EQ(pageOf("html { font-size: 2vh }").cautions.size(), 1U);
    EXPECT_EQ(pageOf(".wrap { display: inline-block }").cautions.size(), 1U);
    EXPECT_EQ(pageOf(".wrap { position: absolute }").cautions.size(), 1U);
}

// The container and the root size by width: an end belongs to the range below it.
TEST(ThemePage, ReadsRangesOfWidths) {
    const ThemePage page = pageOf(
        ".wrap { margin: 0 auto; padding: 0 var(--gap) } :root { --gap: calc(1rem * 0.75) } "
        "@media (min-width: 600px) { .wrap { max-width: 540px; box-sizing: border-box } } "
        "@media (max-width: 900px) { html { font-size: 125% } }");
    ASSERT_EQ(page.ranges.size(), 3U);
    EXPECT_EQ(page.ranges[0].upTo, 599.98);
    EXPECT_EQ(page.ranges[0].container.padding.left, units::Length::px(15));
    EXPECT_EQ(page.ranges[0].rootSize, (css::Line{20, 0}));
    EXPECT_EQ(page.ranges[1].upTo, 900);
    EXPECT_EQ(page.ranges[1].container.width, units::Length::px(510));
    EXPECT_EQ(page.ranges[2].container.width, units::Length::px(516));
    project::Page into;
    page.into(into, true);
    ASSERT_EQ(into.ranges.size(), 2U);
    EXPECT_EQ(into.at(599).container.padding.left, units::Length::px(15));
    EXPECT_EQ(into.at(599).rootSize, units::RootSize(20));
    EXPECT_EQ(into.at(1500).container.width, units::Length::px(516));
    EXPECT_EQ(into.at(1500).container.padding.left.value_or(units::Length()), units::Length());
}

// CSS 2 § 10.3.3, CSS Flexbox 1 § 8.1 and § 9.7.
TEST(ThemePage, ReadsContainersAtASideAndInFlexRows) {
    const project::Container left =
        pageOf(".outer { padding: 0 10px } .wrap { max-width: 600px }").container();
    EXPECT_EQ(left.place, project::ContainerPlace::Start);
    EXPECT_EQ(left.width, units::Length::px(610));
    EXPECT_EQ(left.padding.left, units::Length::px(10));
    const project::Container column =
        pageOf(
            ".outer { display: flex; flex-wrap: wrap } .wrap { flex: 0 0 75%; padding: 0 12px; box-sizing: "
            "border-box }")
            .container();
    EXPECT_EQ(column.place, project::ContainerPlace::Start);
    EXPECT_EQ(column.width, units::Length::percent(75));
    EXPECT_EQ(column.padding.right, units::Length::px(12));
    EXPECT_EQ(
        pageOf(".outer { display: flex; justify-content: center } .wrap { width: 400px }").container().place,
        project::ContainerPlace::Center);
    EXPECT_EQ(
        pageOf(".outer { display: grid; padding: 0 9px } .wrap { width: 50%; margin-inline-start: auto }")
            .container()
            .place,
        project::ContainerPlace::End);
}

// CSS Grid 2 § 7.2 and § 12: fixed columns, shares of what is left, places.
TEST(ThemePage, ReadsColumnsOfGrids) {
    const std::string opening = "<div class=outer><nav></nav><div class=wrap>";
    const auto boxOf = [&](const std::string& columns, const std::string& place = "") {
        return pageOf(".outer { display: grid; gap: 20px; padding: 0 10px; grid-template-columns: " +
                          columns + " } .wrap {" + place + "}",
                      opening);
    };
    const project::Container fixed = boxOf("200px 1fr").container();
    EXPECT_EQ(fixed.width, units::Length::percent(100));
    EXPECT_EQ(fixed.padding.left, units::Length::px(230));
    EXPECT_EQ(fixed.padding.right, units::Length::px(10));
    const project::Container limited = boxOf("300px minmax(0, 700px)").container();
    EXPECT_EQ(limited.place, project::ContainerPlace::Start);
    EXPECT_EQ(limited.width, units::Length::px(1030));
    EXPECT_EQ(limited.padding.left, units::Length::px(330));
    const project::Container spanned = boxOf("repeat(4, 100px) 1fr", "grid-column: 1 / -1").container();
    EXPECT_EQ(spanned.padding.left, units::Length::px(10));
    EXPECT_EQ(boxOf("200px 1fr").cautions.size(), 0U);
    EXPECT_EQ(boxOf("auto 1fr").cautions.size(), 1U);
}

// A container that could not be read whole is not reported as certain.
TEST(ThemePage, SaysTheContainerInASentence) {
    EXPECT_EQ(
        pageOf(".outer { padding: 0 24px } .wrap { max-width: 1000px; margin: 0 auto }").containerSentence(),
        "Container: 100\u00A0% of the viewport width, at most 1048\u00A0px, padding 24\u00A0px on each "
        "side.");
    EXPECT_EQ(pageOf(".wrap { display: inline-block }").containerSentence(),
              "Container (assumed): 100\u00A0% of the viewport width.");
}

}  // namespace
}  // namespace tenter::markup
