#include "layout/layout.h"

#include <algorithm>
#include <random>

#include "laying.h"

namespace tenter::layout {
namespace {

using test::bare;
using test::card;
using test::plainCard;
using test::prepareRow;
using test::projectOf;
using test::styleOf;

const std::string three =
    "[" + card("Low tide", "A short walk.") + "," +
    card("A heading that goes on for quite some way", "And copy of more than one line to go with it.") + "," +
    card("Dusk", "Bats.") + "]";

std::string columns(int count) {
    return R"([{"set": {"row": {"columns": )" + std::to_string(count) + "}}}]";
}

const LaidPart& part(const Layout& layout, std::size_t cardIndex, std::size_t index) {
    return layout.parts.at(layout.cards.at(cardIndex).firstPart + index);
}

// CSS Grid 2 § 7.2, § 10.1: N equal tracks of minmax(0, 1fr); a percentage gap refers to the grid's content
// width.
TEST(Layout, DividesTheRowIntoEqualColumnsAndGaps) {
    const auto project = projectOf(
        styleOf(R"({"width": "90%", "columnGap": "4%", "padding": {"left": "10px", "right": "30px"}})",
                plainCard),
        columns(3), three);
    const Layout layout = layOut(prepareRow(project), 1000);
    EXPECT_DOUBLE_EQ(layout.row.x, 50);
    EXPECT_DOUBLE_EQ(layout.row.width, 900);
    const double gap = 0.04 * 860;
    const double column = (860 - 2 * gap) / 3;
    for (std::size_t i = 0; i < 3; ++i) {
        EXPECT_NEAR(layout.cards[i].box.x, 60 + static_cast<double>(i) * (column + gap), 1e-9);
        EXPECT_NEAR(layout.cards[i].box.width, column, 1e-9);
    }
}

// CSS Grid 2 § 11.8 and CSS Flexbox 1 § 8.1: cards of one line stretch; an automatic margin takes the spare
// height.
TEST(Layout, StretchesCardsAndAlignsButtons) {
    const auto project = projectOf(styleOf(R"({"columnGap": "20px"})", plainCard), columns(3), three);
    const Layout layout = layOut(prepareRow(project), 700);
    for (std::size_t i = 1; i < 3; ++i) {
        EXPECT_EQ(layout.cards[i].box.height, layout.cards[0].box.height);
        EXPECT_NEAR(part(layout, i, 2).box.bottom(), part(layout, 0, 2).box.bottom(), 1e-9);
    }
    EXPECT_GT(part(layout, 0, 2).box.y, part(layout, 0, 1).box.bottom() + 20);
}

// CSS Inline 3 § 5.3: half of the leading is above the ascent. Engines round to whole px.
TEST(Layout, PlacesBaselinesHalfTheLeadingAboveTheAscent) {
    const auto project = projectOf(styleOf("{}", plainCard), columns(3), three);
    const PreparedRow row = prepareRow(project);
    for (const Layout& layout : {layOut(row, 900), layOutDrawn(row, 900)}) {
        const LaidPart& heading = part(layout, 1, 0);
        ASSERT_GT(heading.lineCount, 1U);
        const text::Face& face = *heading.paragraph->strut();
        const double letters = (face.ascent() + face.descent()) * heading.fontSize;
        const double above = (heading.lineHeight - letters) / 2 + face.ascent() * heading.fontSize;
        for (std::uint32_t i = 0; i < heading.lineCount; ++i)
            EXPECT_NEAR(layout.lines[heading.firstLine + i].baseline,
                        heading.box.y + i * heading.lineHeight + above, 1);
    }
}

// CSS Box 4 § 4: percentages of paddings and margins refer to the width of the containing block, also at top
// and bottom.
TEST(Layout, ResolvesVerticalPercentagesAgainstTheWidth) {
    auto project = projectOf(
        styleOf(
            "{}",
            R"({"padding": {"top": "10%", "right": "5%", "bottom": "0", "left": "5%"}, "border": {"width": "0"}})"),
        columns(1), three);
    project.row().style.text.of("heading").margin.top = units::Length::percent(10);
    const Layout layout = layOut(prepareRow(project), 800);
    EXPECT_NEAR(part(layout, 0, 0).box.width, 800 * 0.9, 1e-9);
    EXPECT_NEAR(part(layout, 0, 0).box.y, 800 * 0.1 + 800 * 0.9 * 0.1, 1.0 / 64);
}

// CSS Values 4 § 6.1.1: em is the element's own font size, so spacing grows with the type.
TEST(Layout, ResolvesSpacingAgainstTheRolesEm) {
    auto project = projectOf(styleOf("{}", plainCard), columns(1), three);
    project.row().style.text.of("heading").margin.bottom = units::Length::em(1.5);
    project.row().style.text.of("heading").size = *units::Ramp::between({400, 20}, {800, 40});
    const auto row = prepareRow(project);
    for (const double width : {400.0, 500.0, 800.0, 1200.0}) {
        const Layout layout = layOut(row, width);
        const double gap = part(layout, 0, 1).box.y - part(layout, 0, 0).box.bottom();
        EXPECT_NEAR(gap, 1.5 * part(layout, 0, 0).fontSize, 1.0 / 64) << width;
    }
}

// Media Queries 4 § 4.1: max-width includes its own width, so a band includes its upper breakpoint.
TEST(Layout, HasOneBandForEveryRealWidth) {
    const auto project = projectOf(
        styleOf("{}", plainCard),
        R"([{"upTo": 600, "set": {"row": {"columns": 1}}}, {"set": {"row": {"columns": 3}}}])", three);
    const auto row = prepareRow(project);
    EXPECT_EQ(layOut(row, 600).band, 0U);
    EXPECT_EQ(layOut(row, 600.0001).band, 1U);
    EXPECT_EQ(layOut(row, 600).cards[1].box.x, 0);
    EXPECT_GT(layOut(row, 600.5).cards[1].box.x, 0);
}

// CSS Values 4 § 6.1.2 and CSS Overflow 3 § 3: vw includes a classic scrollbar, percentages exclude it.
// Measured in Chromium 156: vw excludes it too if the root always shows it.
TEST(Layout, ExcludesAClassicScrollbarFromPercentages) {
    const std::string bar = R"("page": {"scrollbar": {"width": 15, "always": false}}, )";
    auto project = projectOf(styleOf("{}", plainCard), columns(1), three, bar);
    project.row().style.text.of("heading").size = *units::Ramp::between({500, 20}, {1000, 40});
    EXPECT_DOUBLE_EQ(layOut(prepareRow(project), 800).row.width, 785);
    EXPECT_NEAR(part(layOut(prepareRow(project), 800), 0, 0).fontSize, 32, 0.01);
    project.page.scrollbar.always = true;
    EXPECT_NEAR(part(layOut(prepareRow(project), 800), 0, 0).fontSize, 32 - 15 * 0.04, 0.01);
    // A viewport that is narrower than its scrollbar has no room, not less than none.
    project.page.container.width = units::Length::vw(200);
    EXPECT_EQ(layOut(prepareRow(project), 10).container.width, 0);
}

// CSS Sizing 3 § 5.1: a start-aligned button is as wide as its label, or as the available width; then its
// label wraps.
TEST(Layout, ShrinksButtonsToTheirLabels) {
    auto project = projectOf(
        styleOf("{}", plainCard), columns(1),
        R"([{"parts": [{"role": "button", "copy": "Book the long low tide walk", "link": "#b"}]}])");
    const auto row = prepareRow(project);
    const Layout wide = layOut(row, 900);
    EXPECT_EQ(part(wide, 0, 0).lineCount, 1U);
    EXPECT_NEAR(part(wide, 0, 0).box.width, wide.lines[0].line.width + 44, 1e-9);
    const Layout narrow = layOut(row, 180);
    EXPECT_GT(part(narrow, 0, 0).lineCount, 1U);
    EXPECT_DOUBLE_EQ(part(narrow, 0, 0).box.width, 180);
}

// Measured: 12.599 px is 0.7874rem in the stylesheet and 805/64 px in Chromium 156. In Firefox 153 it is
// 756/60 px, which in the TrueType face Karla becomes 806/64 px; letter spacing of 0.64 px becomes 38/60 px.
TEST(Layout, BreaksLinesAtTheSizeThatTheEngineDraws) {
    auto project = projectOf(styleOf("{}", plainCard), columns(1), three);
    text::Fonts fonts;
    text::ParagraphStore store(fonts);
    const auto lineAt = [&](double size, const char* spacing, const text::BreakProfile& profile) {
        auto& body = project.row().style.text.of("body");
        body.size = units::Ramp::flat(size);
        body.letterSpacing = units::Length::parse(spacing);
        return layOut(PreparedRow(project, 0, store, profile), 900).lines[1].line.width;
    };
    const text::BreakProfile& blink = text::blink();
    const text::BreakProfile& gecko = text::gecko();
    EXPECT_NEAR(lineAt(12.599, "0", blink) / lineAt(16, "0", blink), 805.0 / 64 / 16, 1e-6);
    EXPECT_NEAR(lineAt(12.599, "0", gecko) / lineAt(16, "0", gecko), 806.0 / 64 / 16, 1e-6);
    const auto spacing = [&](const text::BreakProfile& profile) {
        return (lineAt(16, "0.64px", profile) - lineAt(16, "0.01px", profile)) /
               (lineAt(16, "1px", profile) - lineAt(16, "0.01px", profile));
    };
    EXPECT_NEAR(spacing(blink), 0.63 / 0.99, 1e-6);
    EXPECT_NEAR(spacing(gecko), (38.0 - 1) / (60 - 1), 1e-6);
}

// CSS Writing Modes 4 § 2.1: a right-to-left row is the mirror image of the left-to-right row.
TEST(Layout, MirrorsARowRightToLeft) {
    const std::string style = styleOf(R"({"columnGap": "24px", "width": "80%"})", plainCard);
    const auto left = layOut(prepareRow(projectOf(style, columns(2), three)), 900);
    const auto right =
        layOut(prepareRow(projectOf(style, columns(2), three, R"("direction": "rtl", )")), 900);
    for (std::size_t i = 0; i < left.cards.size(); ++i)
        EXPECT_NEAR(right.cards[i].box.right(), 900 - left.cards[i].box.x, 1e-9);
    for (std::size_t i = 0; i < left.parts.size(); ++i) {
        EXPECT_NEAR(right.parts[i].box.right(), 900 - left.parts[i].box.x, 1e-9);
        EXPECT_EQ(right.parts[i].lineCount, left.parts[i].lineCount);
    }
}

// CSS Grid 2 § 9: in subgrids, parts with the same order share a track, so paragraphs start at the same
// height.
TEST(Layout, AlignsPartsAcrossCards) {
    const auto project =
        projectOf(styleOf(R"({"level": "subgrid", "columnGap": "20px", "rowGap": "30px"})", plainCard),
                  columns(3), three);
    const Layout layout = layOut(prepareRow(project), 700);
    for (std::size_t i = 1; i < 3; ++i)
        EXPECT_NEAR(part(layout, i, 1).box.y, part(layout, 0, 1).box.y, 1e-9);
}

TEST(Layout, CentresAnIncompleteLastLine) {
    const auto project =
        projectOf(styleOf(R"({"lastLine": "center", "columnGap": "20px"})", plainCard), columns(2), three);
    const Layout layout = layOut(prepareRow(project), 800);
    EXPECT_NEAR(layout.cards[2].box.x + layout.cards[2].box.width / 2, 400, 1e-9);
    EXPECT_LT(layout.cards[0].box.x, layout.cards[2].box.x);
}

TEST(Layout, ReservesTheMinimumLines) {
    auto project = projectOf(styleOf("{}", plainCard), columns(3), three);
    project.row().style.text.of("heading").keepLines = 4;
    const Layout layout = layOut(prepareRow(project), 900);
    EXPECT_DOUBLE_EQ(part(layout, 0, 0).box.height, 4 * 25);
}

// CSS Images 3 § 5.5 and CSS Sizing 4 § 4: the slot has the ratio of the setting, or the file's own.
TEST(Layout, GivesPicturesTheirRatio) {
    const std::string pictures =
        R"([{"parts": [{"picture": "a.png", "size": [1000, 400], "alt": ""}]}, {"parts": [{"picture": "a.png", "size": [1000, 400], "ratio": "own", "alt": ""}]}])";
    auto project = projectOf(R"({"row": {"columnGap": "0"}, "card": )" + plainCard +
                                 R"(, "picture": {"ratio": "2/1", "margin": {"bottom": "0"}}})",
                             columns(2), pictures);
    const Layout layout = layOut(prepareRow(project), 800);
    EXPECT_DOUBLE_EQ(part(layout, 0, 0).box.height, 200);
    EXPECT_DOUBLE_EQ(part(layout, 1, 0).box.height, 160);
}

TEST(Layout, ExtendsAFullBleedPictureToTheCardsEdges) {
    const std::string pictures =
        R"([{"parts": [{"picture": "a.png", "size": [900, 600], "alt": ""}, {"role": "heading", "copy": "Low tide"}]}])";
    auto project = projectOf(
        styleOf(
            "{}",
            R"({"bleed": true, "padding": {"top": "24px", "right": "6%", "bottom": "24px", "left": "6%"}, "border": {"width": "3px"}})"),
        columns(1), pictures);
    const Layout layout = layOut(prepareRow(project), 700);
    EXPECT_DOUBLE_EQ(part(layout, 0, 0).box.x, 3);
    EXPECT_NEAR(part(layout, 0, 0).box.width, 694, 1e-9);
    EXPECT_DOUBLE_EQ(part(layout, 0, 0).box.y, 3);
}

// CSS Containment 3 § 7: a ramp that follows the card has the same size in cards of the same width, at any
// number of columns.
TEST(Layout, ScalesTypeWithTheCard) {
    auto project = projectOf(styleOf(R"({"columnGap": "0"})", plainCard), columns(1), three);
    project.row().style.text.of("heading").follow = project::Follow::Card;
    project.row().style.text.of("heading").size = *units::Ramp::between({200, 16}, {600, 32});
    const auto one = layOut(prepareRow(project), 300);
    project.row().variants[0].bands[0].set.row.columns = 3;
    const auto many = layOut(prepareRow(project), 900);
    EXPECT_NEAR(part(one, 0, 0).fontSize, 20, 0.01);
    EXPECT_DOUBLE_EQ(part(one, 0, 0).fontSize, part(many, 0, 0).fontSize);
}

// The reader's text size scales rem but not vw. WCAG 2.2, SC 1.4.4 (resize text).
TEST(Layout, ScalesRemWithTheReadersTextSize) {
    auto project = projectOf(styleOf("{}", plainCard), columns(1), three);
    project.page.readerSize = 24;
    const Layout layout = layOut(prepareRow(project), 700);
    EXPECT_DOUBLE_EQ(part(layout, 0, 0).fontSize, 30);
}

TEST(Layout, DoesNotDependOnEarlierLayouts) {
    const auto row = prepareRow(projectOf(styleOf(R"({"columnGap": "2%"})", plainCard), columns(2), three));
    Layout used;
    std::mt19937 random(4);
    for (int i = 0; i < 50; ++i) {
        const double width = std::uniform_real_distribution<double>(200, 2000)(random);
        layOut(row, width, used);
        const Layout fresh = layOut(row, width);
        ASSERT_EQ(used.parts.size(), fresh.parts.size());
        for (std::size_t p = 0; p < fresh.parts.size(); ++p)
            EXPECT_EQ(used.parts[p].box, fresh.parts[p].box);
        EXPECT_EQ(used.row, fresh.row);
    }
}

/// Six columns in a row of 639.2 px, with text that has 16.6 px in each.
project::Project sixColumns() {
    const char* text =
        R"({"text": {"body": {"family": ["Roboto Slab"], "size": 13.56, "weight": 500, "slant": "italic", "letterSpacing": "2px",
            "overflowWrap": "anywhere", "margin": {"top": "0", "bottom": "0", "left": "16.2px"},
            "padding": {"right": "10.8px", "left": "16px"}, "border": {"width": "1px"}}},
            "row": {"width": "639.2px", "columnGap": "30.4px"},
            "card": {"padding": {"top": "0", "bottom": "0", "right": "9.4px", "left": "8.2px"}, "border": {"width": "1px"}}})";
    return projectOf(text, columns(6), R"([{"parts": [{"role": "body", "copy": "er"}]}])");
}

// Measured in Chromium 156: column, paddings and margin are on its grid of 1/64 px, so that 16.640625 px are
// available instead of 16.6, and `er` (16.6489 px) is not cut.
TEST(Layout, AsDrawnTextIsBrokenOnTheEnginesGrid) {
    const auto row = prepareRow(sixColumns());
    EXPECT_EQ(part(layOut(row, 1400), 0, 0).lineCount, 2U);
    EXPECT_EQ(part(layOutDrawn(row, 1400), 0, 0).lineCount, 1U);
}

// The grid of engines is fine: as drawn, only tight fits break in another way.
TEST(Layout, AsDrawnOnlyTightFitsBreakInAnotherWay) {
    const auto project =
        projectOf(styleOf(R"({"columnGap": "2%"})", R"({"padding": {"left": "3%"}})"), columns(3), three);
    text::Fonts fonts;
    text::ParagraphStore store(fonts);
    for (const text::BreakProfile* profile : text::profiles()) {
        const PreparedRow row(project, 0, store, *profile);
        for (double width = 200; width < 1200; width += 0.7) {
            const Layout mean = layOut(row, width);
            const Layout drawn = layOutDrawn(row, width);
            for (std::size_t i = 0; i < mean.parts.size(); ++i) {
                EXPECT_NEAR(mean.parts[i].box.width, drawn.parts[i].box.width, 0.05) << width;
                if (mean.parts[i].slack >= text::roundingSlack &&
                    drawn.parts[i].slack >= text::roundingSlack) {
                    EXPECT_EQ(mean.parts[i].lineCount, drawn.parts[i].lineCount) << profile->name() << width;
                }
            }
        }
    }
}

// CSS Flexbox 1 § 9.3: of cards that their padding makes wider than their column, fewer fit on a line.
// Measured in Chromium 156 and Firefox 153.
TEST(Layout, WrapsCardsThatAreWiderThanTheirColumn) {
    const auto project =
        projectOf(styleOf(R"({"width": "300px", "columnGap": "10px", "lastLine": "center"})",
                          R"({"padding": {"left": "60px", "right": "60px"}, "border": {"width": "0"}})"),
                  columns(3), three);
    const Layout layout = layOut(prepareRow(project), 700);
    EXPECT_DOUBLE_EQ(layout.cards[0].box.width, 120);
    EXPECT_EQ(layout.cards[1].box.y, layout.cards[0].box.y);
    EXPECT_GE(layout.cards[2].box.y, layout.cards[0].box.bottom());
    EXPECT_NEAR(layout.cards[2].box.x + 60, layout.row.x + 150, 1e-9);
}

// Measured in Chromium 156 and Firefox 153: in a column without room for the card's padding, a picture among
// aligned parts has no width, even with a negative margin.
TEST(Layout, APictureAmongAlignedPartsHasNoWidthInATooNarrowColumn) {
    const char* style =
        R"({"row": {"level": "subgrid", "columnGap": "0", "width": "100%"}, "picture": {"margin": {"left": "-4.17px"}},
            "card": {"padding": {"right": "20px", "left": "20px"}, "border": {"width": "1px"}}})";
    const char* picture = R"([{"parts": [{"picture": "a.png", "size": [320, 213], "alt": "A"}]}])";
    const auto project = projectOf(style, columns(6), picture);
    for (const double width : {150.0, 220.0})
        EXPECT_EQ(layOut(prepareRow(project), width).parts[0].box.width, 0) << width;
    EXPECT_NEAR(layOut(prepareRow(project), 228).parts[0].box.width, 38 - 42 + 4.17, 1e-9);
    EXPECT_NEAR(layOut(prepareRow(project), 300).parts[0].box.width, 50 - 42 + 4.17, 1e-9);
}

// Measured in Chromium 156 and Firefox 153: in a centred row, the percentages of a card refer to an equal
// share of the row, the card is 0.02 px narrower. Firefox rounds such a calculation down.
TEST(Layout, AsDrawnTheCardsOfACentredRowAreCalculations) {
    const auto project = projectOf(
        styleOf(
            R"({"width": "652.9px", "columnGap": "10px", "lastLine": "center"})",
            R"({"padding": {"top": "0", "right": "0", "bottom": "0", "left": "25%"}, "border": {"width": "0"}})"),
        columns(3), three);
    const PreparedRow row = prepareRow(project);
    const double column = (652.9 - 20) / 3;
    EXPECT_NEAR(layOut(row, 1400).cards[0].padding.left, column / 4, 1e-9);
    EXPECT_NEAR(layOut(row, 1400).cards[0].box.width, column - 0.02, 1e-9);
}

// Measured in Firefox 153: the gap in the calculation of the width of a card in a centred row is not rounded,
// so that this card is 99.2333 px wide, and 8.97 % of its content 6.8 px.
TEST(Layout, AsDrawnTheGapOfACentredRowIsPartOfTheCalculation) {
    const auto project = projectOf(
        R"({"row": {"width": "511.26667px", "columnGap": "0.73%", "lastLine": "center"},
            "card": {"padding": {"top": "0", "right": "2.66667px", "bottom": "0", "left": "18.66667px"}, "border": {"width": "1px"}},
            "text": {"body": {"family": ["Lato"], "size": 16, "lineHeight": "8.97cqi", "margin": {"top": "0", "bottom": "0"}}}})",
        columns(5), R"([{"parts": [{"role": "body", "copy": "abc"}]}])");
    text::Fonts fonts;
    text::ParagraphStore store(fonts);
    const PreparedRow row(project, 0, store, text::gecko());
    EXPECT_NEAR(layOutDrawn(row, 920).parts[0].lineHeight, 6.8, 1e-9);
}

// Measured in Firefox 153: text of 10 px in Thai is drawn at 13 px and, with a line height of 1.5, 19.5 px
// high. Lengths in em stay as they are; Chromium 156 has no such limit.
TEST(Layout, FirefoxDrawsNoThaiTextBelow13Px) {
    const auto laid = [](const std::string& language, const text::BreakProfile& profile) {
        const auto project = projectOf(
            R"({"text": {"body": {"family": ["Lato"], "size": 10, "lineHeight": 1.5, "place": "start", "letterSpacing": "0.1em",
                "padding": {"left": "1em"}, "margin": {"top": "0", "bottom": "0"}}}})",
            columns(1), R"([{"parts": [{"role": "body", "copy": "abc"}]}])",
            R"("language": ")" + language + R"(", )");
        text::Fonts fonts;
        text::ParagraphStore store(fonts);
        const PreparedRow row(project, 0, store, profile);
        for (const Layout& layout : {layOut(row, 1000), layOutDrawn(row, 1000)}) {
            EXPECT_EQ(layout.parts[0].fontSize, 10);
            EXPECT_EQ(layout.parts[0].glyphSize, std::max(10.0, profile.leastSize(language)));
            EXPECT_EQ(layout.parts[0].padding.left, 10);
        }
        return layOutDrawn(row, 1000).parts[0].box;
    };
    EXPECT_DOUBLE_EQ(laid("th", text::gecko()).height, 19.5);
    EXPECT_NEAR(laid("th", text::gecko()).width, 22.95 + 10, 0.03);
    EXPECT_DOUBLE_EQ(laid("ja", text::gecko()).height, 15);
    EXPECT_NEAR(laid("ja", text::gecko()).width, 18.35 + 10, 0.03);
    EXPECT_DOUBLE_EQ(laid("th", text::blink()).height, 15);
}

}  // namespace
}  // namespace tenter::layout
