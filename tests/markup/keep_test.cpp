#include <random>

#include "markup/guess.h"
#include "parsing.h"
#include "rows.h"

namespace tenter::markup {
namespace {

std::string cleanedText(const std::string& html) {
    return printed(cleaned(treeOf(html)));
}

TEST(Keep, drops_what_runs_or_fetches_or_is_outside_the_row) {
    for (const std::string element :
         {"<script>x()</script>", "<style>a{}</style>", "<iframe src=/x></iframe>",
          "<object data=x></object>", "<embed src=x>", "<template><p>x</p></template>", "<base href=/x>",
          "<link rel=stylesheet href=x>", "<meta charset=utf-8>", "<noscript><p>x</p></noscript>",
          "<svg><script>x()</script></svg>", "<svg><foreignObject><p>x</p></foreignObject></svg>",
          "<svg><set attributeName=href to=javascript:x /></svg>", "<math><mtext>x</mtext></math>",
          "<!-- x -->"}) {
        const std::string text = cleanedText("<div>a" + element + "b</div>");
        EXPECT_EQ(text.find('x'), std::string::npos) << text;
        EXPECT_NE(text.find('b'), std::string::npos) << text;
    }
}

TEST(Keep, drops_attributes_that_run) {
    EXPECT_EQ(cleanedText("<p onclick=x() OnLoad=y() title=t srcdoc=z formaction=/f>a</p>"),
              "<p title=\"t\">a</p>");
}

// URL § 4.4, how a scheme is read.
TEST(Keep, drops_unsafe_addresses_and_keeps_the_others_as_text) {
    EXPECT_EQ(cleanedText("<a href='java\nscript:x()'>a</a><a href=/walks>b</a>"),
              "<a>a</a><a href=\"/walks\">b</a>");
    EXPECT_EQ(cleanedText("<img src='data:image/png;base64,x' srcset='a.png 1x, javascript:x 2x'>"), "<img>");
    EXPECT_EQ(cleanedText("<img srcset='a.png 400w, b.png 800w' sizes='50vw'>"),
              "<img srcset=\"a.png 400w, b.png 800w\" sizes=\"50vw\">");
    EXPECT_EQ(cleanedText("<svg><a xlink:href=javascript:x><use href=#p></use></a></svg>"),
              "<svg><a><use href=\"#p\"></use></a></svg>");
}

// HTML § 13.3, "escaping a string".
TEST(Print, escapes_text_and_attributes) {
    EXPECT_EQ(printed(treeOf("<p title='a&amp;b\"c<d>&nbsp;'>a&amp;b\"c&lt;d&gt;&nbsp;</p>")),
              "<p title=\"a&amp;b&quot;c&lt;d&gt;&nbsp;\">a&amp;b\"c&lt;d&gt;&nbsp;</p>");
}

// HTML § 13.1.2.4: when the start tags of html, head and body may be left out.
TEST(Print, leaves_out_tags_without_information) {
    EXPECT_EQ(printed(treeOf("<ul><li>a</ul>")), "<ul><li>a</li></ul>");
    EXPECT_EQ(printed(treeOf("<html lang=en><body class=x><p>a")),
              "<html lang=\"en\"><body class=\"x\"><p>a</p></body>");
    EXPECT_EQ(printed(treeOf("")), "");
    for (const std::string html :
         {"a", "<body> a", "<body><link>", "<body><script></script>", "<body class=x>", "<pre>\n\na</pre>",
          "<textarea>\n\n</textarea>", "<body><template></template>", "<title>a</title><p>b", "<p>&#13;a",
          "<svg><title>a</title></svg>"})
        EXPECT_EQ(outline(treeOf(printed(treeOf(html)))), outline(treeOf(html))) << html;
}

TEST(KeptRow, is_the_row_with_its_ancestors_and_nothing_else) {
    const Tree page = cleaned(treeOf(boxesInBoxes));
    project::Problems problems;
    const std::optional<Kept> kept = keptRow(page, find(page, "shore-grid"), "page", problems);
    ASSERT_TRUE(kept) << linesOf(problems);
    EXPECT_EQ(kept->markup.substr(0, 120),
              "<html lang=\"en-GB\"><body class=\"page theme-tide\"><div class=\"wrap\"><div class=\"inner\">"
              "<div class=\"shore-grid k8231947\">\n");
    EXPECT_TRUE(kept->tree[kept->row].hasClass("shore-grid"));
    EXPECT_EQ(treeOf(kept->markup), kept->tree);
    for (const char* gone : {"Our walks", "menu", "Find us", "track", "onerror"})
        EXPECT_EQ(kept->markup.find(gone), std::string::npos) << gone;
}

TEST(KeptRow, is_stable_when_browsers_nest_it_differently) {
    // A link within a link: what is in a table may stand so, printed and read again it may not.
    const Tree page =
        cleaned(treeOf("<a href=1><div class=row><table><tr><td><a href=2>x</a></table></div></a>"));
    project::Problems problems;
    const std::optional<Kept> kept = keptRow(page, find(page, "row"), "page", problems);
    if (kept) {
        EXPECT_EQ(treeOf(kept->markup), kept->tree);
    } else {
        EXPECT_EQ(problems.size(), 1U);
    }
}

// Whatever is made of the rows by chance: no crash, and what is kept is read back as it was.
TEST(KeptRow, is_stable_for_thousands_of_changed_pages) {
    const std::vector<std::string> rows{boxesInBoxes, plainList, figures, articles, floats, linkedCards};
    const std::vector<std::string> scraps{"<a href=x>",
                                          "</a>",
                                          "<table>",
                                          "<tr><td>",
                                          "</table>",
                                          "<p>",
                                          "</p>",
                                          "<b>",
                                          "</b>",
                                          "<svg>",
                                          "<math><mi>",
                                          "<form>",
                                          "<select><option>",
                                          "</div>",
                                          "<div>",
                                          "<!--",
                                          "-->",
                                          "<template>",
                                          "<![CDATA[",
                                          "&#0;",
                                          "\xff",
                                          "<button>",
                                          "<plaintext>",
                                          "<frameset>",
                                          "<script>",
                                          "<h3>",
                                          "</ul>",
                                          "<li>",
                                          "<textarea>",
                                          "<img src=",
                                          "\"",
                                          "<body class=z>",
                                          "<nobr>",
                                          "<title>",
                                          "<desc><p>"};
    std::mt19937 random(20261125);
    const auto any = [&](std::size_t count) {
        return std::uniform_int_distribution<std::size_t>(0, count - 1)(random);
    };
    int kept = 0;
    for (int i = 0; i < 2000; ++i) {
        std::string html = rows[any(rows.size())];
        for (std::size_t n = 1 + any(6); n > 0; --n) {
            const std::size_t at = any(html.size());
            if (any(3) == 0)
                html.erase(at, any(40));
            else
                html.insert(at, scraps[any(scraps.size())]);
        }
        const Tree page = cleaned(treeOf(html));
        const std::optional<GuessedRow> row = guessRow(page);
        if (!row) continue;
        project::Problems problems;
        const std::optional<Kept> cut = keptRow(page, row->row, "page", problems);
        if (!cut) {
            EXPECT_FALSE(problems.empty());
            continue;
        }
        ++kept;
        ASSERT_EQ(treeOf(cut->markup), cut->tree) << html;
        ASSERT_EQ(cleaned(cut->tree), cut->tree) << html;
    }
    EXPECT_GT(kept, 1000);
}

}  // namespace
}  // namespace tenter::markup
