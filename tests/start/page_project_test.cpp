// The project that a page's row is imported into if there is no other.
#include "start/page_project.h"

#include <gtest/gtest.h>

#include "project/cascade.h"
#include "project/validate.h"

namespace tenter::start {
namespace {

class PageProject : public ::testing::Test {
protected:
    project::Project importOf(const std::string& html, const std::filesystem::path& file = {}) {
        markup::PageToAdopt page;
        page.bytes = html;
        page.file = file;
        page.projectFolder = ".";
        const project::Project own = projectForPage(page, store_).project;
        EXPECT_TRUE(project::validate(own).empty());
        project::Problems problems;
        const auto adopted = markup::adopt(own, page, problems);
        EXPECT_TRUE(adopted.has_value());
        if (!adopted) return own;
        report_ = adopted->report;
        EXPECT_TRUE(project::validate(adopted->project).empty());
        return adopted->project;
    }
    static int mostColumns(const project::Project& project) {
        return *project::resolve(project, project.row().variants[0],
                                 project.row().variants[0].bands.size() - 1)
                    .row.columns;
    }
    text::Fonts fonts_;
    text::ParagraphStore store_{fonts_};
    std::vector<std::string> report_;
};

const std::string page = R"(<html lang="sv"><head><title>Shore  walks</title><style>
body { color: #222; font-family: "Karla", sans-serif; background: #faf7f0 }
.walks { display: grid; grid-template-columns: repeat(2, 1fr) }
.walk { background: rgb(250, 240, 230); padding: 12px 1rem; border: 1px solid #cba; border-radius: 6px }
.walk h3 { color: navy; font-weight: 600; line-height: 1.2 }
.walk a { background: #1d5a63; color: white; padding: 8px 16px; border-radius: 3px }
</style></head><body><main class="row"><h2 class="row">Walks</h2><div class="row walks">
<div class="walk"><img src="a.jpg" alt="Sand"><h3>Low tide</h3><p>Two slow miles across the sand.</p><a href="/a">Book</a></div>
<div class="walk"><img src="b.jpg" alt="Bank"><h3>Geese</h3><p>At first light, on the bank.</p><a href="/b">Join</a></div>
<div class="walk"><img src="c.jpg" alt="Boat"><h3>Ferry</h3><p>Forty minutes over the sound.</p><a href="/c">Times</a></div>
</div></main></body></html>)";

TEST_F(PageProject, TakesNameClassColumnsAndColoursFromThePage) {
    const project::Project made = importOf(page);
    EXPECT_EQ(made.name, "Shore walks");
    // "row" is the class of other elements, too.
    EXPECT_EQ(made.row().variants[0].className, "walks");
    EXPECT_EQ(made.row().name, "walks");
    EXPECT_EQ(made.language, "sv");
    EXPECT_EQ(mostColumns(made), 2);
    EXPECT_EQ(made.row().cards.size(), 3U);
    const project::TextStyle& heading = *made.row().style.text.find("heading");
    EXPECT_EQ(heading.colour->css(), "#000080");
    EXPECT_EQ(*heading.weight, 600);
    EXPECT_EQ(heading.family->front(), "Karla");
    EXPECT_EQ(made.row().style.text.find("body")->colour->css(), "#222");
    EXPECT_EQ(made.row().style.text.find("button")->background->css(), "#1d5a63");
    EXPECT_EQ(made.row().style.text.find("button")->padding.left->css(), "16px");
    EXPECT_EQ(made.row().style.card.background->css(), "#faf0e6");
    EXPECT_EQ(made.row().style.card.padding.right->css(), "1rem");
    EXPECT_EQ(made.row().style.card.border.width->css(), "1px");
    EXPECT_EQ(made.row().style.card.radius->css(), "6px");
    EXPECT_EQ(made.page.container.background.css(), "#faf7f0");
}

TEST_F(PageProject, ReportDoesNotContradictTheProject) {
    importOf(page);
    for (const std::string& sentence : report_) {
        EXPECT_EQ(sentence.find("does not have the class"), std::string::npos) << sentence;
        EXPECT_EQ(sentence.find("Tenter added"), std::string::npos) << sentence;
    }
}

TEST_F(PageProject, NamesARowWithoutTitleAndClass) {
    const std::string list =
        "<ul><li><h3>Low water</h3><p>At noon, on the steps.</p></li>"
        "<li><h3>High water</h3><p>At six, by the wall.</p></li></ul>";
    EXPECT_EQ(importOf(list, "harbour-times.html").name, "harbour-times");
    EXPECT_EQ(importOf(list, "/saved/harbour-times/index.html").name, "harbour-times");
    const project::Project pasted = importOf(list);
    EXPECT_EQ(pasted.name, "Imported row");
    EXPECT_EQ(pasted.row().variants[0].className, "imported-row");
    EXPECT_EQ(mostColumns(pasted), 2);
}

TEST_F(PageProject, IgnoresValuesThatAProjectCannotHold) {
    std::string strange = page;
    strange.replace(strange.find("12px 1rem"), 9, "90000px 1rem");
    EXPECT_EQ(importOf(strange).row().cards.size(), 3U);
    strange = page;
    strange.replace(strange.find("navy"), 4, "var(--x)");
    // A colour that cannot be computed is inherited, here that of the body. CSS Variables 1 § 3.1.
    EXPECT_EQ(importOf(strange).row().style.text.find("heading")->colour->css(), "#222");
}

TEST_F(PageProject, IsUsualIfThePageHasNoRow) {
    markup::PageToAdopt nothing;
    nothing.bytes = "nothing of the kind";
    EXPECT_EQ(projectForPage(nothing, store_).project.row().variants.size(), 1U);
}

}  // namespace
}  // namespace tenter::start
