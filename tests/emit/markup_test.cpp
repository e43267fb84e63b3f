#include <gtest/gtest.h>

#include "emit/class_names.h"
#include "emit/markup_writer.h"
#include "emit/page.h"
#include "sample.h"

namespace tenter::emit {
namespace {

using tests::count;

using project::Run;
using project::TextPart;

project::Project oneCard(TextPart part) {
    project::Project project = tests::walks();
    project::Card card;
    card.parts = {std::move(part)};
    project.row().cards = {card};
    return project;
}

// HTML § 4.3 and § 4.4: a section of articles, each with a heading of the level asked for.
TEST(Markup, IsASectionOfArticles) {
    project::Project project = tests::walks();
    project.row().headingLevel = 2;
    const std::string html = markup(project, 1);
    EXPECT_EQ(html.rfind("<section class=\"walks-trio\" lang=\"en\">", 0), 0U) << html;
    EXPECT_EQ(count(html, "<article class=\"walks-card\">"), 2U);
    EXPECT_EQ(count(html, "<h2 class=\"walks-heading\">"), 2U);
    EXPECT_EQ(count(html, "<a class=\"walks-button\" href=\"#book\">Book</a>"), 2U);
    EXPECT_EQ(count(html,
                    "<img class=\"walks-picture\" src=\"pictures/shore.png\" alt=\"The shore at low tide\" "
                    "width=\"1200\" height=\"800\">"),
              2U);
    EXPECT_EQ(count(html, "data-tenter"), 0U);
}

TEST(Markup, SaysTheDirectionOfRightToLeftRows) {
    project::Project project = tests::walks();
    project.rightToLeft = true;
    EXPECT_EQ(count(markup(project, 0), "dir=\"rtl\""), 1U);
}

// HTML § 13.1.2.3: text and attribute values hold <, & and " only as character references.
TEST(Markup, EscapesHostileText) {
    TextPart part;
    part.role = "body";
    part.copy = {{Run::Kind::Plain, "<script>alert(1)</script>", ""},
                 {Run::Kind::Strong, "</style>\"&", ""},
                 {Run::Kind::Break, "", ""},
                 {Run::Kind::Emphasis, std::string("a\0b\xED\xA0\x80", 6), ""},
                 {Run::Kind::Link, "<img>", "\"><script>"}};
    const std::string html = markup(oneCard(part), 0);
    EXPECT_EQ(count(html, "<script"), 0U);
    EXPECT_EQ(count(html, "<img"), 0U);
    EXPECT_EQ(
        count(html,
              "&lt;script&gt;alert(1)&lt;/script&gt;<strong>&lt;/style&gt;&quot;&amp;</strong><br><em>a"),
        1U);
    EXPECT_EQ(count(html, "<a href=\"&quot;&gt;&lt;script&gt;\">"), 1U);
    EXPECT_EQ(count(html, "\xEF\xBF\xBD"), 4U);  // NUL, and three bytes of a lone surrogate
}

TEST(Markup, RemovesAddressesThatRunScripts) {
    TextPart part;
    part.role = "button";
    part.copy = {{Run::Kind::Plain, "Book", ""}};
    part.link = "javascript:alert(1)";
    project::Problems problems;
    MarkupOptions options;
    const std::string html = writeMarkup(oneCard(part), 0, options, problems);
    EXPECT_EQ(count(html, "javascript"), 0U);
    EXPECT_EQ(count(html, "href=\"#\""), 1U);
    ASSERT_EQ(problems.size(), 1U);
    EXPECT_EQ(problems.front().place, "/cards/0/parts/0/link");
}

// HTML § 4.5.1: a link holds no other link; a heading stays a heading.
TEST(Markup, PutsAHeadingsLinkWithinIt) {
    TextPart part;
    part.role = "heading";
    part.copy = {{Run::Kind::Plain, "Low ", ""}, {Run::Kind::Link, "tide", "#tide"}};
    part.link = "#walk";
    EXPECT_EQ(
        count(markup(oneCard(part), 0), "<h3 class=\"walks-heading\"><a href=\"#walk\">Low tide</a></h3>"),
        1U);
}

// CSS Images 3 § 5.6 and CSS Sizing 4 § 5.1.
TEST(Markup, SaysAPicturesOwnFocusAndRatioInline) {
    project::Project project = tests::walks();
    auto& picture = std::get<project::PicturePart>(project.row().cards[0].parts[0]);
    picture.focusX = 0.3;
    picture.ratio = project::Ratio{4, 3};
    EXPECT_EQ(count(markup(project, 0), "style=\"aspect-ratio: 4 / 3; object-position: 30% 50%\""), 1U);
    picture.ratio = project::Ratio{};
    EXPECT_EQ(count(markup(project, 0), "style=\"aspect-ratio: 1200 / 800; object-position: 30% 50%\""), 1U);
}

// Every class of the markup is listed, and no other: a page with its own elements needs just these.
TEST(Markup, ListsTheClassesThatElementsNeed) {
    for (const std::size_t variant : {0U, 1U}) {
        const project::Project project = tests::walks();
        const std::string html = markup(project, variant);
        for (const ClassName& one : classNames(project, variant))
            EXPECT_GE(count(html, "class=\"" + one.name + "\""), 1U) << one.element;
        std::size_t classes = 0;
        for (const ClassName& one : classNames(project, variant))
            classes += count(html, "class=\"" + one.name + "\"");
        EXPECT_EQ(count(html, "class=\""), classes);
    }
    EXPECT_EQ(classLine(tests::walks(), 1).rfind("row .walks-trio, card .walks-card, ", 0), 0U);
}

}  // namespace
}  // namespace tenter::emit
