#include <chrono>
#include <random>

#include "parsing.h"

namespace tenter::markup {
namespace {

using std::string_literals::operator""s;

// HTML § 13.2.6.4: html, head and body are there whatever the text says.
TEST(Tree, always_has_html_head_and_body) {
    for (const std::string& text :
         {""s, " "s, "Low tide"s, "\0\0"s, "\xff\xfe\xfd"s, "<"s, "</div>"s, "%PDF-1.4"s}) {
        const Tree tree = treeOf(text);
        ASSERT_GE(tree.size(), 3U);
        EXPECT_EQ(tree[0].name, "html");
        EXPECT_EQ(tree[1].name, "head");
        EXPECT_NE(tree.body(), noNode);
    }
}

// HTML § 13.1.2.4: end tags of p and li may be left out.
TEST(Tree, closes_elements_with_optional_end_tags) {
    EXPECT_EQ(outline(treeOf("<ul><li>ebb<li>flood</ul><p>one<p>two")),
              "| <html>\n|   <head>\n|   <body>\n|     <ul>\n|       <li>\n|         \"ebb\"\n|       <li>\n"
              "|         \"flood\"\n|     <p>\n|       \"one\"\n|     <p>\n|       \"two\"\n");
}

// HTML § 13.2.10.1, "Misnested tags: <b><i></b></i>", the section's own example.
TEST(Tree, repairs_misnested_tags_as_in_the_standards_example) {
    EXPECT_EQ(outline(treeOf("<p>1<b>2<i>3</b>4</i>5</p>")),
              "| <html>\n|   <head>\n|   <body>\n|     <p>\n|       \"1\"\n|       <b>\n|         \"2\"\n"
              "|         <i>\n|           \"3\"\n|       <i>\n|         \"4\"\n|       \"5\"\n");
}

// HTML § 13.2.10.2, "Misnested tags: <b><p></b></p>".
TEST(Tree, repairs_a_block_in_a_phrase_as_in_the_standards_example) {
    EXPECT_EQ(outline(treeOf("<b>1<p>2</b>3</p>")),
              "| <html>\n|   <head>\n|   <body>\n|     <b>\n|       \"1\"\n|     <p>\n|       <b>\n"
              "|         \"2\"\n|       \"3\"\n");
}

// HTML § 13.2.10.3, "Unexpected markup in tables".
TEST(Tree, moves_content_that_a_table_cannot_have_before_it) {
    EXPECT_EQ(outline(treeOf("<table><b><tr><td>aaa</td></tr>bbb</table>ccc")),
              "| <html>\n|   <head>\n|   <body>\n|     <b>\n|     <b>\n|       \"bbb\"\n|     <table>\n"
              "|       <tbody>\n|         <tr>\n|           <td>\n|             \"aaa\"\n|     <b>\n"
              "|       \"ccc\"\n");
}

// HTML § 13.5 (named character references), § 13.2.5.80 (numeric ones).
TEST(Tree, reads_character_references) {
    const Tree tree = treeOf("<p title='a&quot;b'>&eacute;&#x2019;&amp;lt;&nbsp;&#150;</p>");
    EXPECT_EQ(tree.textOf(find(tree, "p")), "é’&lt;\u00a0–");
    EXPECT_EQ(*tree[find(tree, "p")].find("title"), "a\"b");
}

TEST(Tree, joins_text_around_a_comment) {
    const Tree tree = treeOf("<p>low<!-- x -->tide</p>");
    const Node& p = tree[find(tree, "p")];
    EXPECT_EQ(tree[p.firstChild].text, "lowtide");
    EXPECT_EQ(p.firstChild, p.lastChild);
}

// SVG's own case. HTML § 13.2.6.1, "adjust SVG attributes"; § 13.2.6.5 for tags.
TEST(Tree, writes_names_of_drawings_as_the_dom_does) {
    const Tree tree = treeOf("<svg viewbox='0 0 1 1'><LINEARGRADIENT xlink:href='#a'/></svg>");
    EXPECT_NE(tree[find(tree, "svg")].find("viewBox"), nullptr);
    const Node& gradient = tree[find(tree, "linearGradient")];
    EXPECT_EQ(gradient.space, Space::Svg);
    EXPECT_EQ(*gradient.find("xlink:href"), "#a");
}

TEST(Tree, is_walked_in_document_order) {
    const Tree tree = treeOf("<div id=a><p>one<b>two</b></p>three</div><i>four</i>");
    const NodeId top = find(tree, "a");
    std::string names;
    for (NodeId at = top; at != noNode; at = tree.following(at, top))
        names += tree[at].isText() ? tree[at].text + " " : tree[at].name + " ";
    EXPECT_EQ(names, "div p one b two three ");
    EXPECT_EQ(tree[tree.past(find(tree, "p"), top)].text, "three");
    EXPECT_EQ(tree.past(top, top), noNode);
    EXPECT_TRUE(tree.isWithin(find(tree, "b"), top));
    EXPECT_FALSE(tree.isWithin(find(tree, "i"), top));
    EXPECT_EQ(tree.between(top, find(tree, "b")), std::vector<NodeId>{find(tree, "p")});
}

TEST(Tree, has_classes_apart_by_any_white_space) {
    const Tree tree = treeOf("<div class=' shore\n walk\tfirst '>");
    EXPECT_EQ(tree[find(tree, "div")].classes(), (std::vector<std::string_view>{"shore", "walk", "first"}));
    EXPECT_FALSE(tree[find(tree, "div")].hasClass("sho"));
}

std::string repeated(std::string_view text, std::size_t bytes) {
    std::string out;
    while (out.size() + text.size() <= bytes)
        out += text;
    return out;
}

double secondsToParse(const std::string& html, bool expected) {
    project::Problems problems;
    const auto start = std::chrono::steady_clock::now();
    const std::optional<Tree> tree = parse(html, "page", problems, 1);
    const std::chrono::duration<double> taken = std::chrono::steady_clock::now() - start;
    EXPECT_EQ(tree.has_value(), expected) << html.substr(0, 20) << linesOf(problems);
    EXPECT_EQ(problems.empty(), expected);
    return taken.count();
}

TEST(HostilePage, nested_ten_thousand_deep_is_parsed_and_printed) {
    std::string html;
    for (int i = 0; i < 10000; ++i)
        html += "<div>";
    const Tree tree = treeOf(html + "deep");
    EXPECT_EQ(tree.size(), 10004U);
    EXPECT_EQ(treeOf(printed(tree)), tree);
    EXPECT_EQ(cleaned(tree), tree);
}

// What takes a parser of the standard's algorithm time by the square: each is left, and told, in time.
TEST(HostilePage, that_takes_too_long_is_refused_in_time) {
    std::string manyAttributes = "<p ";
    std::string manyFormats;
    for (int i = 0; i < 300000; ++i)
        manyAttributes += "a" + std::to_string(i) + " ";
    for (int i = 0; i < 3000; ++i)
        manyFormats += "<b id=" + std::to_string(i) + ">";
    for (const std::string& html :
         {repeated("<div>", 2U << 20U), repeated("<a><div>", 2U << 20U),
          repeated("<div>", 1U << 20U) + repeated("</span>", 4U << 20U), manyAttributes + ">",
          "<p>" + manyFormats + repeated("</p><p>x", 1U << 20U)})
        EXPECT_LT(secondsToParse(html, false), 10);
}

TEST(HostilePage, larger_than_is_parsed_is_refused) {
    EXPECT_LT(secondsToParse(std::string(largestPage + 1, 'x'), false), 1);
}

}  // namespace
}  // namespace tenter::markup
