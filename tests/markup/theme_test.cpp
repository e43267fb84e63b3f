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
    return PageStyles(sheetsOf(page, "", report)).affecting(page, byClass(page, "row"));
}

TEST(Theme, KeepsTheRulesThatAffectTheRow) {
    EXPECT_EQ(
        themed(".row { float: left } .menu { float: right } .row .tide:hover { color: red !important }"),
        ".row { float: left; } /* :1:8 */\n.row .tide:hover { color: red !important; } /* :1:52 */\n");
}

// CSS Conditional 3 § 2, CSS Cascade 5 § 6.4: what a rule stands in decides when it holds and over what it
// wins.
TEST(Theme, KeepsTheAtRulesAroundRules) {
    EXPECT_EQ(
        themed("@layer base { @media (min-width: 700px) { .tide { margin: 0 } } }"),
        "@layer base;\n@layer base { @media (min-width: 700px) { .tide { margin: 0; } } } /* :1:50 */\n");
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
              "@media print { .tide { float: left; } } /* look.css:1:1 */\n");
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
              "@layer early { @media screen { .tide { order: 3; } } } /* inner.css:2:1 */\n"
              "@layer late { .tide { order: 1; } } /* all.css:3:15 */\n"
              ".tide { order: 2; } /* all.css:4:1 */\n");
    EXPECT_EQ(report.size(), 0U);
    std::filesystem::remove_all(folder);
}

TEST(Theme, NamesThePlaceOfARuleInAStyleElement) {
    const Tree page = treeOf(
        "<p>Ö</p>\n<style>\n.menu { color: red }\t.tide { order: 1 }</style><div class=row><p "
        "class=tide>Low</p></div><style> .row { order: 2 }</style>");
    std::vector<std::string> report;
    EXPECT_EQ(PageStyles(sheetsOf(page, "saved/page.html", report)).affecting(page, byClass(page, "row")),
              ".tide { order: 1; } /* page.html:3:22 */\n"
              ".row { order: 2; } /* page.html:3:98 */\n");
}

TEST(Theme, NamesTheFileOfARule) {
    const std::string theme = "a { b: c; }\n.tide { order: 3; } /* inner.css:2 */\n";
    EXPECT_EQ(originOfRule(theme, 2), "inner.css:2");
    EXPECT_EQ(originOfRule(theme, 1), "");
    EXPECT_EQ(originOfRule(theme, 9), "");
}

// Pasted text has no file.
TEST(Theme, NamesThePlaceOfARuleInPastedText) {
    EXPECT_EQ(originOfRule(".tide { order: 3; } /* :12:3 */\n", 1), ":12:3");
    EXPECT_EQ(placeInWords(":12:3"), "line 12, column 3 of the pasted text");
    EXPECT_EQ(placeInWords("look.css:12:3"), "look.css:12:3");
    EXPECT_EQ(withPlacesInWords(
                  "@layer a;\n.a { b: c; } /* :1:27 */\n.d { e: f; } /* look.css:12:3 */\nx /* :1:2 */"),
              "@layer a;\n.a { b: c; } /* line 1, column 27 of the pasted text */\n"
              ".d { e: f; } /* look.css:12:3 */\nx /* :1:2 */");
    const Tree tree = treeOf("<div class=wrap><div class=row><p>Low</p></div></div>");
    const css::Sheet sheet = css::readSheet("\n.wrap { width: 60vh }");
    const auto cautionOf = [&](const SheetPlace& place) {
        return themePage(tree, byClass(tree, "row"), sheet, 320, 1920, {place}).cautions.front().worded();
    };
    EXPECT_NE(cautionOf({"", 1}).find("width: 60vh (line 2 of the pasted text)"), std::string::npos);
    EXPECT_NE(cautionOf({"page.html", 5}).find("width: 60vh (page.html:6)"), std::string::npos);
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
    ASSERT_EQ(page.cautions.size(), 1U);
    EXPECT_EQ(page.cautions[0].worded(),
              "The <div class=\"wrap\"> around the row has width: calc(100% - 3vh) "
              "(line 1 of a style element), which is not supported. Check the "
              "container in the project.");
    EXPECT_EQ(page.unread, page.cautions);
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

/// The content box that a container has at a viewport width: its left edge and its width.
std::pair<double, double> contentBoxOf(const project::Container& container, double width) {
    units::LengthBasis basis;
    basis.percent = basis.vw = width;
    double outer = container.width.resolve(basis);
    if (!container.maxWidth.isNone()) outer = std::min(outer, container.maxWidth.resolve(basis));
    outer += container.addedWidth;
    const double left = container.padding.left.value_or(units::Length()).resolve(basis);
    const double right = container.padding.right.value_or(units::Length()).resolve(basis);
    double start = std::max(0.0, (width - outer) / 2);
    if (container.place == project::ContainerPlace::Start) start = 0;
    if (container.place == project::ContainerPlace::End) start = std::max(0.0, width - outer);
    start += container.shift.percent / 100 * width + container.shift.px;
    return {start + left, outer - left - right};
}

void expectBox(const ThemePage& page, double width, double left, double content) {
    EXPECT_EQ(page.unread.size(), 0U) << page.unread.front().worded();
    const auto range =
        std::ranges::find_if(page.ranges, [&](const ThemeRange& one) { return width <= one.upTo; });
    const auto [x, w] = contentBoxOf(range->container, width);
    EXPECT_NEAR(x, left, 0.01) << width;
    EXPECT_NEAR(w, content, 0.01) << width;
}

// CSS 2 § 10.3.3: places that are neither in the centre nor at a side.
TEST(ThemePage, PutsTheContainerBesideTheCentre) {
    const ThemePage share = pageOf(
        ".outer { margin-left: 12.5%; width: 75%; padding-right: 40px; box-sizing: border-box } "
        ".wrap { padding-left: 6% }");
    expectBox(share, 1000, 125 + 0.06 * 710, 710 - 0.06 * 710);
    expectBox(share, 400, 50 + 0.06 * 260, 260 - 0.06 * 260);
    const ThemePage wide = pageOf(
        ".outer { max-width: 1400px; width: 87.5%; padding-left: 12.5%; margin: 0 auto; box-sizing: "
        "border-box }");
    expectBox(wide, 1800, 200 + 225, 1400 - 225);
    expectBox(wide, 1000, 62.5 + 125, 750);
    const ThemePage overflowing = pageOf(".outer { width: 100%; padding: 0 30px 0 10px }");
    expectBox(overflowing, 700, 10, 700);
}

// CSS 2 § 9.5.1: floats beside each other.
TEST(ThemePage, PutsFloatsBesideEachOther) {
    const std::string halves = "<div class=outer><div class=half></div><div class=half>";
    const std::string css = ".half { float: left; width: 50%; padding: 0 15px; box-sizing: border-box }";
    expectBox(pageOf(css, halves), 1000, 515, 470);
    expectBox(pageOf(css + ".half { width: 60% }", halves), 1000, 15, 570);
    expectBox(pageOf(css + ".half { float: right }", halves), 1000, 15, 470);
}

// CSS 2 § 9.2.2 and CSS Text 3 § 6.1: a box in a line alone.
TEST(ThemePage, AlignsABoxInALine) {
    expectBox(pageOf(".outer { text-align: center } .wrap { display: inline-block; width: 80% }"), 1000, 100,
              800);
    EXPECT_EQ(pageOf(".wrap { display: inline-block; width: 80% }", "<div class=outer>Low<div class=wrap>")
                  .unread.size(),
              1U);
}

// CSS Grid 2 § 7.1, § 8.1 and § 12.
TEST(ThemePage, PutsTheContainerIntoNamedColumns) {
    const std::string lines =
        ".outer { display: grid; grid-template-columns: [all-start] minmax(1rem, 1fr) [main-start] minmax(0, "
        "60rem) [main-end] minmax(1rem, 1fr) [all-end] } .wrap { grid-column: main }";
    expectBox(pageOf(lines), 600, 16, 568);
    expectBox(pageOf(lines), 1600, 320, 960);
    expectBox(pageOf(lines + " .wrap { grid-column: all }"), 600, 0, 600);
    expectBox(pageOf(".outer { display: grid; grid: 'top top' 'side main' / 200px 1fr; column-gap: 20px } "
                     ".wrap { grid-area: main }"),
              1000, 220, 780);
    expectBox(pageOf(".outer { display: grid; grid-template-columns: auto minmax(0, 1fr) auto; "
                     "grid-template-areas: 'a b c' } .wrap { "
                     "grid-area: b }"),
              1000, 0, 1000);
    EXPECT_EQ(pageOf(".outer { display: grid; grid-template-columns: auto 1fr }").unread.size(), 1U);
}

TEST(ThemePage, SaysWhatMovesTheContainer) {
    for (const char* css : {"writing-mode: vertical-rl", "zoom: 1.25", "transform: rotate(2deg)",
                            "padding: 0 2vmin", "column-width: 200px", "overflow: hidden scroll",
                            "position: relative; left: 2vmin", "width: fit-content", "position: absolute",
                            "position: absolute; left: 0", "position: fixed; right: 0; width: max-content"})
        EXPECT_EQ(pageOf(std::string(".wrap { ") + css + " }").unread.empty(), false) << css;
    for (const char* css : {"writing-mode: initial", "zoom: 1", "transform: none", "position: relative"})
        EXPECT_EQ(pageOf(std::string(".wrap { ") + css + " }").unread.size(), 0U) << css;
}

TEST(ThemePage, OrdersFlexItems) {
    const std::string two = "<div class=outer><div class=side></div><div class=wrap>";
    const std::string css = ".outer { display: flex } .side { width: 200px } .wrap { flex: 1 } ";
    expectBox(pageOf(css, two), 1000, 200, 800);
    expectBox(pageOf(css + ".side { order: 1 }", two), 1000, 0, 800);
    expectBox(pageOf(css + ".outer { flex-direction: row-reverse }", two), 1000, 0, 800);
}

// CSS Flexbox 1 § 9.7: growing and shrinking, with items at their limits.
TEST(ThemePage, SizesFlexItems) {
    const std::string two = "<div class=outer><div class=side></div><div class=wrap>";
    const std::string css = ".outer { display: flex } ";
    expectBox(pageOf(css + ".side { flex: 1 1 100px; max-width: 150px } .wrap { flex: 1 1 300px }", two),
              1000, 150, 850);
    expectBox(pageOf(css + ".side { flex: 0 0 280px } .wrap { width: 100% }", two), 1000, 280, 720);
    expectBox(pageOf(css + ".side { width: 50% } .wrap { width: 75% }", two), 1000, 400, 600);
    expectBox(pageOf(css + ".side { width: 20%; min-width: 200px } .wrap { width: 100% }", two), 500, 200,
              300);
    // The line breaks where the items no longer fit: at 620 px.
    const ThemePage wraps = pageOf(
        css + ".outer { flex-wrap: wrap; gap: 20px } .side { flex: 1 1 200px } .wrap { flex: 1 1 400px }",
        two);
    expectBox(wraps, 619, 0, 619);
    expectBox(wraps, 621, 220.5, 400.5);
    const std::string widths = ".side { width: 200px } .wrap { width: 500px } ";
    expectBox(pageOf(css + widths + ".outer { justify-content: space-between }", two), 1000, 500, 500);
    expectBox(pageOf(css + widths + ".outer { justify-content: space-evenly }", two), 1000, 400, 500);
    expectBox(pageOf(css + widths + ".wrap { margin-left: auto }", two), 1000, 500, 500);
    EXPECT_EQ(pageOf(css + ".side { width: 300px } .wrap { width: 100% }", two).unread.size(), 1U);
}

// CSS 2 § 17.5.2, CSS Positioned Layout 3 § 3 and § 4.
TEST(ThemePage, PlacesCellsAndPositionedElements) {
    const std::string two = "<div class=outer><div class=side></div><div class=wrap>";
    const std::string cells = ".outer { display: table; width: 100% } .side, .wrap { display: table-cell } ";
    expectBox(pageOf(cells + ".outer { border-spacing: 10px } .side { width: 200px }", two), 1000, 220, 770);
    expectBox(pageOf(cells + ".side { width: 30% } .wrap { padding: 0 20px }", two), 1000, 320, 660);
    expectBox(pageOf(cells + ".outer { table-layout: fixed }", two), 1000, 500, 500);
    EXPECT_EQ(pageOf(cells, two).unread.size(), 1U);
    expectBox(
        pageOf(".outer { position: relative; margin: 0 100px; padding: 0 10px } .wrap { position: absolute; "
               "left: 5%; right: 40px }"),
        1000, 140, 720);
    expectBox(pageOf(".wrap { position: absolute; right: 10%; width: 300px }"), 1000, 600, 300);
    expectBox(pageOf(".wrap { position: fixed; left: 0; right: 0; width: 400px; margin: auto }"), 1000, 300,
              400);
    expectBox(pageOf(".outer { padding: 0 100px } .wrap { position: relative; left: 50%; width: 100vw; "
                     "margin-left: -50vw }"),
              1000, 0, 1000);
    expectBox(pageOf(".outer { padding: 0 100px } .wrap { position: relative; left: 50%; width: 900px; "
                     "transform: translate(-50%, 3px) translateZ(0) }"),
              1000, 50, 900);
    expectBox(pageOf(".wrap { position: relative; right: 7px; translate: 2px }"), 1000, -5, 1000);
}

TEST(ThemePage, SaysWhatDependsOnTheHeightOfTheWindow) {
    for (const char* condition : {"(orientation: portrait)", "(min-height: 700px) and (min-width: 900px)",
                                  "screen and (max-width: 600px) and (min-aspect-ratio: 1/1)"})
        EXPECT_EQ(pageOf(std::string("@media ") + condition + " { .wrap { padding: 0 9px } }").unread.size(),
                  1U)
            << condition;
    for (const char* condition :
         {"print and (orientation: portrait)", "(min-width: 700px)", "(hover: hover)"})
        EXPECT_EQ(pageOf(std::string("@media ") + condition + " { .wrap { padding: 0 9px } }").unread.size(),
                  0U)
            << condition;
    EXPECT_EQ(pageOf("@media (min-height: 700px) { .wrap { margin-top: 9px; color: red } }").unread.size(),
              0U);
}

// CSS 2 § 10.3.3: an over-constrained box stands at the start of its containing block.
TEST(ThemePage, UsesTheDirectionOfTheContainingBlock) {
    expectBox(pageOf(".outer { direction: rtl } .wrap { direction: ltr; width: 80% }"), 1000, 200, 800);
    expectBox(pageOf(".wrap { direction: rtl; width: 80% }"), 1000, 0, 800);
    expectBox(pageOf(".wrap { padding: 0 calc((100vw - 1200px)/2) }"), 1000, 0, 1000);
    expectBox(pageOf(".wrap { padding: 0 calc((100vw - 1200px)/2) }"), 1600, 200, 1200);
}

// CSS Grid 2 § 7.2.3.2.
TEST(ThemePage, RepeatsColumnsToFill) {
    const std::string two = "<div class=outer><div class=side></div><div class=wrap>";
    const std::string grid = ".outer { display: grid; gap: 20px; grid-template-columns: ";
    const ThemePage fill = pageOf(grid + "repeat(auto-fill, minmax(200px, 1fr)) }", two);
    expectBox(fill, 600, 310, 290);
    expectBox(fill, 639, 329.5, 309.5);
    expectBox(fill, 641, 220.333, 200.333);
    expectBox(pageOf(grid + "repeat(auto-fit, minmax(min(100%, 200px), 1fr)) }", two), 1000, 510, 490);
    expectBox(pageOf(grid + "repeat(auto-fill, 150px) }", two), 1000, 170, 150);
    EXPECT_EQ(pageOf(grid + "200px repeat(auto-fill, 150px) }", two).unread.size(), 1U);
}

// Browsers make borders whole px wide.
TEST(ThemePage, StepsBordersThatFollowTheViewport) {
    const ThemePage page = pageOf(".wrap { border: 0 solid; border-left-width: clamp(1px, .2vw, 4px) }");
    expectBox(page, 900, 1, 899);
    expectBox(page, 1100, 2, 1098);
    expectBox(page, 1900, 3, 1897);
}

// Lengths relative to the font size of the row, which the stylesheet changes.
TEST_F(Facts, ComputeMarginsRelativeToTheFont) {
    const auto above = [&](const std::string& css) {
        return ThemeFacts(tree, css).fontRelative(byClass(tree, "row"), "margin-top");
    };
    EXPECT_EQ(above(".row { font-size: 20px; margin-top: 2em }"), "40px");
    EXPECT_EQ(above("body { font-size: calc(10px + 1vw) } .row { margin-top: 1em }"), "calc(10px + 1vw)");
    EXPECT_EQ(above(".row { margin-top: 2em }"), std::nullopt);
    EXPECT_EQ(above(".row { font-size: 20px; margin-top: 2rem }"), std::nullopt);
    EXPECT_EQ(
        above(".row { font-size: 20px; margin-top: 2em } @media (min-width: 700px) { .row { margin: 0 } }"),
        std::nullopt);
}

TEST_F(Facts, ExpandLogicalProperties) {
    const ThemeFacts facts(tree,
                           ".tide { margin-block-start: 1rem; border-block-end: 1px solid; min-inline-size: "
                           "3px; padding-inline: 0 }");
    EXPECT_TRUE(facts.valueOf(tide, "margin-top", "0", false).differs);
    EXPECT_TRUE(facts.valueOf(tide, "border", "0", false).differs);
    EXPECT_TRUE(facts.valueOf(tide, "min-width", "0", false).differs);
    EXPECT_FALSE(facts.valueOf(tide, "padding-left", "0", false).differs);
}

// CSS Transitions 1 § 2.2: without a list of properties a duration is for all of them.
TEST_F(Facts, KnowTransitionsByDurationAndAnimations) {
    EXPECT_TRUE(ThemeFacts(tree, ".tide { transition-duration: 1s }")
                    .valueOf(tide, "transition", "none", false)
                    .differs);
    EXPECT_FALSE(ThemeFacts(tree, ".tide { transition-duration: 1s; transition-property: color }")
                     .valueOf(tide, "transition", "none", false)
                     .differs);
    EXPECT_TRUE(
        ThemeFacts(tree, ".tide { animation-name: rise }").valueOf(tide, "animation", "none", false).differs);
    EXPECT_FALSE(
        ThemeFacts(tree, ".tide { animation: none }").valueOf(tide, "animation", "none", false).differs);
}

// Siblings that are not kept can make a selector match or not.
TEST_F(Facts, KnowNegativeLengthsBesideUnknownSiblings) {
    const ThemeFacts facts(tree,
                           ".row { margin-top: -9px } .row:first-child { margin-top: 0 } .row:last-child { "
                           "margin-bottom: -9px }");
    EXPECT_TRUE(facts.canBeNegative(byClass(tree, "row"), "margin-top"));
    EXPECT_TRUE(facts.canBeNegative(byClass(tree, "row"), "margin-bottom"));
}

}  // namespace
}  // namespace tenter::markup
