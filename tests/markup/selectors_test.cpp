#include "markup/selectors.h"

#include "css/selectors.h"
#include "markup/class_words.h"
#include "markup/matching.h"
#include "parsing.h"

namespace tenter::markup {
namespace {

std::vector<NodeId> selected(const Tree& tree, const std::string& scope, const std::string& selector) {
    css::Problems problems;
    return selectedWithin(tree, find(tree, scope),
                          css::readSelectors(selector, problems).value_or(css::SelectorList{}));
}

// The elements marked with the attribute `x` get a selector, and it selects them.
std::string derived(const std::string& html, const std::vector<std::string>& avoided = {}) {
    const Tree tree = treeOf("<div class=row>" + html + "</div>");
    std::vector<NodeId> wanted;
    for (NodeId at = 0; at < tree.size(); ++at)
        if (tree[at].find("x") != nullptr) wanted.push_back(at);
    const Derived made = SelectorMaker(tree, find(tree, "row"), avoided).derived(wanted);
    EXPECT_TRUE(made.exact) << made.selector;
    EXPECT_EQ(selected(tree, "row", made.selector), wanted) << made.selector;
    return made.selector;
}

// Selectors 4 § 5 to § 15; the scope is an ancestor, as if its class stood before.
TEST(Matching, is_within_the_scope_and_asks_for_nothing_outside_it) {
    const Tree tree = treeOf(
        "<div class=wrap><p>a</p><div class=row><p id=one>b</p><div class=card><p "
        "id=two>c</p></div></div></div>");
    EXPECT_EQ(selected(tree, "row", "p"), (std::vector<NodeId>{find(tree, "one"), find(tree, "two")}));
    EXPECT_EQ(selected(tree, "row", ".card p"), std::vector<NodeId>{find(tree, "two")});
    EXPECT_TRUE(selected(tree, "row", ".wrap p").empty());
    EXPECT_TRUE(selected(tree, "row", ".row p").empty());
    EXPECT_TRUE(selected(tree, "row", ".row").empty());
    EXPECT_EQ(selected(tree, "row", "p + .card, p:first-child"),
              (std::vector<NodeId>{find(tree, "one"), find(tree, "card"), find(tree, "two")}));
}

TEST(Selectors, are_by_class_where_one_will_do) {
    EXPECT_EQ(derived("<h3 class='title' x>a</h3><p>b</p><h3 class='title' x>c</h3>"), ".title");
    EXPECT_EQ(derived("<h3 class='note title' x>a</h3><p class=note>b</p>"), ".title");
    EXPECT_EQ(derived("<h3 class=note x>a</h3><p class=note>b</p>"), "h3.note");
}

TEST(Selectors, are_within_a_class_else) {
    EXPECT_EQ(derived("<div class=walk><p x>a</p></div><p>b</p>"), ".walk p");
    EXPECT_EQ(derived("<div class=walk><h3 x>a</h3></div><div class=walk><h3 x>a</h3></div>"), ".walk h3");
    EXPECT_EQ(derived("<div class=walk><i class=s x>a</i></div><i class=s>b</i>"), ".walk .s");
}

TEST(Selectors, are_by_tag_where_there_is_no_class) {
    EXPECT_EQ(derived("<ul><li x><h4>a</h4></li><li x><h4>b</h4></li></ul>"), "li");
}

TEST(Selectors, are_several_where_elements_are_unlike) {
    EXPECT_EQ(derived("<p class=text x>a</p><blockquote x>b</blockquote><p>c</p>"), "blockquote, .text");
}

TEST(Selectors, are_by_position_only_where_nothing_else_will_do) {
    EXPECT_EQ(derived("<div class=walk><p>a</p><p x>b</p></div><div class=walk><p>a</p><p x>b</p></div>"),
              ".walk > p:nth-of-type(2)");
    EXPECT_EQ(derived("<div><p>a</p><p x>b</p></div>"), ":scope > div > p:nth-of-type(2)");
    EXPECT_EQ(derived("<div><p>a</p></div><div><p x>b</p></div>"),
              ":scope > div:nth-of-type(2) > p:nth-of-type(1)");
}

// Elements without a class are reached from the nearest class, or from the scope.
TEST(Selectors, follow_children_where_elements_have_no_class) {
    EXPECT_EQ(
        derived("<div x><div class=card><div><p>a</p></div></div></div><div x><div class=card></div></div>"),
        ":scope > div");
    EXPECT_EQ(derived("<div><div class=card><div x><p>a</p></div></div></div><div><div class=card><div "
                      "x></div></div></div>"),
              ".card div");
    EXPECT_EQ(derived("<ul class=card><li x><p><b><i></i></b></p><ul><li></li></ul></li></ul>"),
              ".card > li");
}

TEST(Selectors, use_no_class_that_looks_made_or_says_a_state_or_is_avoided) {
    EXPECT_EQ(
        derived("<h3 class='k8231947 first active x4f9a2c walks-trio' x>a</h3><p>b</p>", {"walks-trio"}),
        "h3");
}

TEST(ClassWords, are_read_from_hyphens_underscores_and_capitals) {
    EXPECT_EQ(wordsOf("walkCard__more-link"), (std::vector<std::string>{"walk", "card", "more", "link"}));
    EXPECT_TRUE(wordsOf("").empty());
}

// Common practice, no source.
TEST(ClassWords, distinguish_stable_classes_from_generated_ones) {
    for (const char* lasting : {"walk", "walk-title", "col-4", "walkCardTitle", "h2", "grid_12", "part-123"})
        EXPECT_TRUE(isStable(lasting)) << lasting;
    for (const char* passing : {"", "css-1x9z3k", "k8231947", "post-20261", "bdVaJa", "is-open", "active",
                                "first", "md:half", "1up", "item-a1b2c3"})
        EXPECT_FALSE(isStable(passing)) << passing;
}

}  // namespace
}  // namespace tenter::markup
