// Roles given to elements by hand. No outside source: what is checked is that the page, adopted with the
// choices, has the roles that were asked for, and keeps the others.
#include "markup/choose.h"

#include <gtest/gtest.h>

#include "markup/given.h"
#include "parsing.h"
#include "project/file.h"
#include "rows.h"

namespace tenter::markup {
namespace {

class Choosing {
public:
    explicit Choosing(std::string html) : html_(std::move(html)) {
        project::Problems problems;
        project_ = project::parse(
                       R"({"format": "tenter-project", "version": 1, "name": "Walks", "cards": [],
                "variants": [{"class": "walks-trio", "bands": [{}]}]})",
                       "walks", {}, problems)
                       .value_or(project::Project{});
        EXPECT_TRUE(problems.empty()) << linesOf(problems);
    }

    /// `sound`: nothing of it is amiss.
    GivenRow row(bool sound = true) {
        project::Problems problems;
        const std::optional<Adopted> adopted = adopt(project_, page(), problems);
        EXPECT_TRUE(adopted) << linesOf(problems);
        if (!adopted) return {};
        std::optional<GivenRow> row = givenRow(adopted->project, problems);
        EXPECT_TRUE(row && (problems.empty() || !sound)) << linesOf(problems);
        return row ? std::move(*row) : GivenRow{};
    }

    /// The `order`th element, from 0, of that tag.
    NodeId element(const std::string& tag, std::size_t order = 0) {
        const GivenRow found = row(false);
        for (NodeId at = 0; at < found.tree.size(); ++at)
            if (found.tree[at].isHtml(tag) && order-- == 0) return at;
        ADD_FAILURE() << "no " << tag;
        return noNode;
    }

    void choose(NodeId node, const std::string& role) {
        project::Problems problems;
        const auto chosen = markup::choose(project_, page(), node, role, problems);
        EXPECT_TRUE(chosen) << linesOf(problems);
        if (chosen) choices_ = *chosen;
    }

    std::string refused(NodeId node, const std::string& role) {
        project::Problems problems;
        EXPECT_FALSE(markup::choose(project_, page(), node, role, problems));
        return linesOf(problems);
    }

    /// `heading body; heading body`: the roles of each card's parts.
    std::string roles() {
        std::string out;
        for (const GivenCard& card : row().cards) {
            out += out.empty() ? "" : ";";
            for (const GivenPart& part : card.parts)
                out += (out.empty() ? "" : " ") + part.role;
        }
        return out;
    }

private:
    PageToAdopt page() { return {html_, "page.html", ".", choices_}; }
    std::string html_;
    project::Project project_;
    std::vector<RoleChoice> choices_;
};

TEST(Choose, gives_the_role_to_the_corresponding_element_of_every_card_and_keeps_the_others) {
    Choosing choosing(plainList);
    EXPECT_EQ(choosing.roles(), "picture heading body button; picture heading body button");
    choosing.choose(choosing.element("p"), "kicker");
    EXPECT_EQ(choosing.roles(), "picture heading kicker button; picture heading kicker button");
    choosing.choose(choosing.element("h4", 1), "body");
    EXPECT_EQ(choosing.roles(), "picture body kicker button; picture body kicker button");
}

TEST(Choose, makes_the_former_heading_body) {
    Choosing choosing(plainList);
    choosing.choose(choosing.element("p"), "heading");
    EXPECT_EQ(choosing.roles(), "picture body heading button; picture body heading button");
}

TEST(Choose, removes_an_element_from_the_parts_and_adds_it_again) {
    Choosing choosing(articles);
    EXPECT_EQ(choosing.roles(), "kicker heading body button; kicker heading body button");
    choosing.choose(choosing.element("p"), "");
    EXPECT_EQ(choosing.roles(), "heading body button; heading body button");
    choosing.choose(choosing.element("button"), "");
    EXPECT_EQ(choosing.roles(), "heading body; heading body");
    choosing.choose(choosing.element("p"), "price");
    EXPECT_EQ(choosing.roles(), "price heading body; price heading body");
}

TEST(Choose, changes_the_row_or_the_cards) {
    // The row's wrapper has other blocks beside the grid: made the row, and taken back by a card.
    Choosing choosing("<div class=\"site\"><div class=\"lead\"><h2>Ferries</h2><p>Two boats go.</p></div>" +
                      plainList + "<p>Ask at the quay.</p></div>");
    EXPECT_EQ(choosing.row().cards.size(), 2U);
    choosing.choose(choosing.element("div"), "row");
    // Such different blocks are not valid cards, which is a problem.
    const GivenRow wide = choosing.row(false);
    EXPECT_EQ(wide.tree[wide.row].classes().front(), "site");
    choosing.choose(choosing.element("li"), "card");
    const GivenRow again = choosing.row();
    ASSERT_EQ(again.cards.size(), 2U);
    EXPECT_TRUE(again.tree[again.cards[0].node].isHtml("li"));
    EXPECT_EQ(choosing.roles(), "picture heading body button; picture heading body button");
}

TEST(Choose, refuses_impossible_roles_with_a_reason) {
    Choosing choosing(plainList);
    EXPECT_NE(choosing.refused(choosing.element("ul"), "heading").find("is not in a card"),
              std::string::npos);
    EXPECT_NE(choosing.refused(choosing.element("html"), "row").find("cannot be the row"), std::string::npos);
    EXPECT_NE(choosing.refused(choosing.element("h4"), "Big One").find("The role must be a role name"),
              std::string::npos);
    EXPECT_NE(choosing.refused(noNode, "body").find("There is no such element."), std::string::npos);
}

}  // namespace
}  // namespace tenter::markup
