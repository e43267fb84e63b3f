// Projects from stylesheets of other authors without markup.
#include "start/sheet_project.h"

#include <gtest/gtest.h>

#include "project/cascade.h"
#include "project/validate.h"
#include "start/sheet_page.h"

namespace tenter::start {
namespace {

class SheetProject : public ::testing::Test {
protected:
    void read(const std::string& css, const std::filesystem::path& file = "live/look.css") {
        project::Problems problems;
        const auto imported = importSheet(css, file, 16, store_, problems);
        ASSERT_TRUE(imported.has_value()) << (problems.empty() ? "" : problems.front().what);
        read_ = *imported;
        EXPECT_TRUE(project::validate(read_.project).empty());
    }
    std::string refusal(const std::string& css) {
        project::Problems problems;
        EXPECT_FALSE(importSheet(css, "look.css", 16, store_, problems).has_value());
        EXPECT_EQ(problems.size(), 1U);
        return problems.empty() ? "" : problems.front().sentence();
    }
    [[nodiscard]] project::Settings at(double width) const {
        const project::Variant& variant = read_.project.row().variants.front();
        return project::resolve(read_.project, variant, project::bandAt(variant, width));
    }
    [[nodiscard]] project::TextStyle text(const std::string& role, double width = 1200) const {
        return *at(width).text.find(role);
    }
    [[nodiscard]] int columns(double width) const { return *at(width).row.columns; }
    [[nodiscard]] bool reports(const std::string& part) const {
        return std::ranges::any_of(
            read_.report, [&](const std::string& line) { return line.find(part) != std::string::npos; });
    }

    text::Fonts fonts_;
    text::ParagraphStore store_{fonts_};
    Imported read_;
};

TEST_F(SheetProject, ReadsNamesOfBlocksAndElements) {
    read(R"(
        .site-nav { display: flex; gap: 1rem }
        .container { max-width: 1140px; margin: 0 auto; padding: 0 20px }
        .sights__grid { display: grid; grid-template-columns: 1fr; gap: 24px }
        @media (min-width: 640px) { .sights__grid { grid-template-columns: repeat(2, 1fr) } }
        @media (min-width: 1024px) { .sights__grid { grid-template-columns: repeat(3, 1fr); gap: 32px } }
        .sights__card { background: #fff; border: 1px solid #e2e2e2; border-radius: 8px }
        .sights__card--wide { padding: 90px }
        .sights__image { width: 100%; aspect-ratio: 4 / 3 }
        .sights__body { padding: 20px 24px 28px }
        .sights__title { margin: 0 0 8px; font-size: 22px; line-height: 1.25; color: #1d2b36 }
        .sights__text { margin: 0 0 16px; font-size: 15px; line-height: 1.5 }
        .sights__link { display: inline-block; padding: 10px 18px; background: #245; color: #fff }
        .sights__link:hover { background: #123 })");
    EXPECT_EQ(read_.project.name, "look");
    EXPECT_EQ(read_.project.row().variants[0].className, "sights__grid");
    EXPECT_EQ(read_.project.row().cards.size(), 3U);
    EXPECT_FALSE(read_.project.row().given.has_value());
    EXPECT_EQ(columns(639), 1);
    EXPECT_EQ(columns(800), 2);
    EXPECT_EQ(columns(1024), 3);
    EXPECT_EQ(at(1000).row.columnGap->css(), "24px");
    EXPECT_EQ(at(1200).row.columnGap->css(), "32px");
    EXPECT_EQ(at(1200).card.padding.left->css(), "24px");
    EXPECT_EQ(at(1200).card.padding.bottom->css(), "28px");
    EXPECT_EQ(at(1200).card.border.colour->css(), "#e2e2e2");
    EXPECT_EQ(at(1200).card.radius->css(), "8px");
    EXPECT_DOUBLE_EQ(text("heading").size->sizeAt(1200), 22);
    EXPECT_EQ(text("heading").colour->css(), "#1d2b36");
    EXPECT_EQ(text("heading").margin.bottom->css(), "8px");
    EXPECT_EQ(text("button").background->css(), "#245");
    EXPECT_EQ(text("button").hover.background->css(), "#123");
    // With its padding on both sides.
    EXPECT_EQ(read_.project.page.container.maxWidth.css(), "1180px");
    EXPECT_TRUE(reports("Card: recognised by the rules for .sights__card."));
}

TEST_F(SheetProject, ReadsFloatsInColumnsWithShares) {
    read(
        ".cols{margin:0 -10px;overflow:hidden}.cols .col{float:left;width:33.333%;padding:0 10px 20px;"
        "box-sizing:border-box}@media (max-width:768px){.cols .col{width:50%}}@media (max-width:480px){.cols "
        ".col{width:100%}}.cols .col h3{font:bold 20px/26px Lato,sans-serif;margin:12px 0 6px}.cols .col "
        "p{font-size:14px;line-height:20px}.cols .col a.more{display:inline-block;background:#933}");
    EXPECT_EQ(columns(480), 1);
    EXPECT_EQ(columns(700), 2);
    EXPECT_EQ(columns(1200), 3);
    EXPECT_DOUBLE_EQ(text("heading").size->sizeAt(1200), 20);
    EXPECT_EQ(text("heading").lineHeight->css(), "26px");
    EXPECT_EQ(text("button").background->css(), "#933");
}

TEST_F(SheetProject, ReadsNestedRules) {
    read(R"(.band { max-inline-size: 70rem; margin-inline: auto;
        & .deck { display: flex; flex-wrap: wrap; gap: 1.5rem; list-style: none; padding: 0; margin: 0;
            & > li { box-sizing: border-box; flex: 1 1 30%; min-inline-size: 16rem; padding: 1.25rem; background: #f3efe6;
                & h3 { margin: 0 0 .5rem; font-size: 1.35rem }
                & p { margin: 0 } } } })");
    EXPECT_EQ(columns(1200), 3);
    EXPECT_EQ(columns(400), 1);
    EXPECT_EQ(at(1200).card.background->css(), "#f3efe6");
    EXPECT_EQ(at(1200).card.padding.top->css(), "1.25rem");
    EXPECT_DOUBLE_EQ(text("heading").size->sizeAt(1200), 21.6);
}

TEST_F(SheetProject, SaysThatOnlyMarkupKnowsHowManyFlexItemsThereAre) {
    read(
        ".feature-row{display:flex;gap:32px}.feature-row .feature{flex:1;padding:24px;border:1px solid #ddd}"
        ".feature-row .feature-title{font-size:22px;margin-bottom:10px}@media(max-width:800px){.feature-row{"
        "flex-direction:column}}");
    EXPECT_EQ(columns(1200), 3);
    EXPECT_EQ(columns(800), 1);
    EXPECT_TRUE(reports("Warning: The columns are as many as the cards"));
}

TEST_F(SheetProject, NamesThePlaceOfEachDeclaration) {
    read(
        "body { color: #222 }\n.deck { display: grid; grid-template-columns: 1fr 1fr }\n"
        ".deck article { padding: 9px } .deck h3 { font-size: 20px }\n");
    const auto heading =
        std::ranges::find(read_.found, "heading", [](const FoundElement& element) { return element.role; });
    ASSERT_NE(heading, read_.found.end());
    ASSERT_EQ(heading->declarations.size(), 2U);
    EXPECT_EQ(heading->declarations[0].property, "font-size");
    EXPECT_EQ(heading->declarations[0].place, "look.css:3:32");
    EXPECT_FALSE(heading->declarations[0].inherited);
    EXPECT_EQ(heading->declarations[1].property, "color");
    EXPECT_EQ(heading->declarations[1].place, "look.css:1:1");
    EXPECT_TRUE(heading->declarations[1].inherited);
}

TEST(PastedSheet, NamesThePlacesOfItsRules) {
    text::Fonts fonts;
    text::ParagraphStore store(fonts);
    project::Problems problems;
    const auto read = importSheet(
        ".deck { display: grid; grid-template-columns: 1fr 1fr; gap: calc(1rem + 1vw) }\n"
        ".deck article { padding: 9px }\n .deck h3 { font-size: 20px }\n",
        "", 16, store, problems);
    ASSERT_TRUE(read.has_value());
    const auto heading =
        std::ranges::find(read->found, "heading", [](const FoundElement& element) { return element.role; });
    ASSERT_NE(heading, read->found.end());
    EXPECT_EQ(heading->declarations.front().place, ":3:2");
    ASSERT_FALSE(read->notes.empty());
    ASSERT_TRUE(read->notes.front().at.has_value());
    EXPECT_EQ(read->notes.front().at->place, ":1:1");
    EXPECT_NE(read->notes.front().says.find("(line 1, column 1 of the pasted text)"), std::string::npos)
        << read->notes.front().says;
}

TEST_F(SheetProject, RefusesSheetsWithoutARow) {
    EXPECT_NE(refusal("body { color: #333 } .site-nav { display: flex } .site-nav a { padding: 1rem }")
                  .find("No rule of the stylesheet lays out a row of columns"),
              std::string::npos);
    EXPECT_NE(refusal("").find("No rule of the stylesheet"), std::string::npos);
    // Classes of one property each say nothing about what is inside what.
    EXPECT_NE(refusal(".grid{display:grid}.grid-3{grid-template-columns:repeat(3,1fr)}.p-4{padding:1rem}"
                      ".text-lg{font-size:1.1rem}")
                  .find("no rule is for a heading"),
              std::string::npos);
}

}  // namespace
}  // namespace tenter::start
