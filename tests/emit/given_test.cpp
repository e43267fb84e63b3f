// Stylesheets for markup that a page prints already. Whether they hold in browsers is checked in
// tests/engines.
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

#include "emit/page.h"
#include "emit/saved_page.h"
#include "emit/stylesheet.h"
#include "markup/adopt.h"
#include "sample.h"

namespace tenter::emit {
namespace {

using tests::count;

/// The walks with the row of a page that says `theme` of it.
project::Project adopted(const std::string& theme, const std::string& attributes = {}) {
    const std::string html =
        "<style>" + theme +
        "</style><div class=deck><div class=\"pools walks-pair\">"
        "<div class=pool " +
        attributes +
        "><h3>Low tide</h3><p>Boots that may get wet, and an hour to spare.</p>"
        "<div class=pool-foot><a class=dive href=\"#low\">Book</a></div></div>"
        "<div class=pool><h3>High tide</h3><p>Sit on the wall, and let it come to you.</p>"
        "<div class=pool-foot><a class=dive href=\"#high\">Book</a></div></div>"
        "</div></div>";
    markup::PageToAdopt page;
    page.bytes = html;
    project::Problems problems;
    const auto found = markup::adopt(tests::walks(), page, problems);
    EXPECT_TRUE(found.has_value());
    return found ? found->project : tests::walks();
}

std::string sheetOf(const project::Project& project) {
    project::Problems problems;
    const auto sheet = givenStylesheet(project, {}, problems);
    EXPECT_TRUE(sheet.has_value());
    EXPECT_TRUE(problems.empty());
    return sheet.value_or("");
}

/// The rule that starts with `selector`, up to its end.
std::string ruleOf(const std::string& sheet, const std::string& selector) {
    const std::size_t start = sheet.find("\n" + selector + " {");
    return start == std::string::npos ? "" : sheet.substr(start, sheet.find('}', start) - start);
}

TEST(GivenStylesheet, SaysThePagesOwnSelectors) {
    const std::string sheet = sheetOf(adopted("h3 { color: red }"));
    EXPECT_NE(ruleOf(sheet, ".walks-pair .pool"), "");
    EXPECT_NE(ruleOf(sheet, ".walks-pair .dive"), "");
    EXPECT_EQ(sheet.find("walks-card"), std::string::npos);
}

// CSS Display 3 § 2.5: a box with `display: contents` is as if its children stood in its place.
TEST(GivenStylesheet, MakesWrappersDisplayContents) {
    EXPECT_NE(
        ruleOf(sheetOf(adopted("h3 { color: red }")), ".walks-pair .pool-foot").find("display: contents;"),
        std::string::npos);
}

TEST(GivenStylesheet, ResetsWhatTheThemeSetsAndNothingElse) {
    const std::string plain = sheetOf(adopted("h3 { color: red }"));
    EXPECT_EQ(plain.find("float"), std::string::npos);
    EXPECT_EQ(plain.find("::before"), std::string::npos);
    const std::string floated = sheetOf(adopted(
        ".pool { float: left } .pools::before { content: ' '; display: table } @media (min-width: 700px) "
        "{ .pool p { max-width: 60ch } }"));
    EXPECT_NE(ruleOf(floated, ".walks-pair .pool").find("float: none; /* overrides the theme's columns */"),
              std::string::npos)
        << floated;
    EXPECT_NE(ruleOf(floated, ".walks-pair::before").find("content: none;"), std::string::npos);
    EXPECT_NE(ruleOf(floated, ".walks-pair .pool p").find("max-width: none;"), std::string::npos);
}

// Common practice, no source: what themes usually do.
TEST(GivenStylesheet, IsCautiousWhileTheThemeIsNotKnown) {
    const std::string sheet = sheetOf(adopted(""));
    EXPECT_NE(ruleOf(sheet, ".walks-pair .pool").find("float: none;"), std::string::npos);
    EXPECT_NE(ruleOf(sheet, ".walks-pair::after").find("content: none;"), std::string::npos);
}

// CSS Cascade 5 § 6.4 and Selectors 4 § 17: of two rules the more specific wins, of equal ones the later.
TEST(GivenStylesheet, IsAsSpecificAsTheTheme) {
    const std::string equal = sheetOf(adopted(".pools .pool { margin: 9px }"));
    EXPECT_NE(ruleOf(equal, ".walks-pair .pool"), "");
    const std::string more = sheetOf(adopted(".deck .pools .pool { margin: 9px }"));
    EXPECT_NE(ruleOf(more, ".walks-pair.walks-pair .pool"), "") << more;
    EXPECT_NE(more.find("/* As specific as the theme's selector \".deck .pools .pool\". */"),
              std::string::npos);
    const std::string id = sheetOf(adopted("#low-pool { margin: 9px }", "id=low-pool"));
    EXPECT_NE(ruleOf(id, ".walks-pair:not(#_) .pool"), "") << id;
    // What the theme says with the same words needs no strength.
    EXPECT_NE(ruleOf(sheetOf(adopted(".deck .pools .pool { min-width: 0 }")), ".walks-pair .pool"), "");
}

// A rule of a narrower band must win over that of a wider one, and what holds under the pointer over both.
TEST(GivenStylesheet, HasTheSameSpecificityInEveryBand) {
    project::Project project =
        adopted(".deck .pools .pool { padding: 9px } .deck .pools .dive { color: red }");
    project.row().variants[0].bands[0].set.card.padding.top = units::Length::px(3);
    const std::string sheet = sheetOf(project);
    EXPECT_EQ(count(sheet, "\n  .walks-pair .pool {"), 0U) << sheet;
    EXPECT_EQ(count(sheet, "\n  .walks-pair .dive:hover"), 0U) << sheet;
}

// CSS Cascade 5 § 6.4.3: only an important declaration wins over an important one, or over a style attribute.
TEST(GivenStylesheet, IsImportantOnlyWhereTheThemeIs) {
    const std::string sheet = sheetOf(adopted(".pool p { margin: 3px !important }"));
    EXPECT_EQ(count(sheet, "!important"), 1U) << sheet;
    EXPECT_NE(ruleOf(sheet, ".walks-pair .pool p").find(" !important; /* the theme marks it important"),
              std::string::npos)
        << sheet;
    const std::string styled = sheetOf(adopted("h3 { color: red }", "style=\"padding: 3px\""));
    EXPECT_EQ(count(styled, "!important"), 1U) << styled;
}

// CSS Cascade 5 § 6.1: against `!important` in a layer, or in a style attribute, no rule outside can win.
TEST(GivenStylesheet, SaysWhatNoStylesheetCanOverride) {
    const std::string layered = sheetOf(adopted("@layer base { .pool p { margin: 3px !important } }"));
    EXPECT_NE(layered.find("No stylesheet can override the theme's margin: \".pool p\" in line 1, column 22 "
                           "of the pasted text "
                           "sets it with !important in a layer"),
              std::string::npos)
        << layered;
    const std::string styled = sheetOf(adopted("h3 { color: red }", "style=\"padding: 3px !important\""));
    EXPECT_NE(
        styled.find("No stylesheet can override the theme's padding: \"style attribute\" sets it with "),
        std::string::npos)
        << styled;
    EXPECT_EQ(sheetOf(adopted(".pool p { margin: 3px !important }")).find("can override"), std::string::npos);
}

/// The walks with a page's row of pictures, the second with a ratio of its own, the third with a focal point.
project::Project withPictures(const std::string& theme) {
    const std::string html =
        "<style>h3 { margin: 0 } " + theme +
        "</style><div class=\"pools walks-pair\">"
        "<div class=pool id=tide><img src=a.png width=300 height=200><h3>Low tide</h3></div>"
        "<div class=pool><img src=b.png width=300 height=200><h3>High tide</h3></div>"
        "<div class=pool><img src=c.png width=300 height=200><h3>No tide</h3></div></div>";
    markup::PageToAdopt page;
    page.bytes = html;
    project::Problems problems;
    project::Project project = markup::adopt(tests::walks(), page, problems)->project;
    std::get<project::PicturePart>(project.row().cards[1].parts[0]).ratio = project::Ratio{1, 1};
    std::get<project::PicturePart>(project.row().cards[2].parts[0]).focusX = 0.2;
    return project;
}

TEST(GivenStylesheet, SaysEachPicturesOwnRatioAndFocalPoint) {
    const std::string sheet = sheetOf(withPictures(""));
    EXPECT_EQ(count(sheet, "aspect-ratio: 1 / 1; /* only for this picture */"), 1U) << sheet;
    EXPECT_EQ(count(sheet, "object-position: 20% 50%;"), 1U) << sheet;
    EXPECT_NE(sheet.find("div:nth-of-type(2) > img"), std::string::npos) << sheet;
    // With none of their own, pictures need no places.
    EXPECT_EQ(sheetOf(adopted("h3 { color: red }")).find(":nth"), std::string::npos);
}

// However strong the theme makes the rule for all, that for one is stronger; and by class where there is one.
TEST(GivenStylesheet, OverridesTheRatioOfAllPicturesByThatOfOne) {
    project::Project project = withPictures("#tide img, .pools .pool .pool img { aspect-ratio: 2 / 1 }");
    std::get<project::PicturePart>(project.row().cards[0].parts[0]).ratio = project::Ratio{1, 1};
    std::get<project::PicturePart>(project.row().cards[2].parts[0]) =
        std::get<project::PicturePart>(project.row().cards[1].parts[0]);
    const std::string alike = sheetOf(project);
    // All three are alike now, so one selector serves both rules: the second is stronger by the class.
    EXPECT_NE(ruleOf(alike, ".walks-pair:not(#_).walks-pair .pool img").find("aspect-ratio: 1 / 1;"),
              std::string::npos)
        << alike;
}

TEST(GivenStylesheet, IsRefusedWithoutGivenMarkup) {
    project::Problems problems;
    EXPECT_FALSE(givenStylesheet(tests::walks(), {}, problems).has_value());
    ASSERT_EQ(problems.size(), 1U);
    EXPECT_EQ(problems[0].place, "/given");
}

std::string pageOf(const project::Project& project, project::Problems& problems) {
    text::Fonts fonts;
    text::ParagraphStore store(fonts);
    return page(project, 0, {}, store, problems);
}

TEST(GivenPage, PrintsThePagesMarkupWithEditedCopy) {
    project::Project project = adopted("h3 { color: red }");
    std::get<project::TextPart>(project.row().cards[0].parts[0]).copy = {
        {project::Run::Kind::Plain, "Low <tide>, ", {}}, {project::Run::Kind::Strong, "early", {}}};
    std::get<project::TextPart>(project.row().cards[0].parts[2]).link = "#early";
    project::Problems problems;
    const std::string html = pageOf(project, problems);
    EXPECT_TRUE(problems.empty());
    EXPECT_NE(html.find("<div class=\"pool\" data-tenter-card=\"0\">"), std::string::npos) << html;
    EXPECT_NE(html.find(">Low &lt;tide&gt;, <strong>early</strong></h3>"), std::string::npos) << html;
    EXPECT_NE(html.find("href=\"#early\""), std::string::npos);
    EXPECT_EQ(html.find("<article"), std::string::npos);
}

std::string savedPageOf(const project::Project& project, const std::string& html,
                        project::Problems& problems) {
    text::Fonts fonts;
    text::ParagraphStore store(fonts);
    return savedPageWithStylesheet(project, 0, {}, {html, "saved.html"}, store, problems);
}

const std::string savedRow =
    "<div class=deck><div class=\"pools\"><div class=pool ><h3>Low tide</h3><p>Boots that may get wet, and "
    "an hour "
    "to spare.</p><div class=pool-foot><a class=dive href=\"#low\">Book</a></div></div><div "
    "class=pool><h3>High "
    "tide</h3><p>Sit on the wall, and let it come to you.</p><div class=pool-foot><a class=dive "
    "href=\"#high\">Book</a></div></div></div></div>";

// CSP 3 § 3.3: with these directives nothing is run, and nothing fetched but what the page holds itself.
TEST(SavedPage, IsTheSavedPageWithTheStylesheetLastAndNothingThatRuns) {
    project::Problems problems;
    const std::string page = savedPageOf(
        adopted("h3 { color: red }"),
        "<html class=tidal><head><link rel=stylesheet href=https://theme.example/far.css>"
        "<style media=screen>h3 { color: red }</style><script>go()</script></head><body onload=go()>"
        "<h1>Pools</h1><img src=https://theme.example/far.png width=30 height=20>" +
            savedRow + "<footer>Tides</footer></body></html>",
        problems);
    EXPECT_TRUE(problems.empty()) << problems.front().what;
    EXPECT_EQ(page.find("go()"), std::string::npos);
    EXPECT_EQ(page.find("theme.example"), std::string::npos);
    EXPECT_NE(page.find("default-src 'none'"), std::string::npos);
    EXPECT_LT(page.find("<style media=\"screen\">h3 { color: red }"), page.find(".walks-pair .pool {"));
    EXPECT_NE(page.find("<html class=\"tidal\">"), std::string::npos);
    EXPECT_NE(page.find("<h1>Pools</h1>"), std::string::npos);
    EXPECT_NE(page.find("<footer>Tides</footer>"), std::string::npos);
    EXPECT_NE(page.find("<div class=\"pools walks-pair\" data-tenter-row>"), std::string::npos);
    EXPECT_EQ(count(page, "data-tenter-part="), 6U);
}

TEST(SavedPage, ReportsTextThatDiffersFromTheProjects) {
    project::Problems problems;
    std::string changed = savedRow;
    changed.replace(changed.find("Sit on"), 6, "Stay at");
    EXPECT_NE(savedPageOf(adopted("h3 { color: red }"), changed, problems), "");
    ASSERT_EQ(problems.size(), 1U);
    EXPECT_EQ(problems[0].place, "/cards/1/parts/1");
}

TEST(SavedPage, IsRefusedWhereTheRowIsNotCertain) {
    project::Problems problems;
    EXPECT_EQ(savedPageOf(adopted("h3 { color: red }"), "<h1>Pools</h1>", problems), "");
    ASSERT_EQ(problems.size(), 1U);
    EXPECT_NE(problems[0].what.find("No element of the page has the class of a variant."), std::string::npos);
    // Two alike, neither with the row's words: which is meant cannot be told.
    problems.clear();
    std::string changed = savedRow;
    changed.replace(changed.find("Sit on"), 6, "Stay at");
    EXPECT_EQ(savedPageOf(adopted("h3 { color: red }"), changed + changed, problems), "");
    EXPECT_EQ(problems.size(), 1U);
}

// HTML § 13.1.2.6: a style element ends at its end tag, whatever the CSS means by it.
TEST(SavedPage, KeepsEveryStyleSheetInsideItsElement) {
    const std::filesystem::path folder = std::filesystem::path(TENTER_BINARY_DIR) / "saved-page-test";
    std::filesystem::create_directories(folder);
    std::ofstream(folder / "look.css") << "h3::after { content: '</style><script>go()</script>' }";
    project::Problems problems;
    text::Fonts fonts;
    text::ParagraphStore store(fonts);
    const std::string page = savedPageWithStylesheet(
        adopted("h3 { color: red }"), 0, {},
        {"<link rel=stylesheet href=look.css>" + savedRow, folder / "saved.html"}, store, problems);
    EXPECT_NE(page.find("go()"), std::string::npos);
    EXPECT_EQ(page.find("</style><script>"), std::string::npos);
}

TEST(GivenPage, HasTheVariantsClass) {
    project::Project project = adopted("h3 { color: red }");
    text::Fonts fonts;
    text::ParagraphStore store(fonts);
    project::Problems problems;
    const std::string html = page(project, 1, {}, store, problems);
    EXPECT_NE(html.find("class=\"pools walks-trio\""), std::string::npos);
    EXPECT_NE(html.find(".walks-trio .pool {"), std::string::npos);
}

TEST(GivenPage, ReportsCardsThatTheMarkupLacks) {
    project::Project project = adopted("h3 { color: red }");
    project.row().cards.push_back(project.row().cards[0]);
    project.row().cards[0].parts.pop_back();
    project::Problems problems;
    const std::string html = pageOf(project, problems);
    ASSERT_EQ(problems.size(), 2U);
    EXPECT_EQ(problems[0].place, "/cards");
    EXPECT_EQ(problems[1].place, "/cards/0/parts");
    EXPECT_NE(html.find("Low tide"), std::string::npos);
}

}  // namespace
}  // namespace tenter::emit
