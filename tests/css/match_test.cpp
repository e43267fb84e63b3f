// The source of these is Selectors 4; the clause stands beside each. tests/engines compares with what
// browsers select.
#include "css/match.h"

#include <gtest/gtest.h>

#include <array>

#include "tree.h"

namespace tenter::css {
namespace {

// html > body > (h2.title, section#walks.row.wide > (article.card × 4 > (h3, p, a[href] or a)), div)
class CssMatch : public ::testing::Test {
protected:
    void SetUp() override {
        const auto html = tree_.add({}, "html", {{"lang", "en-GB"}});
        const auto body = tree_.add(html, "BODY");
        tree_.add(body, "h2", {{"class", "title"}});
        const auto section = tree_.add(body, "section", {{"id", "walks"}, {"class", " row\twide "}});
        for (int i = 0; i < 4; ++i) {
            const auto card = tree_.add(section, "article",
                                        {{"class", "card"}, {"data-tide", i % 2 ? "low" : "high-water"}});
            tree_.addText(tree_.add(card, "h3"));
            tree_.addText(tree_.add(card, "p"));
            if (i == 2) tree_.addText(tree_.add(card, "p", {{"class", "late"}}));
            tree_.add(card, "a",
                      i == 3 ? Tree::Attributes() : Tree::Attributes{{"href", "#"}, {"rel", "NEXT"}});
        }
        tree_.add(body, "div");
    }

    // How many elements of the tree are selected.
    [[nodiscard]] int selected(std::string_view text, ActivePseudoClasses active = {}) const {
        Problems problems;
        const auto list = readSelectors(text, problems);
        EXPECT_TRUE(list) << text;
        int count = 0;
        for (std::size_t i = 0; list && i < tree_.size(); ++i)
            count += matches(*list, tree_, i, active) ? 1 : 0;
        return count;
    }

    Tree tree_;
};

// § 5, § 6.6.
TEST_F(CssMatch, SelectsByTypeClassAndId) {
    EXPECT_EQ(selected("*"), 22);
    EXPECT_EQ(selected("ARTICLE"), 4);
    EXPECT_EQ(selected("body"), 1);
    EXPECT_EQ(selected(".row.wide"), 1);
    EXPECT_EQ(selected(".ROW"), 0);
    EXPECT_EQ(selected("#walks"), 1);
    EXPECT_EQ(selected("section#other"), 0);
    EXPECT_EQ(selected("h2, h3, .none"), 5);
}

// § 6; HTML names the attributes whose values have no case.
TEST_F(CssMatch, SelectsByAttribute) {
    EXPECT_EQ(selected("[data-tide]"), 4);
    EXPECT_EQ(selected("[DATA-TIDE=low]"), 2);
    EXPECT_EQ(selected("[data-tide=LOW]"), 0);
    EXPECT_EQ(selected("[data-tide=LOW i]"), 2);
    EXPECT_EQ(selected("[rel=next]"), 3);
    EXPECT_EQ(selected("[rel=next s]"), 0);
    EXPECT_EQ(selected("[data-tide|=high]"), 2);
    EXPECT_EQ(selected("[data-tide|=hig]"), 0);
    EXPECT_EQ(selected("[data-tide^=high]"), 2);
    EXPECT_EQ(selected("[data-tide$=water]"), 2);
    EXPECT_EQ(selected("[data-tide*='h-w']"), 2);
    EXPECT_EQ(selected("[data-tide*='']"), 0);
    EXPECT_EQ(selected("[class~=wide]"), 1);
    EXPECT_EQ(selected("[class~='row wide']"), 0);
    EXPECT_EQ(selected("[class~='']"), 0);
}

// § 15.
TEST_F(CssMatch, SelectsByCombinators) {
    EXPECT_EQ(selected("body h3"), 4);
    EXPECT_EQ(selected("body > h3"), 0);
    EXPECT_EQ(selected("section > article > h3"), 4);
    EXPECT_EQ(selected("h3 + p"), 4);
    EXPECT_EQ(selected("h3 ~ p"), 5);
    EXPECT_EQ(selected("article + article"), 3);
    EXPECT_EQ(selected("article ~ article ~ article"), 2);
    EXPECT_EQ(selected("h2 + section p ~ a"), 4);
    EXPECT_EQ(selected("html body section article p.late"), 1);
}

// § 13, § 14.
TEST_F(CssMatch, SelectsByPlaceInTheTree) {
    EXPECT_EQ(selected(":root"), 1);
    EXPECT_EQ(selected("h3:first-child"), 4);
    EXPECT_EQ(selected("p:first-child"), 0);
    EXPECT_EQ(selected("p:first-of-type"), 4);
    EXPECT_EQ(selected("p:last-of-type"), 4);
    EXPECT_EQ(selected("p:only-of-type"), 3);
    EXPECT_EQ(selected("body:only-child"), 1);
    EXPECT_EQ(selected("a:last-child"), 4);
    EXPECT_EQ(selected("article:nth-child(odd)"), 2);
    EXPECT_EQ(selected("article:nth-child(-n + 3)"), 3);
    EXPECT_EQ(selected("article:nth-child(n + 3)"), 2);
    EXPECT_EQ(selected("article:nth-child(3n)"), 1);
    EXPECT_EQ(selected("article:nth-child(0)"), 0);
    EXPECT_EQ(selected("article:nth-last-child(1)"), 1);
    EXPECT_EQ(selected("p:nth-of-type(2)"), 1);
    EXPECT_EQ(selected("p:nth-last-of-type(2)"), 1);
    EXPECT_EQ(selected("article:nth-child(2 of [data-tide=low])"), 1);
    EXPECT_EQ(selected("article:nth-last-child(1 of [data-tide^=high])"), 1);
    EXPECT_EQ(selected(":empty"), 6);
}

// § 4.
TEST_F(CssMatch, SelectsByLists) {
    EXPECT_EQ(selected("article :is(h3, p.late)"), 5);
    EXPECT_EQ(selected("article > :not(h3, p)"), 4);
    EXPECT_EQ(selected(":where(section, div) > article"), 4);
    EXPECT_EQ(selected(":is()"), 0);
    EXPECT_EQ(selected("article:has(> p.late)"), 1);
    EXPECT_EQ(selected("body:has(.late)"), 1);
    EXPECT_EQ(selected("h3:has(+ p + .late)"), 1);
    EXPECT_EQ(selected("article:has(~ article .late)"), 2);
    EXPECT_EQ(selected("section:has(body .late)"), 0);
}

// § 7, § 8, § 9.
TEST_F(CssMatch, SelectsByStateOnlyIfItHolds) {
    EXPECT_EQ(selected("a:link"), 3);
    EXPECT_EQ(selected("a:any-link"), 3);
    EXPECT_EQ(selected("a:visited"), 0);
    EXPECT_EQ(selected("a:hover"), 0);
    EXPECT_EQ(selected("a:not(:hover)"), 4);
    const std::array<std::string_view, 1> hover = {"hover"};
    EXPECT_EQ(selected("a:hover", hover), 4);
    EXPECT_EQ(selected("article:hover a:not(:focus)", hover), 4);
    EXPECT_EQ(selected("h3:lang(en)"), 4);
    EXPECT_EQ(selected("h3:lang(de, EN-gb)"), 4);
    EXPECT_EQ(selected("h3:lang(e)"), 0);
    EXPECT_EQ(selected("h3:dir(ltr)"), 4);
}

// Going back one element at a time, this would take longer than anybody waits.
TEST_F(CssMatch, TakesNoLongerForManyCombinators) {
    Tree tree;
    auto element = tree.add({}, "div");
    for (int i = 0; i < 300; ++i) {
        tree.add(element, "div");
        element = tree.add(element, "div");
    }
    std::string text = "b ";
    for (int i = 0; i < 40; ++i)
        text += i % 2 ? "div ~ " : "div ";
    Problems problems;
    const auto list = readSelectors(text + "div", problems);
    ASSERT_TRUE(list);
    EXPECT_FALSE(matches(*list, tree, element));
}

// The section has siblings that the tree lacks. Their ancestors are those of the section.
TEST_F(CssMatch, KnowsTheAncestorsOfElementsThatAreMissing) {
    class Missing final : public Tree {
    public:
        explicit Missing(const Tree& tree) : Tree(tree) {}
        [[nodiscard]] bool knowsSiblings(Element element) const override { return tag(element) != "section"; }
    };
    const Missing missing(tree_);
    const auto matched = [&](std::string_view text) {
        Problems problems;
        const auto list = readSelectors(text, problems);
        EXPECT_TRUE(list) << text;
        int count = 0;
        for (std::size_t i = 0; list && i < missing.size(); ++i)
            count += matches(*list, missing, i) ? 1 : 0;
        return count;
    };
    for (const char* selector : {".x ~ .row", ".x + .row", "body > .x ~ .row", "html .x ~ .y + .row",
                                 ".x:hover ~ section", "h2 ~ .row", ":not(.x ~ .row).row"})
        EXPECT_EQ(matched(selector), 1) << selector;
    for (const char* selector :
         {".x .y ~ .row", ".x > .y + .row", ".row .y ~ .row", "html > .y ~ .row", "body body > .y ~ .row"})
        EXPECT_EQ(matched(selector), 0) << selector;
    EXPECT_EQ(matched(".x ~ .row .card"), 4);
    EXPECT_EQ(matched(".x .y ~ .row .card"), 0);
}

}  // namespace
}  // namespace tenter::css
