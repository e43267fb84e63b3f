// Which declaration wins, and what values are by width. Expected values follow from the standards named.
#include "css/cascade.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "css/longhands.h"
#include "css/media.h"
#include "tree.h"

namespace tenter::css {
namespace {

/// A page of html, body and one div, with a stylesheet.
struct Page {
    explicit Page(const std::string& css, Tree::Attributes attributes = {{"id", "a"}, {"class", "b"}},
                  const std::string& browser = "")
        : element(tree.add(tree.add(tree.add({}, "html"), "body"), "div", std::move(attributes))),
          own(readSheet(browser)),
          sheet(readSheet(css)),
          rules(tree, own, sheet) {}

    std::string value(const std::string& property, double width = 1000) const {
        Styles styles(rules, width - 1, width + 1, false);
        return styles.value(element, property);
    }
    std::optional<double> px(const std::string& property, double width = 1000) const {
        Styles styles(rules, width - 1, width + 1, false);
        const auto line = styles.length(element, property, Line{0, 1}, "auto");
        return line ? std::optional(line->atZero + line->perPx * width) : std::nullopt;
    }

    Tree tree;
    Elements::Element element;
    Sheet own;
    Sheet sheet;
    StyleRules rules;
};

// CSS Cascade 5 § 6.1: importance and origin, style attributes, layers, specificity, order.
TEST(Cascade, ComparesInTheOrderOfTheStandard) {
    EXPECT_EQ(Page("div { width: 1px } div { width: 2px }").value("width"), "2px");
    EXPECT_EQ(Page(".b { width: 1px } div { width: 2px }").value("width"), "1px");
    EXPECT_EQ(Page("div { width: 1px !important } #a { width: 2px }").value("width"), "1px");
    EXPECT_EQ(Page("@layer x { #a { width: 1px } } div { width: 2px }").value("width"), "2px");
    EXPECT_EQ(Page("@layer x { div { width: 1px !important } } #a { width: 2px !important }").value("width"),
              "1px");
    EXPECT_EQ(
        Page("@layer x, y; @layer y { div { width: 1px } } @layer x { #a { width: 2px } }").value("width"),
        "1px");
    EXPECT_EQ(Page("@layer x, y; @layer y { div { width: 1px !important } } @layer x { div { width: 2px "
                   "!important } }")
                  .value("width"),
              "2px");
    EXPECT_EQ(Page("#a { width: 1px }", Tree::Attributes{{"id", "a"}, {"style", "width:3px"}}).value("width"),
              "3px");
    EXPECT_EQ(Page("#a { width: 1px !important }", Tree::Attributes{{"id", "a"}, {"style", "width:3px"}})
                  .value("width"),
              "1px");
    EXPECT_EQ(Page("div { width: 1px }", Tree::Attributes{}, "div { width: 9px }").value("width"), "1px");
    EXPECT_EQ(Page(":where(#a) { width: 1px } div { width: 2px }").value("width"), "2px");
    EXPECT_EQ(Page(":is(#a, i) { width: 1px } .b { width: 2px }").value("width"), "1px");
}

// CSS Cascade 5 § 7.3.
TEST(Cascade, RollsBack) {
    const Tree::Attributes html{{"class", "b"}};
    EXPECT_EQ(Page("div { width: 1px } .b { width: revert }", html, "div { width: 9px }").value("width"),
              "9px");
    EXPECT_EQ(Page("@layer x { div { width: 1px } } .b { width: revert-layer }", html).value("width"), "1px");
    EXPECT_EQ(Page("body { width: 5px } div { width: inherit }", html).value("width"), "5px");
    EXPECT_EQ(Page("body { width: 5px } div { width: unset }", html).value("width"), "");
    EXPECT_EQ(Page("body { font-size: 5px } div { font-size: unset }", html).value("font-size"), "5px");
    EXPECT_EQ(Page("div { width: 1px } .b { all: unset }", html).value("width"), "");
    EXPECT_EQ(Page("div { width: 1px; width: initial }", html).value("width"), "");
}

// CSS Variables 1 § 2 and § 3.
TEST(Cascade, ReplacesVariables) {
    EXPECT_EQ(Page("html { --w: 4px } div { width: var(--w) }").value("width"), "4px");
    EXPECT_EQ(Page("html { --w: 4px } body { --w: 5px } div { width: var(--w) }").value("width"), "5px");
    EXPECT_EQ(Page("div { width: var(--none, var(--nor, 7px)) }").value("width"), "7px");
    EXPECT_EQ(Page("div { width: 3px; width: var(--none) }").value("width"), "");
    EXPECT_EQ(Page("div { --x: var(--y); --y: var(--x); width: var(--x, 6px) }").value("width"), "6px");
    EXPECT_EQ(Page("html { --w: 4px } div { --w: initial; width: var(--w, 6px) }").value("width"), "6px");
    EXPECT_EQ(Page("div { --pad: 1px 2px; padding: var(--pad) 3px }").value("padding-left"), "2px");
    EXPECT_EQ(Page("div { --x: 2; width: calc(var(--x) * 3px + 1em) }").px("width"), 22);
    EXPECT_EQ(
        Page("@property --w { syntax: '*'; inherits: false; initial-value: 8px } body { --w: 1px } div { "
             "width: var(--w) }")
            .value("width"),
        "8px");
}

// The text of a variable can grow exponentially.
TEST(Cascade, LimitsTheLengthOfVariables) {
    std::string css = "div { --v0: aaaaaaaaaa;";
    for (int i = 1; i < 40; ++i) {
        const std::string before = "var(--v" + std::to_string(i - 1) + ")";
        css += "--v" + std::to_string(i) + ":" + before + " " + before + ";";
    }
    EXPECT_EQ(Page(css + "width: var(--v39, 2px) }").value("width"), "2px");
}

// CSS Values 4 § 6; CSS Fonts 4 § 2.5: em of font-size is the parent's; a percentage of width is of the
// parent.
TEST(Cascade, ResolvesLengths) {
    EXPECT_EQ(Page("html { font-size: 62.5% } div { width: 3rem }").px("width"), 30);
    EXPECT_EQ(Page("body { font-size: 20px } div { font-size: 1.5em; width: 2em }").px("width"), 60);
    EXPECT_EQ(Page("body { font: 18px/1.5 serif } div { width: 2lh }").px("width"), 54);
    EXPECT_EQ(Page("html { line-height: 24px } div { width: 2rlh }").px("width"), 48);
    EXPECT_EQ(Page("div { width: min(50%, 30vw) }").px("width", 800), 240);
    EXPECT_EQ(Page("div { width: clamp(10px, 5vw, 40px) }").px("width", 1000), 40);
    EXPECT_EQ(Page("div { width: 1in }").px("width"), 96);
    EXPECT_EQ(Page("div { width: 2q }").px("width").has_value(), true);
    EXPECT_EQ(
        Page("body { font-size: 20px; width: 2em } div { font-size: 10px; width: inherit }").px("width"), 40);
    EXPECT_FALSE(Page("div { width: 3vh }").px("width").has_value());
}

TEST(Cascade, ReportsWhereAValueBends) {
    const Page page("div { width: clamp(100px, 50vw, 300px) }");
    Styles styles(page.rules, 0, 1000, false);
    const auto line = styles.length(page.element, "width", std::nullopt, "auto");
    EXPECT_EQ(line, (Line{100, 0}));
    EXPECT_EQ(styles.bends(), (std::set<double>{200, 600}));
    EXPECT_EQ(styles.smaller(Line{0, 1}, Line{500, 0}), (Line{0, 1}));
    EXPECT_TRUE(styles.bends().contains(500));
}

// Media Queries 4 § 2.4.3, CSS Conditional 3 § 2.
TEST(Cascade, HoldsConditions) {
    const std::string css =
        "@media (min-width: 600px) { @supports (display: grid) { div { width: 1px } } @media (width < 700px) "
        "{ "
        "div { width: 2px } } } @media (hover: hover) { div { height: 3px } } @supports (-ms-x: y) { div { "
        "height: "
        "4px } } @container (min-width: 1px) { div { height: 5px } }";
    const Page page(css);
    EXPECT_EQ(page.value("width", 500), "");
    EXPECT_EQ(page.value("width", 650), "2px");
    EXPECT_EQ(page.value("width", 800), "1px");
    EXPECT_EQ(page.value("height", 800), "3px");
    EXPECT_EQ(intervalEnds(page.rules, {page.element}, 320, 1920), (std::vector<double>{599.98, 699.98}));
    const Page other("@media (max-width: 600px) { div { width: 1px } }");
    EXPECT_EQ(intervalEnds(other.rules, {other.element}, 320, 1920), (std::vector<double>{600}));
}

TEST(Cascade, KnowsTheScreen) {
    EXPECT_TRUE(holdsOnScreen("screen and (prefers-color-scheme: light) and (min-height: 800px)", 900));
    EXPECT_FALSE(holdsOnScreen("(prefers-reduced-motion: reduce)", 900));
    EXPECT_FALSE(holdsOnScreen("(prefers-reduced-motion)", 900));
    EXPECT_FALSE(holdsOnScreen("print", 900));
    EXPECT_TRUE(holdsOnScreen("(hover) and (pointer: fine)", 900));
    EXPECT_FALSE(holdsOnScreen("(min-resolution: 2dppx)", 900));
    EXPECT_TRUE(holdsOnScreen("not all and (min-resolution: 2dppx)", 900));
}

// CSS Conditional 4 § 2.
TEST(Cascade, KnowsWhatBrowsersSupport) {
    EXPECT_TRUE(isSupported("(display: grid)"));
    EXPECT_TRUE(isSupported("((display: grid)) and (not (-ms-ime-align: auto))"));
    EXPECT_FALSE(isSupported("not (display: grid)"));
    EXPECT_TRUE(isSupported("selector(:focus-visible)"));
    EXPECT_FALSE(isSupported("(-webkit-touch-callout: none)"));
    EXPECT_TRUE(isSupported("(-ms-x: y) or (color: red)"));
    // Compared with CSS.supports() of Chromium and Firefox.
    for (const char* both : {"(display: -webkit-box)", "(position: sticky)", "(--a: b)", "(gap: 1px)",
                             "(-webkit-appearance: none)", "(padding: env(safe-area-inset-left))"})
        EXPECT_TRUE(isSupported(both)) << both;
    for (const char* none : {"(display: -ms-grid)", "(display: masonry)", "(position: -webkit-sticky)",
                             "(-webkit-hyphens: none)", "(-webkit-overflow-scrolling: touch)",
                             "(margin-trim: inline)", "(padding: constant(safe-area-inset-left))"})
        EXPECT_FALSE(isSupported(none)) << none;
    EXPECT_TRUE(isSupported("(display: grid) and (not (display: nonsense))"));
}

std::string longhands(std::string_view property, std::string_view value, bool rightToLeft = false) {
    std::string out;
    for (const Longhand& longhand : physicalLonghands(property, value, rightToLeft))
        out += longhand.property + "=" + longhand.value.value_or("?") + ";";
    return out;
}

// CSS Logical 1 § 4, CSS Flexbox 1 § 7.1, CSS Fonts 4 § 2.8, CSS Backgrounds 3 § 3.4.
TEST(Longhands, ArePhysicalAndHaveValues) {
    EXPECT_EQ(longhands("margin", "1px 2px"),
              "margin-top=1px;margin-right=2px;margin-bottom=1px;margin-left=2px;");
    EXPECT_EQ(longhands("margin-inline", "1px 2px"), "margin-left=1px;margin-right=2px;");
    EXPECT_EQ(longhands("margin-inline", "1px 2px", true), "margin-left=2px;margin-right=1px;");
    EXPECT_EQ(longhands("padding-inline-start", "3px"), "padding-left=3px;");
    EXPECT_EQ(longhands("padding-inline-start", "3px", true), "padding-right=3px;");
    EXPECT_EQ(longhands("max-inline-size", "9em"), "max-width=9em;");
    EXPECT_EQ(longhands("flex", "1"), "flex-grow=1;flex-shrink=1;flex-basis=0%;");
    EXPECT_EQ(longhands("flex", "0 0 25%"), "flex-grow=0;flex-shrink=0;flex-basis=25%;");
    EXPECT_EQ(longhands("flex", "none"), "flex-grow=0;flex-shrink=0;flex-basis=auto;");
    EXPECT_EQ(longhands("flex-flow", "row wrap"), "flex-direction=row;flex-wrap=wrap;");
    EXPECT_NE(longhands("font", "italic 18px/1.5 serif").find("font-size=18px;line-height=1.5;"),
              std::string::npos);
    EXPECT_NE(longhands("border", "solid 2px red").find("border-left-width=2px;border-left-style=solid;"),
              std::string::npos);
    EXPECT_EQ(longhands("padding", "var(--x)"),
              "padding-top=?;padding-right=?;padding-bottom=?;padding-left=?;");
    EXPECT_EQ(longhands("padding", "inherit").substr(0, 20), "padding-top=inherit;");
    EXPECT_EQ(longhands("order", "2"), "order=2;");
}

// CSS Cascade 6 § 2.5: elements inside a root and not inside a limit, both included.
TEST(Cascade, KnowsScopes) {
    EXPECT_EQ(Page("@scope (body) { div { width: 1px } }").value("width"), "1px");
    EXPECT_EQ(Page("@scope (#a) { :scope { width: 1px } }").value("width"), "1px");
    EXPECT_EQ(Page("@scope (#a) { > div { width: 1px } }").value("width"), "");
    EXPECT_EQ(Page("@scope (body) to (.b) { div { width: 1px } }").value("width"), "");
    EXPECT_EQ(Page("@scope (body) to (p) { > div, p::before { width: 1px } }").value("width"), "1px");
    EXPECT_EQ(Page("@scope (p, html) { & .b { width: 1px } } .b { width: 2px }").value("width"), "2px");
    EXPECT_EQ(Page("@scope (p, html) { :scope .b { width: 1px } } .b { width: 2px }").value("width"), "1px");
    EXPECT_EQ(Page("@scope (#a) { div { width: 1px } } div { width: 2px }").value("width"), "2px");
    EXPECT_EQ(Page("@scope { div { width: 1px } }").value("width"), "");
}

// CSS Conditional 5 § 4: the nearest container, with that name if there is one.
TEST(Cascade, HoldsConditionsOnContainers) {
    const Page page(
        "@container (min-width: 400px) { div { width: 1px } } "
        "@container hall (inline-size < 300px) { div { height: 2px } } body { container: hall / "
        "inline-size }");
    const auto values = [&](double width) {
        Styles styles(page.rules, 600, 1000, false);
        styles.setContainer(*page.tree.parent(page.element), Line{width, 0});
        return styles.value(page.element, "width") + " " + styles.value(page.element, "height");
    };
    EXPECT_EQ(values(400), "1px ");
    EXPECT_EQ(values(399), " ");
    EXPECT_EQ(values(299), " 2px");
    Styles growing(page.rules, 600, 1000, false);
    growing.setContainer(*page.tree.parent(page.element), Line{0, 0.5});
    static_cast<void>(growing.value(page.element, "width"));
    ASSERT_EQ(growing.bends().size(), 1U);
    EXPECT_NEAR(*growing.bends().begin(), 800, 0.021);
}

// CSS Values 4 § 6.1.1: 1ch is the advance of 0 in the font of the element.
TEST(Cascade, ReadsUnitsOfFonts) {
    const Page page(
        "html { font: 10px Root } div { font: italic 700 20px/1 Own, serif; width: 3ch; height: "
        "2rex; max-width: 5cap }");
    Styles styles(page.rules, 999, 1001, false);
    styles.fonts = [](const std::string& families, const std::string& weight, const std::string& style) {
        const bool isOwn = families == "own , serif" && weight == "700" && style == "italic";
        return isOwn ? FontMeasures{0.6, 0.4, 0.7, 1} : FontMeasures{0.5, 0.45, 0.8, 1};
    };
    const auto px = [&](const std::string& property) {
        return styles.length(page.element, property, std::nullopt, "auto").value_or(Line{-1, 0}).atZero;
    };
    EXPECT_DOUBLE_EQ(px("width"), 36);
    EXPECT_DOUBLE_EQ(px("height"), 9);
    EXPECT_DOUBLE_EQ(px("max-width"), 70);
    EXPECT_TRUE(styles.usedFonts());
    Styles without(page.rules, 999, 1001, false);
    EXPECT_FALSE(without.length(page.element, "width", std::nullopt, "auto").has_value());
    EXPECT_EQ(without.problems.size(), 1U);
}

// Each interval of an imported page is read, and the rules of a page can have any number of widths.
TEST(Cascade, HasABoundedNumberOfIntervals) {
    std::string css;
    for (int width = 400; width < 1400; ++width)
        css += "@media (min-width: " + std::to_string(width) + "px) { div { width: " + std::to_string(width) +
               "px } }";
    const Page page(css);
    const std::vector<double> ends = intervalEnds(page.rules, {page.element}, 320, 1920);
    EXPECT_EQ(ends.size(), mostIntervalEnds);
    EXPECT_EQ(intervalEnds(page.rules, std::vector(200, page.element), 320, 1920).size(), 10U);
    EXPECT_TRUE(std::is_sorted(ends.begin(), ends.end()));
    EXPECT_LT(ends.front(), 410);
    EXPECT_GT(ends.back(), 1390);
}

/// `count` times `piece`.
std::string times(const std::string& piece, int count) {
    std::string out;
    for (int i = 0; i < count; ++i)
        out += piece;
    return out;
}

// CSS Variables 1 § 3.3 allows a limit: each level takes a part of the stack.
TEST(Cascade, LimitsVariablesInsideEachOther) {
    std::string chain = "div { width: var(--v50); --v0: 7px;";
    for (int i = 1; i <= 50; ++i)
        chain += "--v" + std::to_string(i) + ": var(--v" + std::to_string(i - 1) + ");";
    EXPECT_EQ(Page(chain + "}").value("width"), "7px");
    std::string tooLong = "div { width: var(--v100000); --v0: 7px;";
    for (int i = 1; i <= 100000; ++i)
        tooLong += "--v" + std::to_string(i) + ": var(--v" + std::to_string(i - 1) + ");";
    EXPECT_EQ(Page(tooLong + "}").value("width"), "");
    EXPECT_EQ(Page("div { width: " + times("var(--no, ", 50) + "7px" + times(")", 50) + "}").value("width"),
              "7px");
    const int many = 100000;
    EXPECT_EQ(
        Page("div { width: " + times("var(--no, ", many) + "7px" + times(")", many) + "}").value("width"),
        "");
    EXPECT_EQ(Page("div { color: " + times("light-dark(", many) + "red" + times(",red)", many) + "}")
                  .value("color"),
              "");
}

// Each level reads all levels inside it, so that long values with many levels would take seconds.
TEST(Cascade, LimitsWhatVariablesInsideEachOtherRead) {
    const auto width = [](int levels, std::size_t spaces) {
        return Page("div { width: " + times("var(--no, ", levels) + "7px" + std::string(spaces, ' ') +
                    times(")", levels) + "}")
            .value("width");
    };
    EXPECT_EQ(width(90, 100), "7px");
    EXPECT_EQ(width(2, 20'000), "7px");
    EXPECT_EQ(width(90, 20'000), "");
}

}  // namespace
}  // namespace tenter::css
