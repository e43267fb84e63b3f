#include "emit/stylesheet.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "css_reader.h"
#include "emit/rules.h"
#include "project/cascade.h"
#include "sample.h"

namespace tenter::emit {
namespace {

using tests::computed;
using tests::CssSheet;
using tests::readCss;
using units::Length;
using units::Unit;

StylesheetOptions of(std::vector<std::size_t> variants) {
    return {std::move(variants), Unit::Rem};
}

std::set<std::string> selectors(const CssSheet& sheet) {
    std::set<std::string> out;
    for (const tests::CssRule& rule : sheet.rules)
        out.insert(rule.selectors.begin(), rule.selectors.end());
    return out;
}

/// Widths at both sides of every breakpoint of the samples. Media Queries 4 § 4.1: max-width includes its
/// value.
constexpr double around[] = {320, 640, 640.5, 980.5, 981, 1600};

void expectBandsHold(const project::Project& project, const CssSheet& sheet, std::size_t variant) {
    const auto uses = roleUses(project);
    const project::Variant& chosen = project.row().variants[variant];
    for (const double width : around) {
        const project::Settings settings = project::resolve(project, chosen, project::bandAt(chosen, width));
        const units::RootSize rootSize = project.page.at(width).rootSize;
        for (const Rule& rule : bandRules({project, settings, rootSize, uses, Unit::Rem})) {
            if (rule.when != When::Always || !rule.needed) continue;
            const auto found = computed(sheet, "." + chosen.className + rule.selector, width);
            for (const Declaration& declaration : rule.declarations) {
                const auto said = found.find(declaration.property);
                const std::string value = said == found.end() ? declaration.neutral : said->second;
                EXPECT_EQ(value, declaration.value)
                    << chosen.className << rule.selector << " " << declaration.property << " at " << width;
            }
        }
    }
}

// CSS Cascade 5 § 6: what a browser comes to at each width is what the settings say there.
TEST(Stylesheet, ComesToEachBandsSettingsAtItsWidths) {
    const project::Project project = tests::walks();
    for (const std::size_t variant : {0U, 1U})
        expectBandsHold(project, readCss(stylesheet(project, of({variant}))), variant);
}

TEST(Stylesheet, ComesToTheSameWithVariantsTogether) {
    std::mt19937 random(20);
    for (int i = 0; i < 10; ++i) {
        const project::Project project = tests::randomProject(random);
        const CssSheet sheet = readCss(stylesheet(project, of({0, 1})));
        ASSERT_TRUE(sheet.sound);
        expectBandsHold(project, sheet, 0);
        expectBandsHold(project, sheet, 1);
    }
}

// A CMS may take <, > and & for markup, also within a style element. HTML § 13.1.2.6; common practice, no
// source.
TEST(Stylesheet, HoldsNoCharacterOfMarkupWhateverTheProjectHolds) {
    std::mt19937 random(7);
    for (int i = 0; i < 25; ++i) {
        const project::Project project = tests::randomProject(random);
        for (const auto& variants : {std::vector<std::size_t>{0}, std::vector<std::size_t>{0, 1}}) {
            const std::string css = stylesheet(project, of(variants));
            EXPECT_EQ(css.find_first_of("<>&"), std::string::npos) << css;
            EXPECT_EQ(css.find('\0'), std::string::npos);
            EXPECT_TRUE(readCss(css).sound) << css;
        }
    }
}

// Media Queries 4 § 4.1: one boundary for each breakpoint leaves no fractional width between two queries.
TEST(Stylesheet, HasEachBreakpointInOneQueryFromTheWidestDown) {
    const std::vector<std::string> queries = readCss(stylesheet(tests::walks(), of({0, 1}))).queries;
    std::vector<std::string> widths;
    std::ranges::copy_if(queries, std::back_inserter(widths),
                         [](const auto& q) { return q.starts_with("(max"); });
    EXPECT_EQ(widths, (std::vector<std::string>{"(max-width: 980.5px)", "(max-width: 640px)"}));
    EXPECT_EQ(stylesheet(tests::walks(), of({0, 1})).find("min-width: 6"), std::string::npos);
}

TEST(Stylesheet, SaysInAQueryOnlyWhatChanges) {
    const CssSheet sheet = readCss(stylesheet(tests::walks(), of({1})));
    for (const tests::CssRule& rule : sheet.rules) {
        if (rule.media.empty() || !rule.media.front().starts_with("(max")) continue;
        EXPECT_EQ(rule.selectors, std::vector<std::string>{".walks-trio"});
        ASSERT_EQ(rule.declarations.size(), 1U);
        EXPECT_EQ(rule.declarations.front().first, "grid-template-columns");
    }
}

TEST(Stylesheet, HasNoQueryWithoutChanges) {
    project::Project project = tests::walks();
    project.row().variants[1].bands[1].set.row.columns = 3;
    const CssSheet sheet = readCss(stylesheet(project, of({1})));
    EXPECT_EQ(std::ranges::count(sheet.queries, "(max-width: 980.5px)"), 0);
}

// Selectors 4 § 4.1: a list of selectors stands for a rule each.
TEST(Stylesheet, SaysOnceWhatVariantsShare) {
    const CssSheet sheet = readCss(stylesheet(tests::walks(), of({0, 1})));
    for (const tests::CssRule& rule : sheet.rules) {
        if (rule.selectors.size() == 2) {
            EXPECT_TRUE(rule.selectors[0].starts_with(".walks-pair"));
            EXPECT_TRUE(rule.selectors[1].starts_with(".walks-trio"));
        } else {
            ASSERT_EQ(rule.declarations.size(), 1U) << rule.selectors.front();
            EXPECT_EQ(rule.declarations.front().first, "grid-template-columns");
        }
    }
}

TEST(Stylesheet, SharesBetweenVariantsAlsoInAQuery) {
    project::Project project = tests::walks();
    for (project::Variant& variant : project.row().variants)
        variant.bands[0].set.text.of("heading").weight = 500;
    const CssSheet sheet = readCss(stylesheet(project, of({0, 1})));
    const auto isWeight = [](const tests::CssRule& rule) {
        return !rule.media.empty() && rule.declarations.front().first == "font-weight";
    };
    EXPECT_EQ(std::ranges::count_if(sheet.rules, isWeight), 1);
}

// CSS Values 4 § 10.2; the numbers are those of the size the layout computes with.
TEST(Stylesheet, EmitsTheNumbersTheLayoutComputesWith) {
    const project::Project project = tests::walks();
    const auto ramp = project.row().style.text.find("heading")->size.value();
    const CssSheet sheet = readCss(stylesheet(project, of({0})));
    const auto size = units::FluidSize::from(ramp, 16, Unit::Rem, Unit::Vw).css();
    EXPECT_EQ(computed(sheet, ".walks-pair .walks-heading", 1000).at("font-size"), size);
    EXPECT_EQ(fontSize(project, 0, 1500, "heading"), size);
    EXPECT_EQ(fontSize(project, 0, 1500, "body"), "1.0313rem");
}

// The worked example of "Linearly Scale font-size with CSS clamp()", CSS-Tricks, 2020: -0.875rem + 8.333vw.
TEST(Stylesheet, AgreesWithAPublishedWorkedExample) {
    project::Project project = tests::walks();
    project.row().style.text.of("heading").size = units::Ramp::between({360, 16}, {840, 56}).value();
    EXPECT_EQ(fontSize(project, 0, 1500, "heading"), "clamp(1rem, -0.875rem + 8.3333vw, 3.5rem)");
}

TEST(Stylesheet, SaysEachRampInASentence) {
    project::Project project = tests::walks();
    const auto comments = readCss(stylesheet(project, of({0}))).comments;
    EXPECT_EQ(std::ranges::count(
                  comments, "Heading: 18 px where the viewport is 400 px wide, 26 px where it is 1500 px."),
              1);
    project.row().style.text.of("heading").follow = project::Follow::Card;
    const std::string css = stylesheet(project, of({0}));
    EXPECT_NE(css.find("18 px where the card's content is 400 px wide"), std::string::npos);
}

// CSS Containment 3 § 7: cqi is of the nearest container, which the card has to be.
TEST(Stylesheet, MakesCardsContainersOnlyWhereSomethingFollowsThem) {
    project::Project project = tests::walks();
    const std::string selector = ".walks-pair .walks-card";
    EXPECT_EQ(computed(readCss(stylesheet(project, of({0}))), selector, 800).count("container-type"), 0U);
    project.row().variants[0].bands[0].set.text.of("body").margin.bottom = Length::cqi(4);
    const CssSheet sheet = readCss(stylesheet(project, of({0})));
    EXPECT_EQ(computed(sheet, selector, 600).at("container-type"), "inline-size");
    EXPECT_EQ(computed(sheet, selector, 800).at("container-type"), "normal");
}

// CSS Grid 2 § 9: a subgrid's items size its parent's tracks. Firefox 153 does so before it knows what a
// picture's percentage is of; cqi of the row (CSS Containment 3 § 7) it knows. (100cqi - 2rem) / 2, less 5 %
// of it and a border of 1 px on each side, less 4px of margin.
TEST(Stylesheet, SaysPicturesOnLevelsByTheRowsWidth) {
    project::Project project = tests::walks();
    project.row().style.card.padding = {Length(), Length::percent(5), Length(), Length()};
    project.row().style.card.border.width = Length::px(1);
    project.row().style.picture.margin.left = Length::px(4);
    const auto of = [&](const std::string& part) {
        return computed(readCss(stylesheet(project, {})), ".walks-pair" + part, 800);
    };
    EXPECT_EQ(of(" .walks-picture").at("width"), "calc(100% - 4px)");
    EXPECT_EQ(of("").count("container-type"), 0U);
    project.row().style.row.level = project::Level::Subgrid;
    EXPECT_EQ(of(" .walks-picture").at("width"), "calc(-0.95rem - 6px + 47.5cqi)");
    EXPECT_EQ(of("").at("container-type"), "inline-size");
    project.row().style.card.bleed = true;
    EXPECT_EQ(of(" .walks-picture").at("width"), "calc(-1rem - 2px + 50cqi)");
}

// Media Queries 4 § 6.1: hover rules are not for pages without a pointer that can hover.
TEST(Stylesheet, KeepsHoverToPointersThatCan) {
    for (const tests::CssRule& rule : readCss(stylesheet(tests::walks(), of({0}))).rules) {
        const bool hovers = rule.selectors.front().find(":hover") != std::string::npos;
        EXPECT_EQ(hovers, !rule.media.empty() && rule.media.back() == "(hover: hover)")
            << rule.selectors.front();
    }
}

// CSS Fonts 4, font-synthesis: it inherits, so that the row says it for all its parts. Measured: Firefox 153
// widens the advances of weights it makes itself, and layout knows only those of the face that is there.
TEST(Stylesheet, HasNoWeightMadeThatAFamilyLacks) {
    EXPECT_EQ(computed(readCss(stylesheet(tests::walks(), of({0}))), ".walks-pair", 800).at("font-synthesis"),
              "style");
}

// CSS Text 3 § 8.2: letter spacing turns off optional ligatures, and engines differ in which.
TEST(Stylesheet, TurnsLigaturesOffWhereLettersAreSpaced) {
    project::Project project = tests::walks();
    project.row().variants[0].bands[0].set.text.of("heading").letterSpacing = Length::em(0.01);
    const CssSheet sheet = readCss(stylesheet(project, of({0})));
    const std::string selector = ".walks-pair .walks-heading";
    EXPECT_EQ(computed(sheet, selector, 600).at("font-variant-ligatures"), "none");
    EXPECT_EQ(computed(sheet, selector, 700).at("font-variant-ligatures"), "normal");
    EXPECT_EQ(computed(sheet, selector, 700).at("letter-spacing"), "normal");
}

// CSS Box 4 § 4: a negative margin as large as the padding brings the picture to the card's edge.
TEST(Stylesheet, BringsPicturesToTheEdgeOverThePadding) {
    project::Project project = tests::walks();
    project.row().style.card.bleed = true;
    project.row().style.card.padding = {Length::rem(1), Length::rem(2), Length::rem(3), Length::rem(4)};
    project.row().style.card.border.width = Length::px(2);
    project.row().style.card.radius = Length::px(10);
    const auto picture = computed(readCss(stylesheet(project, of({0}))), ".walks-pair .walks-picture", 800);
    EXPECT_EQ(picture.at("margin"), "-1rem -2rem 0 -4rem");
    EXPECT_EQ(picture.at("border-radius"),
              "8px 8px 0 0");  // CSS Backgrounds 3 § 4.2: outer radius less border
}

// CSS Box 4 § 4.1: the card's padding is of its column, the picture's margin of the card's content width.
// With 10 % at each side, 10 of 80 parts is 12.5 %; a border of 1 px at each side adds a tenth of 2 px over
// 0.8.
TEST(Stylesheet, SaysAPercentPaddingAgainForThePicture) {
    project::Project project = tests::walks();
    project.row().style.card.bleed = true;
    project.row().style.card.padding = {Length(), Length::percent(10), Length(), Length::percent(10)};
    project.row().style.card.border.width = Length();
    auto picture = computed(readCss(stylesheet(project, of({0}))), ".walks-pair .walks-picture", 800);
    EXPECT_EQ(picture.at("margin"), "0 -12.5%");
    project.row().style.card.border.width = Length::px(1);
    picture = computed(readCss(stylesheet(project, of({0}))), ".walks-pair .walks-picture", 800);
    EXPECT_EQ(picture.at("margin"), "0 calc(-12.5% - 0.25px)");
}

TEST(Stylesheet, GivesPicturesInOtherPositionsTheirOwnClassesWhereNeeded) {
    project::Project project = tests::walks();
    std::swap(project.row().cards[1].parts[0], project.row().cards[1].parts[1]);
    EXPECT_EQ(selectors(readCss(stylesheet(project, of({0})))).count(".walks-pair .walks-picture-inside"),
              0U);
    project.row().style.card.bleed = true;
    project.row().style.card.padding.top = Length::rem(1);
    const CssSheet sheet = readCss(stylesheet(project, of({0})));
    EXPECT_EQ(computed(sheet, ".walks-pair .walks-picture-first", 800).at("margin").substr(0, 5), "-1rem");
    EXPECT_EQ(computed(sheet, ".walks-pair .walks-picture-inside", 800).at("margin").substr(0, 2), "0 ");
    EXPECT_EQ(computed(sheet, ".walks-pair .walks-picture", 800).count("margin"), 0U);
}

// CSS Flexbox 1 § 9.3: items wrap by their outer sizes; three cards and two gaps make a line.
TEST(Stylesheet, CentresALastLineByWrapping) {
    project::Project project = tests::walks();
    project.row().style.row.lastLine = project::LastLine::Center;
    const CssSheet sheet = readCss(stylesheet(project, of({1})));
    EXPECT_EQ(computed(sheet, ".walks-trio", 1600).at("display"), "flex");
    EXPECT_EQ(computed(sheet, ".walks-trio .walks-card", 1600).at("width"),
              "calc((100% - 4rem) / 3 - 0.02px)");
    EXPECT_EQ(computed(sheet, ".walks-trio .walks-card", 600).at("width"), "calc(100% - 0.02px)");
}

// CSS Flexbox 1 § 4.2 and CSS Box 4 § 4.1: a flex item's percentage is of the whole row, where a grid item's
// is of its column. 6 % of (100 % - 4rem) / 3 - 0.02px.
TEST(Stylesheet, SaysAPercentPaddingByTheRowWhereItsLastLineIsCentred) {
    project::Project project = tests::walks();
    project.row().style.card.padding = {Length(), Length::percent(6), Length(), Length::percent(6)};
    EXPECT_EQ(computed(readCss(stylesheet(project, of({1}))), ".walks-trio .walks-card", 1600).at("padding"),
              "0 6%");
    project.row().style.row.lastLine = project::LastLine::Center;
    EXPECT_EQ(computed(readCss(stylesheet(project, of({1}))), ".walks-trio .walks-card", 1600).at("padding"),
              "0 calc(2% - 0.08rem)");
}

// CSS Inline 3 § 5.2: a line's height is a number times the font size, so n lines are n times as many ems.
TEST(Stylesheet, KeepsRoomForLines) {
    project::Project project = tests::walks();
    project::TextStyle& heading = project.row().style.text.of("heading");
    heading.keepLines = 2;
    heading.lineHeight = units::LineHeight::times(1.25);
    const std::string selector = ".walks-pair .walks-heading";
    EXPECT_EQ(computed(readCss(stylesheet(project, of({0}))), selector, 800).at("min-height"), "2.5em");
    heading.padding.top = Length::px(4);
    const auto padded = computed(readCss(stylesheet(project, of({0}))), selector, 800);
    EXPECT_EQ(padded.at("min-height"), "2.5em");
    EXPECT_EQ(padded.at("box-sizing"), "content-box");
}

TEST(Stylesheet, OfNoVariantIsEmpty) {
    EXPECT_EQ(stylesheet(tests::walks(), of({})), "");
    EXPECT_EQ(stylesheet(tests::walks(), of({9})), "");
}

}  // namespace
}  // namespace tenter::emit
