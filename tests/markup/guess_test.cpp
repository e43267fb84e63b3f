#include "markup/guess.h"

#include "parsing.h"
#include "rows.h"

namespace tenter::markup {
namespace {

// No standard says what a card is: what is expected here is what a reader of the markup would say.
std::string guessed(const std::string& html) {
    const Tree page = cleaned(treeOf(html));
    const std::optional<GuessedRow> row = guessRow(page);
    if (!row) return "none";
    const auto shown = [&](NodeId node) {
        const std::vector<std::string_view> classes = page[node].classes();
        return page[node].name + (classes.empty() ? "" : "." + std::string(classes.front()));
    };
    std::string out = shown(row->row) + ":";
    for (const NodeId card : row->cards) {
        int loose = 0;
        out += "\n" + shown(card);
        for (const GuessedPart& part : guessParts(page, card, loose))
            out += " " + part.role + "=" + shown(part.node);
        if (loose > 0) out += " loose=" + std::to_string(loose);
    }
    return out;
}

TEST(Guess, finds_cards_in_boxes_in_boxes_and_not_the_menu) {
    EXPECT_EQ(guessed(boxesInBoxes),
              "div.shore-grid:\n"
              "div.column picture=img heading=h3.walk-title body=p body=p button=a.press\n"
              "div.column picture=img heading=h3.walk-title body=p button=a.press\n"
              "div.column picture=img heading=h3.walk-title body=p button=a.press");
}

TEST(Guess, finds_items_of_a_list) {
    EXPECT_EQ(guessed(plainList),
              "ul.ferries:\n"
              "li picture=img heading=h4 body=p button=a\n"
              "li picture=img heading=h4 body=p button=a");
}

TEST(Guess, finds_figures_and_their_captions_parts) {
    EXPECT_EQ(guessed(figures),
              "div.orchard:\n"
              "figure.tree picture=img heading=strong.tree-name body=span.tree-note\n"
              "figure.tree picture=img heading=strong.tree-name body=span.tree-note\n"
              "figure.tree picture=img heading=strong.tree-name body=span.tree-note");
}

TEST(Guess, finds_articles_with_a_line_before_their_heading) {
    EXPECT_EQ(guessed(articles),
              "div.news:\n"
              "article.note kicker=p.day heading=h2.note-head body=p button=button\n"
              "article.note kicker=p.day heading=h2.note-head body=p button=button");
}

TEST(Guess, ignores_elements_that_clear_floats) {
    EXPECT_EQ(guessed(floats),
              "div.rooms:\n"
              "div.third heading=h3 picture=img body=p button=a.more\n"
              "div.third heading=h3 picture=img body=p button=a.more\n"
              "div.third heading=h3 picture=img body=p button=a.more");
}

TEST(Guess, finds_parts_in_cards_that_are_links) {
    EXPECT_EQ(guessed(linkedCards),
              "div.boats-row:\n"
              "a.boat picture=img kicker=span.boat-kind heading=span.boat-name body=span.boat-text\n"
              "a.boat picture=img kicker=span.boat-kind heading=span.boat-name body=span.boat-text");
}

TEST(Guess, goes_into_columns_that_hold_one_card_each) {
    EXPECT_EQ(guessed("<div class=grid><div class=col><article><h3>Ebb</h3><p>The sea goes out and is gone "
                      "for six hours.</p>"
                      "</article></div><div class=col><article><h3>Flood</h3><p>The sea comes in and is not "
                      "stopped by anyone."
                      "</p></article></div></div>"),
              "div.grid:\narticle heading=h3 body=p\narticle heading=h3 body=p");
}

TEST(Guess, counts_loose_text_next_to_blocks) {
    EXPECT_EQ(
        guessed(
            "<ul><li><h3>Ebb</h3>The sea goes <b>out</b> and away.<p>It comes back, in time, always.</p></li>"
            "<li><h3>Flood</h3><p>The sea comes in and is not stopped by anyone.</p></li></ul>"),
        "ul:\nli heading=h3 body=p loose=2\nli heading=h3 body=p");
}

TEST(Guess, ignores_text_for_screen_readers_only) {
    EXPECT_EQ(
        guessed("<ul><li><span class=sr-only>Walk number one</span><h3>Ebb</h3><p>The sea goes out for six "
                "hours.</p></li>"
                "<li><span hidden>Walk</span><h3>Flood</h3><p>The sea comes in for six hours.</p></li></ul>"),
        "ul:\nli heading=h3 body=p\nli heading=h3 body=p");
}

TEST(Guess, finds_no_row_where_nothing_repeats) {
    EXPECT_EQ(guessed(""), "none");
    EXPECT_EQ(guessed("Only words, and not many."), "none");
    EXPECT_EQ(guessed("<h1>Shore</h1><p>One text, as long as it may be, is no row of cards.</p>"), "none");
    EXPECT_EQ(
        guessed(
            "<ul><li><a href=/>Home</a></li><li><a href=/w>Walks</a></li><li><a href=/q>Ask</a></li></ul>"),
        "none");
}

}  // namespace
}  // namespace tenter::markup
