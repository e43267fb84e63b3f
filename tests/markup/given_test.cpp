#include "markup/given.h"

#include "parsing.h"

namespace tenter::markup {
namespace {

const std::string markup =
    "<div class=\"wrap\"><div class=\"walks-trio\"><div class=\"grid\">"
    "<div class=\"col\"><div class=\"walk\"><img src=\"a.jpg\"><div "
    "class=\"words\"><h3>Ebb</h3><p>Out.</p></div>"
    "<div class=\"foot\"><span><a class=\"btn\">Go</a></span></div></div></div>"
    "<div class=\"col\"><div class=\"walk\"><div class=\"words\"><h3>Flood</h3></div></div></div>"
    "</div></div></div>";

project::Project projectWith(std::vector<std::pair<std::string, std::string>> selectors) {
    project::Project project;
    project.row().variants.resize(2);
    project.row().variants[0].className = "walks-pair";
    project.row().variants[1].className = "walks-trio";
    project.row().given.emplace();
    project.row().given->markup = markup;
    project.row().given->selectors = std::move(selectors);
    return project;
}

std::string names(const Tree& tree, const std::vector<NodeId>& nodes) {
    std::string out;
    for (const NodeId node : nodes) {
        const std::vector<std::string_view> classes = tree[node].classes();
        out += (out.empty() ? "" : " ") + (classes.empty() ? tree[node].name : std::string(classes.front()));
    }
    return out;
}

TEST(GivenRow, is_found_with_its_cards_parts_and_wrappers) {
    project::Problems problems;
    const auto row = givenRow(projectWith({{"row", ".grid"},
                                           {"card", ".walk"},
                                           {"button", ".btn"},
                                           {"picture", "img"},
                                           {"heading", ".walk h3"},
                                           {"body", "p"}}),
                              problems);
    ASSERT_TRUE(row) << linesOf(problems);
    EXPECT_TRUE(problems.empty()) << linesOf(problems);
    EXPECT_EQ(row->variant, 1U);
    EXPECT_EQ(names(row->tree, {row->classElement, row->row}), "walks-trio grid");
    EXPECT_TRUE(row->wrappers.empty());
    ASSERT_EQ(row->cards.size(), 2U);
    EXPECT_EQ(names(row->tree, row->cards[0].wrappers), "col");
    std::string parts;
    for (const GivenPart& part : row->cards[0].parts)
        parts += part.role + " in [" + names(row->tree, part.wrappers) + "] ";
    EXPECT_EQ(parts, "picture in [] heading in [words] body in [words] button in [foot span] ");
    EXPECT_EQ(row->cards[1].parts.size(), 1U);
    ASSERT_NE(row->find("heading"), nullptr);
    EXPECT_EQ(row->find("heading")->nodes.size(), 2U);
    EXPECT_EQ(row->find("kicker"), nullptr);
    std::string wrappers;
    for (const GivenWrapper& wrapper : row->partWrappers())
        wrappers += names(row->tree, {wrapper.node}) + " " + std::to_string(wrapper.card) + ":" +
                    std::to_string(wrapper.first) + "-" + std::to_string(wrapper.end) + " ";
    EXPECT_EQ(wrappers, "words 0:1-3 foot 0:3-4 span 0:3-4 words 1:0-1 ");
}

TEST(GivenRow, may_be_the_element_with_the_class_itself) {
    project::Problems problems;
    const auto row = givenRow(projectWith({{"row", ""}, {"card", ".walk"}}), problems);
    ASSERT_TRUE(row) << linesOf(problems);
    EXPECT_EQ(row->row, row->classElement);
    EXPECT_EQ(names(row->tree, row->cards[0].wrappers), "grid col");
}

std::string problemsOf(const project::Project& project, bool expected) {
    project::Problems problems;
    EXPECT_EQ(givenRow(project, problems).has_value(), expected);
    std::string out;
    for (const project::Problem& problem : problems) {
        EXPECT_FALSE(problem.fix.empty());
        out += problem.place + ": " + problem.what + "\n";
    }
    return out;
}

TEST(GivenRow, reports_problems_with_their_places) {
    EXPECT_EQ(problemsOf(projectWith({{"row", ".grid"}, {"card", ".walk"}, {"heading", ".gone"}}), true),
              "/given/selectors/heading: The selector \".gone\" selects nothing in the row.\n");
    EXPECT_EQ(
        problemsOf(projectWith({{"row", ".grid"}, {"card", ".walk"}, {"body", ".words"}, {"heading", "h3"}}),
                   true),
        "/given/selectors/heading: <h3> is inside an element that has the role body.\n"
        "/given/selectors/heading: <h3> is inside an element that has the role body.\n");
    EXPECT_EQ(
        problemsOf(projectWith({{"row", ".grid"}, {"card", ".walk"}, {"body", "p"}, {"heading", "p"}}), true),
        "/given/selectors/heading: <p> already has the role body.\n");
    EXPECT_EQ(problemsOf(projectWith({{"row", ".grid"}, {"card", ".col, .walk"}}), true),
              "/given/selectors/card: The card <div class=\"walk\"> is inside another card.\n"
              "/given/selectors/card: The card <div class=\"walk\"> is inside another card.\n");
    EXPECT_EQ(
        problemsOf(projectWith({{"row", ".walk"}, {"card", ".words"}, {"heading", "h3"}}), true),
        "/given/selectors/row: The selector \".walk\" selects more than one element; the first is used.\n"
        "/given/selectors/card: The card <div class=\"words\"> is outside the row.\n"
        "/given/selectors/heading: <h3> is outside the cards.\n");
    EXPECT_EQ(problemsOf(projectWith({{"row", ".grid"}, {"card", ".gone"}}), false),
              "/given/selectors/card: The selector \".gone\" selects nothing in the row.\n");
    const std::string unread =
        problemsOf(projectWith({{"row", ".grid"}, {"card", ".walk"}, {"body", "p >"}}), true);
    EXPECT_TRUE(unread.starts_with("/given/selectors/body: ")) << unread;
}

TEST(GivenRow, without_a_variants_class_names_the_class_to_add_in_the_cms) {
    project::Project project = projectWith({{"row", ""}, {"card", ".walk"}});
    project.row().given->markup = "<div class=\"row\"><div class=\"walk\"></div></div>";
    project::Problems problems;
    EXPECT_FALSE(givenRow(project, problems));
    ASSERT_EQ(problems.size(), 1U);
    EXPECT_EQ(problems[0].place, "/given/markup");
    EXPECT_NE(problems[0].fix.find("Add the class walks-pair to the row in the CMS"), std::string::npos);
}

TEST(GivenRow, that_is_no_row_is_refused_at_once) {
    project::Project project = projectWith({{"row", ""}, {"card", "* * * *"}});
    for (int i = 0; i < 5000; ++i)
        project.row().given->markup += "<div class=walks-trio>";
    EXPECT_NE(problemsOf(project, false).find("/given/markup: The markup has more than"), std::string::npos);
    project.row().given.reset();
    EXPECT_EQ(problemsOf(project, false), "");
}

}  // namespace
}  // namespace tenter::markup
