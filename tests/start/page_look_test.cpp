// What projects get from pages that are written in different ways. `tests/engines/check_import.js` compares
// the same pages with Chromium.
#include "start/page_look.h"

#include <gtest/gtest.h>

#include <fstream>
#include <iterator>

#include "project/cascade.h"
#include "project/validate.h"
#include "start/page_colours.h"
#include "start/page_project.h"

namespace tenter::start {
namespace {

class PageLookOf : public ::testing::Test {
protected:
    void importFile(const std::string& name) {
        const std::filesystem::path file =
            std::filesystem::path(TENTER_SOURCE_DIR) / "tests/start/pages" / name;
        std::ifstream stream(file, std::ios::binary);
        importText({std::istreambuf_iterator<char>(stream), {}}, file);
    }
    void importText(const std::string& html, const std::filesystem::path& file = "page.html") {
        markup::PageToAdopt page;
        page.bytes = html;
        page.file = file;
        page.projectFolder = ".";
        project::Problems problems;
        auto adopted = newProjectFrom(page, store_, problems);
        ASSERT_TRUE(adopted.has_value());
        project_ = std::move(adopted->project);
        report_ = std::move(adopted->report);
        EXPECT_TRUE(project::validate(project_).empty());
    }
    /// The settings at a viewport width.
    [[nodiscard]] project::Settings at(double width) const {
        const project::Variant& variant = project_.row().variants.front();
        return project::resolve(project_, variant, project::bandAt(variant, width));
    }
    [[nodiscard]] project::TextStyle text(const std::string& role, double width) const {
        return *at(width).text.find(role);
    }
    [[nodiscard]] double size(const std::string& role, double width) const {
        return text(role, width).size->sizeAt(width);
    }
    [[nodiscard]] std::vector<double> breakpoints() const {
        std::vector<double> widths;
        for (const project::Band& band : project_.row().variants.front().bands)
            if (band.upTo) widths.push_back(*band.upTo);
        return widths;
    }
    [[nodiscard]] std::string warningWith(const std::string& text) const {
        for (const std::string& line : report_)
            if (line.starts_with("Warning: ") && line.find(text) != std::string::npos) return line;
        return {};
    }
    /// The number of sentences about what the project cannot hold; pictures have one of their own.
    [[nodiscard]] std::size_t warnings() const {
        std::size_t count = 0;
        for (const std::string& line : report_)
            if (line.starts_with("Warning: ") && line.find("picture-1") == std::string::npos) ++count;
        return count;
    }

    text::Fonts fonts_;
    text::ParagraphStore store_{fonts_};
    project::Project project_;
    std::vector<std::string> report_;
};

/// A page with this style sheet and three cards.
std::string pageWith(const std::string& css, const std::string& inCard = "") {
    std::string cards;
    for (const char* title : {"Low tide", "Geese", "Ferry"})
        cards += "<div class=\"walk\"><h3>" + std::string(title) +
                 "</h3><p>Two slow miles across the sand, and back before dark.</p>" + inCard +
                 "<a class=\"btn\" href=\"/a\">Book</a></div>";
    return "<html><head><style>body { margin: 0 }" + css + "</style></head><body><div class=\"walks\">" +
           cards + "</div></body></html>";
}

TEST_F(PageLookOf, PlainStyleSheet) {
    importFile("plain.html");
    EXPECT_EQ(breakpoints(), (std::vector<double>{800}));
    EXPECT_EQ(*at(800).row.columns, 1);
    EXPECT_EQ(*at(801).row.columns, 3);
    const project::Settings wide = at(1400);
    EXPECT_EQ(wide.row.columnGap->css(), "24px");
    EXPECT_EQ(wide.row.rowGap->css(), "24px");
    EXPECT_EQ(wide.row.maxWidth->css(), "1180px");
    EXPECT_EQ(wide.row.padding.left->css(), "20px");
    EXPECT_TRUE(*wide.card.bleed);
    EXPECT_EQ(wide.card.border.colour->css(), "#ddd");
    EXPECT_EQ(wide.card.border.width->css(), "1px");
    EXPECT_EQ(wide.card.radius->css(), "6px");
    EXPECT_EQ(*wide.picture.ratio, (project::Ratio{3, 2}));
    EXPECT_DOUBLE_EQ(size("heading", 800), 21);
    EXPECT_DOUBLE_EQ(size("heading", 801), 24);
    EXPECT_DOUBLE_EQ(size("body", 320), 16);
    EXPECT_EQ(text("button", 1400).hover.background->css(), "#b5462f");
    EXPECT_TRUE(text("button", 1400).margin.top->isAuto());
    EXPECT_EQ(text("heading", 1400).margin.top->css(), "20px");
    EXPECT_EQ(warnings(), 0U);
}

TEST_F(PageLookOf, UtilityClasses) {
    importFile("utility.html");
    EXPECT_EQ(breakpoints(), (std::vector<double>{639.98, 1023.98}));
    EXPECT_EQ(*at(639).row.columns, 1);
    EXPECT_EQ(*at(640).row.columns, 2);
    EXPECT_EQ(*at(1024).row.columns, 3);
    EXPECT_EQ(at(1024).row.columnGap->css(), "2rem");
    EXPECT_EQ(at(1024).row.maxWidth->css(), "72rem");
    EXPECT_FALSE(*at(1024).card.bleed);
    EXPECT_EQ(at(1024).card.shadow.blur->css(), "3px");
    EXPECT_EQ(at(1024).card.shadow.colour->css(), "#0000001a");
    EXPECT_DOUBLE_EQ(size("heading", 1023), 20);
    EXPECT_DOUBLE_EQ(size("heading", 1024), 24);
    EXPECT_EQ(text("heading", 1024).lineHeight->css(), "2rem");
    EXPECT_EQ(*text("button", 1024).letterCase, project::LetterCase::Uppercase);
    EXPECT_EQ(text("button", 1024).letterSpacing->css(), "0.05em");
    EXPECT_EQ(warnings(), 0U);
}

TEST_F(PageLookOf, BlocksAndElementsWithFluidType) {
    importFile("bem.html");
    EXPECT_EQ(breakpoints(), (std::vector<double>{599, 959}));
    EXPECT_EQ(*at(960).row.columns, 3);
    EXPECT_EQ(at(959).row.columnGap->css(), "20px");
    EXPECT_EQ(at(959).row.rowGap->css(), "28px");
    const units::Ramp ramp = *text("heading", 960).size;
    EXPECT_EQ(ramp.from(), (units::RampPoint{400, 20}));
    EXPECT_EQ(ramp.to(), (units::RampPoint{1150, 32}));
    EXPECT_EQ(*text("heading", 500).size, ramp);
    EXPECT_EQ(text("heading", 960).margin.bottom->css(), "0.4em");
    EXPECT_TRUE(*at(960).card.bleed);
    EXPECT_EQ(*text("button", 960).place, project::Place::Center);
    EXPECT_EQ(text("button", 960).lineHeight->css(), "20px");
    EXPECT_EQ(text("button", 960).border.colour->css(), "#2b2b33");
    EXPECT_EQ(warnings(), 0U);
}

TEST_F(PageLookOf, FloatGridWithGutters) {
    importFile("floats.html");
    EXPECT_EQ(breakpoints(), (std::vector<double>{767, 1199}));
    EXPECT_EQ(*at(767).row.columns, 1);
    EXPECT_EQ(*at(768).row.columns, 2);
    EXPECT_EQ(*at(1200).row.columns, 3);
    EXPECT_EQ(at(1200).row.columnGap->css(), "30px");
    EXPECT_EQ(at(1200).row.rowGap->css(), "30px");
    EXPECT_EQ(at(1200).card.padding.left->css(), "15px");
    EXPECT_EQ(text("heading", 1200).lineHeight->css(), "26px");
    EXPECT_EQ(*text("button", 1200).place, project::Place::Stretch);
    EXPECT_NE(warningWith("different heights"), "");
    EXPECT_EQ(warnings(), 1U);
}

TEST_F(PageLookOf, FlexLinesWithCalculations) {
    importFile("flexcalc.html");
    EXPECT_EQ(*at(559).row.columns, 1);
    EXPECT_EQ(*at(560).row.columns, 2);
    EXPECT_EQ(*at(1100).row.columns, 4);
    EXPECT_EQ(at(1100).row.columnGap->css(), "18px");
    EXPECT_DOUBLE_EQ(size("heading", 1099), 22);
    EXPECT_DOUBLE_EQ(size("heading", 1100), 19);
    EXPECT_EQ(*text("heading", 1100).slant, project::Slant::Italic);
    EXPECT_EQ(at(1100).picture.radius->css(), "6px");
    EXPECT_EQ(text("button", 1100).margin.top->css(), "14px");
    EXPECT_EQ(warnings(), 0U);
}

TEST_F(PageLookOf, GridThatFitsItself) {
    importFile("autofit.html");
    // Side padding 16 px up to 800, then 2 % up to 1600, then 32 px; columns of 272 px and gaps of 24 px.
    EXPECT_EQ(*at(599).row.columns, 1);
    EXPECT_EQ(*at(600).row.columns, 2);
    EXPECT_EQ(*at(899).row.columns, 2);
    EXPECT_EQ(*at(900).row.columns, 3);
    EXPECT_EQ(*at(1208).row.columns, 3);
    EXPECT_EQ(*at(1209).row.columns, 4);
    EXPECT_EQ(*at(1516).row.columns, 4);
    EXPECT_EQ(*at(1517).row.columns, 5);
    EXPECT_EQ(at(900).row.columnGap->css(), "1.5rem");
    // The gap of the flex column above the button is the margin of the text, because the button is at the
    // end.
    EXPECT_EQ(text("body", 900).margin.bottom->css(), "0.75rem");
    EXPECT_EQ(warnings(), 0U);
}

TEST_F(PageLookOf, NestedRules) {
    importFile("nested.html");
    EXPECT_EQ(breakpoints(), (std::vector<double>{672}));
    EXPECT_EQ(*at(673).row.columns, 2);
    EXPECT_EQ(at(673).row.columnGap->css(), "20px");
    EXPECT_EQ(at(673).card.padding.top->css(), "18px");
    EXPECT_EQ(at(673).card.border.colour->css(), "#c2ccd6");
    EXPECT_EQ(at(673).card.background->css(), "#fcf9f3");
    EXPECT_EQ(text("button", 673).background->css(), "#639");
    EXPECT_EQ(text("button", 673).hover.background->css(), "#4b0082");
    EXPECT_EQ(text("body", 673).margin.top->css(), "6px");
    EXPECT_EQ(warnings(), 0U);
}

TEST_F(PageLookOf, LogicalProperties) {
    importFile("logical.html");
    EXPECT_EQ(breakpoints(), (std::vector<double>{560, 960}));
    EXPECT_EQ(*at(560).row.columns, 1);
    EXPECT_EQ(*at(960).row.columns, 2);
    EXPECT_EQ(*at(961).row.columns, 3);
    EXPECT_EQ(at(961).row.columnGap->css(), "1.5rem");
    EXPECT_EQ(at(961).row.rowGap->css(), "2rem");
    EXPECT_EQ(at(961).card.padding.left->css(), "1.5rem");
    EXPECT_DOUBLE_EQ(size("heading", 961), 22.5);
    EXPECT_EQ(warnings(), 0U);
}

TEST_F(PageLookOf, CustomProperties) {
    importFile("properties.html");
    EXPECT_EQ(breakpoints(), (std::vector<double>{620, 1180}));
    EXPECT_EQ(*at(1181).row.columns, 4);
    EXPECT_EQ(*at(1180).row.columns, 2);
    EXPECT_EQ(at(1180).row.columnGap->css(), "18px");
    EXPECT_EQ(at(1181).card.border.colour->css(), "#bcc9bf");
    EXPECT_DOUBLE_EQ(size("heading", 620), 20);
    EXPECT_DOUBLE_EQ(size("heading", 621), 24);
    EXPECT_NEAR(size("body", 1000), 17, 0.005);
    EXPECT_EQ(*text("body", 1000).wrap, project::Wrap::Balance);
    EXPECT_EQ(text("heading", 1000).letterSpacing->css(), "-0.01em");
    EXPECT_EQ(text("button", 1181).hover.colour->css(), "#ffd");
    EXPECT_EQ(warnings(), 0U);
}

TEST_F(PageLookOf, MinifiedAndImportant) {
    importFile("minified.html");
    EXPECT_EQ(*at(511).row.columns, 1);
    EXPECT_EQ(*at(512).row.columns, 2);
    EXPECT_EQ(*at(769).row.columns, 3);
    EXPECT_EQ(at(500).row.rowGap->css(), "10px");
    EXPECT_EQ(at(500).card.padding.left->css(), "10px");
    EXPECT_DOUBLE_EQ(size("heading", 600), 20);
    EXPECT_TRUE(at(600).picture.ratio->isOwn());
    EXPECT_EQ(warnings(), 0U);
}

TEST_F(PageLookOf, PicturesBesideTheText) {
    importFile("beside.html");
    EXPECT_EQ(breakpoints(), (std::vector<double>{699, 1099.98}));
    EXPECT_EQ(*at(699).card.direction, project::Direction::Stacked);
    EXPECT_EQ(*at(699).picture.ratio, (project::Ratio{2, 1}));
    EXPECT_EQ(*at(700).card.direction, project::Direction::Beside);
    EXPECT_EQ(at(700).card.pictureShare->css(), "40%");
    EXPECT_TRUE(*at(700).card.bleed);
    EXPECT_EQ(at(700).card.padding.left->css(), "22px");
    EXPECT_EQ(at(700).card.padding.top->css(), "18px");
    EXPECT_EQ(*at(1099).row.columns, 1);
    EXPECT_EQ(*at(1100).row.columns, 2);
    EXPECT_EQ(text("button", 700).border.colour->css(), "#0a5a4a");
    EXPECT_EQ(text("button", 700).hover.borderColour->css(), "#fff");
    EXPECT_EQ(warnings(), 0U);
}

TEST_F(PageLookOf, ListsWhatAProjectCannotHold) {
    importText(
        pageWith(".walks { display: grid; grid-template-columns: 2fr 1fr 1fr }"
                 ".walk { padding: calc(10px + 1vw); border-top: 3px solid red; align-self: start }"
                 ".walk:hover { box-shadow: 0 0 9px red }"
                 ".walk p { font-family: Lato; max-width: 20ch; text-align: justify }"
                 ".walk h3 { text-transform: lowercase }"));
    EXPECT_NE(warningWith("padding-left: calc(10px + 1vw)"), "");
    EXPECT_NE(warningWith("card 2 has another width"), "");
    EXPECT_NE(warningWith("borders of the card's sides differ"), "");
    EXPECT_NE(warningWith("card: box-shadow: 0 0 9px red (page.html:1:"), "");
    EXPECT_NE(warningWith("body: max-width: 20ch"), "");
    EXPECT_NE(warningWith("body: text-align: justify"), "");
    EXPECT_NE(warningWith("heading: text-transform: lowercase"), "");
    // What to check comes first.
    EXPECT_TRUE(report_.front().starts_with("Warning: "));
}

// An element without text, such as a picture in a background, is no part of a card, but takes room.
TEST_F(PageLookOf, ListsElementsThatTakeRoomAndAreNoParts) {
    const std::string css = ".walks { display: grid; grid-template-columns: 1fr 1fr 1fr }";
    importText(
        pageWith(css + ".sky { height: 200px; background: url(sky.jpg) }", "<div class=\"sky\"></div>"));
    EXPECT_EQ(
        warningWith("<div class=\"sky\">"),
        "Warning: height: 200px (page.html:1:98): <div class=\"sky\"> in the cards is no part. Its room is "
        "not in the layout of the project.");
    importText(pageWith(css, "<hr><svg width=\"20\"></svg>"));
    EXPECT_NE(warningWith("<hr> in the cards is no part"), "");
    EXPECT_NE(warningWith("<svg> in the cards is no part"), "");
    for (const char* rule :
         {"height: 0", "position: absolute; height: 20px", "display: none; height: 20px", ""}) {
        importText(pageWith(css + ".sky {" + rule + "}", "<div class=\"sky\"></div>"));
        EXPECT_EQ(warningWith("sky"), "") << rule;
    }
}

TEST_F(PageLookOf, PutsBordersOfSomeSidesIntoThePadding) {
    importText(
        pageWith(".walk { padding: 10px; border-top: 3px solid red } .btn { display: block; padding: 4px; "
                 "border-bottom: 2px "
                 "solid }"));
    EXPECT_TRUE(at(1000).card.border.width->isZero());
    EXPECT_EQ(at(1000).card.padding.top->css(), "13px");
    EXPECT_EQ(at(1000).card.padding.bottom->css(), "10px");
    EXPECT_EQ(text("button", 1000).padding.bottom->css(), "6px");
    EXPECT_NE(warningWith("the borders of the sides differ"), "");
}

TEST_F(PageLookOf, ReadsContainerQueriesOfElementsAroundTheRow) {
    importText(
        pageWith("body { margin: 0; container-type: inline-size } .walks { display: grid; gap: 10px }"
                 "@container (min-width: 700px) { .walks { grid-template-columns: 1fr 1fr } }"));
    EXPECT_EQ(*at(699).row.columns, 1);
    EXPECT_EQ(*at(701).row.columns, 2);
}

TEST_F(PageLookOf, AlignsThePartsOfSubgrids) {
    importText(
        pageWith(".walks { display: grid; grid-template-columns: 1fr 1fr }"
                 ".walk { display: grid; grid-row: span 3; grid-template-rows: subgrid }"));
    EXPECT_EQ(at(1000).row.level, project::Level::Subgrid);
    importText(pageWith(".walks { display: grid; grid-template-columns: 1fr 1fr }"));
    EXPECT_EQ(at(1000).row.level, project::Level::None);
}

TEST_F(PageLookOf, SkipsShadowsThatAreNotSeen) {
    importText(
        pageWith(".walk { box-shadow: 0 0 #0000, inset 0 0 0 0 #123, 0 2px 5px 1px #456, 0 0 9px #789 }"));
    EXPECT_EQ(at(1000).card.shadow.colour->css(), "#456");
    EXPECT_EQ(at(1000).card.shadow.y->css(), "2px");
    EXPECT_EQ(at(1000).card.shadow.blur->css(), "5px");
    EXPECT_NE(warningWith("the first shadow only"), "");
}

TEST_F(PageLookOf, CentresABoxWithAutomaticMargins) {
    importText(pageWith(".walk { display: flex; flex-direction: column } .btn { margin: auto auto 0 }"));
    EXPECT_EQ(text("button", 1000).place, project::Place::Center);
    EXPECT_TRUE(text("button", 1000).margin.top->isKeyword());
}

TEST_F(PageLookOf, PutsBoxesInLinesBesideEachOther) {
    importText(
        "<html><head><style>body { margin: 0 } .walks { font-size: 0 } .walk { display: inline-block; width: "
        "50%;"
        "box-sizing: border-box; padding: 0 10px; font-size: 16px }"
        "@media (max-width: 600px) { .walk { width: 100% } }</style></head><body><div class=walks>\n"
        "<div class=walk><h3>Low water</h3><p>At noon, on the steps.</p></div>\n"
        "<div class=walk><h3>High water</h3><p>At six, by the wall.</p></div>\n</div></body></html>");
    EXPECT_EQ(*at(600).row.columns, 1);
    EXPECT_EQ(*at(601).row.columns, 2);
    EXPECT_TRUE(at(1000).row.columnGap->isZero());
}

TEST_F(PageLookOf, TakesPhrasesThatAreLaidOutAsBlocksForParts) {
    importText(
        "<html><head><style>.walk, .walk span, .walk strong, .walk em { display: block }</style></head><body>"
        "<div class=walks><a class=walk href=#1><img src=a.png alt=Steps><span><strong>Low "
        "water</strong><em>At noon, on the "
        "steps.</em>"
        "</span></a><a class=walk href=#2><img src=b.png alt=Wall><span><strong>High water</strong><em>At "
        "six, by the "
        "wall.</em></span>"
        "</a></div></body></html>");
    EXPECT_EQ(*project_.row().given->find("heading"), ".walk strong");
    EXPECT_EQ(*project_.row().given->find("body"), ".walk em");
}

TEST_F(PageLookOf, CollapsesMarginsBetweenParts) {
    importText(
        pageWith(".walk { padding: 10px } h3 { margin: 0 0 12px } p { margin: 20px 0 5px }"
                 ".btn { display: block; margin: 8px 0 0 }"));
    const project::Settings settings = at(1000);
    const double above = settings.text.find("heading")->margin.bottom->value() +
                         settings.text.find("body")->margin.top->value();
    EXPECT_DOUBLE_EQ(above, 20);
    const double below = settings.text.find("body")->margin.bottom->value() +
                         settings.text.find("button")->margin.top->value();
    EXPECT_DOUBLE_EQ(below, 8);
}

TEST_F(PageLookOf, AddsTheGapOfAFlexColumn) {
    importText(
        pageWith(".walk { display: flex; flex-direction: column; gap: 9px } h3 { margin: 0 0 12px }"
                 "p { margin: 20px 0 5px }"));
    const project::Settings settings = at(1000);
    EXPECT_DOUBLE_EQ(settings.text.find("heading")->margin.bottom->value() +
                         settings.text.find("body")->margin.top->value(),
                     41);
}

TEST_F(PageLookOf, SplitsABandWhereNoRampHasTheSizes) {
    importText(
        pageWith("h3 { font-size: 20px } @media (min-width: 900px) { h3 { font-size: calc(1vw + 15px) } }"
                 "@media (min-width: 1300px) { h3 { font-size: 40px } }"));
    EXPECT_DOUBLE_EQ(size("heading", 899), 20);
    EXPECT_NEAR(size("heading", 900), 24, 0.01);
    EXPECT_NEAR(size("heading", 1299), 27.99, 0.01);
    EXPECT_DOUBLE_EQ(size("heading", 1300), 40);
}

TEST_F(PageLookOf, DropsOnlyTheSettingThatAProjectCannotHave) {
    importText(pageWith(".walk { padding: 90000px 12px; border-radius: 5px } h3 { font-size: 21px }"));
    EXPECT_EQ(at(1000).card.padding.left->css(), "12px");
    EXPECT_EQ(at(1000).card.radius->css(), "5px");
    EXPECT_DOUBLE_EQ(size("heading", 1000), 21);
    EXPECT_NE(warningWith("card/padding/top"), "");
}

TEST(PageColours, ReadsTheNotationsOfCss) {
    const auto css = [](const char* text) { return colourIn(text)->css(); };
    EXPECT_EQ(css("tomato"), "#ff6347");
    EXPECT_EQ(css("rgb(10 20 30 / 50%)"), "#0a141e80");
    EXPECT_EQ(css("rgba(10, 20, 30, 1)"), "#0a141e");
    EXPECT_EQ(css("rgb(100% 0% 0%)"), "#f00");
    EXPECT_EQ(css("hsl(120deg 100% 25%)"), "#008000");
    EXPECT_EQ(css("hsla(0.5turn, 50%, 50%, 1)"), "#40bfbf");
    EXPECT_EQ(css("hsl(-120 100% 50%)"), "#00f");
    // Values by the sample code of CSS Color 4 § 18, rounded.
    EXPECT_EQ(css("oklch(62.8% 0.25768 29.23)"), "#f00");
    EXPECT_EQ(css("oklab(0.51975 -0.1403 0.10768)"), "#008000");
    EXPECT_EQ(css("lab(54.29% 80.8 69.89)"), "#f00");
    EXPECT_EQ(css("lch(46.28% 67.99 134.39)"), "#008000");
    EXPECT_EQ(css("hwb(120 0% 49.8%)"), "#008000");
    EXPECT_EQ(css("color(srgb 1 0.5 0)"), "#ff8000");
    EXPECT_EQ(css("color(display-p3 1 1 1/50%)"), "#ffffff80");
    EXPECT_EQ(css("color-mix(in srgb, #fff 25%, #000)"), "#404040");
    EXPECT_EQ(css("color-mix(in srgb, red, blue)"), "#800080");
    EXPECT_EQ(css("color-mix(in oklab, #008000 50%, transparent)"), "#00800080");
    EXPECT_EQ(css("color-mix(in srgb, red 20%, red 20%)"), "#f006");
    EXPECT_FALSE(colourIn("color-mix(in nowhere, red, blue)").has_value());
    EXPECT_FALSE(colourIn("oklch(60% 0.1)").has_value());
    EXPECT_FALSE(colourIn("oklch(var(--a))").has_value());
    EXPECT_FALSE(colourIn("rgb(1 2)").has_value());
    EXPECT_FALSE(colourIn("currentcolor").has_value());
    EXPECT_EQ(colourAmong("url(a.png) #123 no-repeat")->css(), "#123");
}

}  // namespace
}  // namespace tenter::start
