#include <gtest/gtest.h>

#include "given.h"

namespace tenter::project {
namespace {

TEST(SharedText, is_shared_by_copies_until_one_changes) {
    const SharedText page = std::string("<ul>…</ul>");
    SharedText copy = page;
    EXPECT_TRUE(copy.isSharedWith(page));
    copy += "<p>";
    EXPECT_FALSE(copy.isSharedWith(page));
    EXPECT_EQ(page, "<ul>…</ul>");
    EXPECT_EQ(copy, "<ul>…</ul><p>");
    EXPECT_EQ(SharedText(), "");
    EXPECT_NE(copy, page);
    EXPECT_EQ(page, SharedText("<ul>…</ul>"));
}

// Undo keeps a project for every step: what a step leaves alone must not be copied.
TEST(SharedText, lets_copies_of_a_project_share_its_page_and_texts) {
    const Project project = sound(smallProjectWith(
        "/given", Json::parse(R"({"markup": "<ul></ul>", "selectors": {"row": "", "card": "li"}})")));
    Project edited = project;
    edited.row().style.row.columns = 2;
    ASSERT_NE(edited, project);
    EXPECT_TRUE(edited.row().given->markup.isSharedWith(project.row().given->markup));
    const auto textOf = [](const Project& of) -> const SharedText& {
        return std::get<TextPart>(of.row().cards[0].parts[0]).copy[0].text;
    };
    EXPECT_TRUE(textOf(edited).isSharedWith(textOf(project)));
}

}  // namespace
}  // namespace tenter::project
