#include "markup/adopt.h"

#include <unistd.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <random>

#include "markup/given.h"
#include "parsing.h"
#include "project/file.h"
#include "rows.h"

namespace tenter::markup {
namespace {

project::Project smallProject() {
    project::Problems problems;
    const auto project = project::parse(
        R"({"format": "tenter-project", "version": 1, "name": "Walks", "cards": [],
            "variants": [{"class": "walks-trio", "bands": [{}]}, {"class": "walks-pair", "bands": [{}]}]})",
        "walks", {}, problems);
    EXPECT_TRUE(project) << linesOf(problems);
    return project.value_or(project::Project{});
}

Adopted adopted(const std::string& html, std::vector<RoleChoice> choices = {}) {
    project::Problems problems;
    std::optional<Adopted> result =
        adopt(smallProject(), {html, "page.html", ".", std::move(choices)}, problems);
    EXPECT_TRUE(result) << linesOf(problems);
    return result ? std::move(*result) : Adopted{};
}

std::string selectorsOf(const Adopted& adopted) {
    std::string out;
    for (const auto& [role, selector] : adopted.project.row().given.value_or(project::Given{}).selectors)
        out += role + " {" + selector + "} ";
    return out;
}

// The cards of the project and those found by its selectors are the same, part by part.
void expectResolved(const project::Project& project) {
    project::Problems problems;
    const std::optional<GivenRow> row = givenRow(project, problems);
    ASSERT_TRUE(row) << linesOf(problems);
    EXPECT_TRUE(problems.empty()) << linesOf(problems);
    ASSERT_EQ(row->cards.size(), project.row().cards.size());
    for (std::size_t c = 0; c < row->cards.size(); ++c) {
        ASSERT_EQ(row->cards[c].parts.size(), project.row().cards[c].parts.size());
        for (std::size_t p = 0; p < row->cards[c].parts.size(); ++p) {
            const auto* text = std::get_if<project::TextPart>(&project.row().cards[c].parts[p]);
            EXPECT_EQ(row->cards[c].parts[p].role, text == nullptr ? "picture" : text->role);
        }
    }
}

TEST(Adopt, gives_every_kind_of_row_selectors_that_find_it_again) {
    const std::vector<std::pair<std::string, std::string>> rows{
        {boxesInBoxes,
         "row {} card {.column} picture {.media img} heading {.walk-title} body {.text p} button {.press} "},
        {plainList, "row {} card {li} picture {img} heading {h4} body {li > p:nth-of-type(1)} button {} "},
        {figures, "row {} card {.tree} picture {.tree img} heading {.tree-name} body {.tree-note} "},
        {articles,
         "row {} card {.note} kicker {.day} heading {.note-head} body {.note-text p} button {.note button} "},
        {floats,
         "row {} card {.third} heading {.third h3} picture {.third img} body {.third p} button {.more} "},
        {linkedCards,
         "row {} card {.boat} picture {.boat img} kicker {.boat-kind} heading {.boat-name} body "
         "{.boat-text} "}};
    for (const auto& [html, selectors] : rows) {
        const Adopted row = adopted(html);
        expectResolved(row.project);
        // A list without classes has its paragraphs by position; how is the selectors' own test.
        if (html != plainList) {
            EXPECT_EQ(selectorsOf(row), selectors);
        }
        EXPECT_NE(
            row.report.front().find(
                "Warning: The row on the page does not have the class of a variant. Tenter added walks-trio"),
            std::string::npos);
    }
}

TEST(Adopt, imports_text_links_names_and_pictures) {
    const project::Project project = adopted(boxesInBoxes).project;
    const auto& parts = project.row().cards.at(0).parts;
    ASSERT_EQ(parts.size(), 5U);
    const auto& picture = std::get<project::PicturePart>(parts[0]);
    EXPECT_EQ(picture.file, "low-tide.jpg");
    EXPECT_EQ(picture.alt, "Pools of still water");
    EXPECT_EQ(picture.width, 1200);
    EXPECT_EQ(picture.height, 800);
    const auto& body = std::get<project::TextPart>(parts[3]);
    EXPECT_EQ(body.copy, (project::Copy{{project::Run::Kind::Plain, "Wear boots you can ", ""},
                                        {project::Run::Kind::Strong, "rinse", ""},
                                        {project::Run::Kind::Plain, ".", ""}}));
    const auto& button = std::get<project::TextPart>(parts[4]);
    EXPECT_EQ(button.link, "/book/1");
    EXPECT_EQ(button.copy, (project::Copy{{project::Run::Kind::Plain, "Book the walk", ""}}));
    EXPECT_EQ(project::plainText(std::get<project::TextPart>(project.row().cards[2].parts[2]).copy),
              "When the marsh empties,\nthe waders come in.");
    EXPECT_EQ(project.language, "en-GB");
    EXPECT_EQ(project.row().headingLevel, 3);
    EXPECT_EQ(project.row().given->levelBefore, 2) << "of \"Our walks\"";
    EXPECT_FALSE(project.rightToLeft);
}

TEST(Adopt, imports_direction_language_and_level_and_links_around_a_heading) {
    const project::Project project = adopted(articles).project;
    EXPECT_TRUE(project.rightToLeft);
    EXPECT_EQ(project.language, "ar");
    EXPECT_EQ(project.row().headingLevel, 2);
    EXPECT_EQ(std::get<project::TextPart>(project.row().cards.at(0).parts.at(1)).link, "/n/1");
}

// CSS Text 3 § 4.1.1: white space collapses, also across elements, and goes at the ends of lines.
TEST(Adopt, collapses_white_space_across_runs) {
    const auto copyOf = [](const std::string& html) {
        const Adopted row = adopted("<ul><li><h3>Ebb</h3><p>" + html +
                                    "</p></li><li><h3>Flood</h3><p>The sea comes in.</p></li></ul>");
        return std::get<project::TextPart>(row.project.row().cards.at(0).parts.at(1)).copy;
    };
    using Kind = project::Run::Kind;
    // CSS Text 3 § 4.1.1: of white space in a row the first stays, in the manner of its own element.
    EXPECT_EQ(copyOf("  The\n\t sea <b> goes </b> out.  "),
              (project::Copy{
                  {Kind::Plain, "The sea ", ""}, {Kind::Strong, "goes ", ""}, {Kind::Plain, "out.", ""}}));
    EXPECT_EQ(copyOf("<b>ebb</b> <b>and</b> <b> flood</b>"), (project::Copy{{Kind::Strong, "ebb", ""},
                                                                            {Kind::Plain, " ", ""},
                                                                            {Kind::Strong, "and", ""},
                                                                            {Kind::Plain, " ", ""},
                                                                            {Kind::Strong, "flood", ""}}));
    EXPECT_EQ(copyOf("a <br> b<br> <br> "), (project::Copy{{Kind::Plain, "a", ""},
                                                           {Kind::Break, "", ""},
                                                           {Kind::Plain, "b", ""},
                                                           {Kind::Break, "", ""},
                                                           {Kind::Break, "", ""}}));
    EXPECT_EQ(
        copyOf("See <a href=/t><i>the</i> times</a>&nbsp; now"),
        (project::Copy{
            {Kind::Plain, "See ", ""}, {Kind::Link, "the times", "/t"}, {Kind::Plain, "\u00a0 now", ""}}));
    EXPECT_EQ(
        copyOf("<strong>Bold</strong> <em>lean</em>"),
        (project::Copy{{Kind::Strong, "Bold", ""}, {Kind::Plain, " ", ""}, {Kind::Emphasis, "lean", ""}}));
}

TEST(Adopt, uses_the_persons_selectors) {
    const Adopted row = adopted(plainList, {{"price", "li > p:first-of-type"}, {"heading", "h4"}});
    EXPECT_EQ(std::get<project::TextPart>(row.project.row().cards.at(0).parts.at(2)).role, "price");
    EXPECT_NE(selectorsOf(row).find("price {li > p:first-of-type}"), std::string::npos) << selectorsOf(row);
    expectResolved(row.project);
    const Adopted other = adopted(boxesInBoxes, {{"row", ".cols"}, {"card", ".cols > div"}});
    EXPECT_EQ(other.project.row().cards.size(), 2U);
    EXPECT_EQ(project::plainText(std::get<project::TextPart>(other.project.row().cards[0].parts.at(0)).copy),
              "Find us");
}

TEST(Adopt, uses_the_class_that_the_page_has_already) {
    const Adopted row = adopted("<div class='wrap walks-pair'>" + floats + "</div>");
    EXPECT_EQ(selectorsOf(row).substr(0, 12), "row {.rooms}");
    EXPECT_EQ(row.report.front().find("CMS"), std::string::npos);
    expectResolved(row.project);
}

TEST(Adopt, keeps_everything_else_in_the_project) {
    project::Project before = smallProject();
    before.row().style.card.linked = true;
    before.row().given.emplace();
    before.row().given->theme = ".walk{margin:0}";
    project::Problems problems;
    const auto row = adopt(before, {floats, "page.html", ".", {}}, problems);
    ASSERT_TRUE(row) << linesOf(problems);
    EXPECT_EQ(row->project.row().style, before.row().style);
    EXPECT_EQ(row->project.row().variants, before.row().variants);
    EXPECT_EQ(row->project.row().given->theme, ".walk{margin:0}");
}

// What the person must do comes first, then what was found; each role once, chosen or guessed.
TEST(Adopt, reports_cautions_first_and_then_what_was_found) {
    const Adopted row = adopted(boxesInBoxes, {{"heading", ".walk-title"}});
    const std::vector<std::string> expected{
        "Warning: The row on the page does not have the class of a variant. Tenter added walks-trio to the "
        "imported markup. Add it to the row in the CMS, too.",
        "Warning: The picture files \"low-tide.jpg\", \"dunes.jpg\" and \"creek.jpg\" are not saved with the "
        "page. Put "
        "them into the folder of the project.",
        "Row: <div class=\"shore-grid k8231947 walks-trio\"> with 3 cards (guessed).",
        "Card: 3 elements with the selector \".column\"; the first is <div class=\"column first\"> "
        "(guessed).",
        "Heading: 3 elements with the selector \".walk-title\"; the first is <h3 class=\"walk-title\"> "
        "(chosen).",
        "Heading level: 3.",
        "Language: en-GB.",
        "Theme: no CSS that affects the row was found."};
    for (const std::string& line : expected)
        EXPECT_EQ(std::ranges::count(row.report, line), 1) << line << "\n"
                                                           << testing::PrintToString(row.report);
    const auto isCaution = [](const std::string& line) { return line.starts_with("Warning: "); };
    EXPECT_TRUE(std::ranges::is_partitioned(row.report, isCaution));
    EXPECT_EQ(std::ranges::count_if(row.report, isCaution), 2);
}

std::string problemsOf(const std::string& html, std::vector<RoleChoice> choices = {}) {
    project::Problems problems;
    EXPECT_FALSE(adopt(smallProject(), {html, "page.html", ".", std::move(choices)}, problems));
    EXPECT_EQ(problems.size(), 1U);
    return linesOf(problems);
}

// A row pasted alone has no stylesheet: the person says what is known of the theme. The page's container
// stays unless the pasted markup has what the row sits in.
TEST(Adopt, uses_the_themes_css_given_by_the_person) {
    const std::string row =
        "<div class=deck><div class=pool><h3>Low</h3><p>At noon, on the outer steps.</p></div>"
        "<div class=pool><h3>High</h3><p>At six, by the harbour wall.</p></div></div>";
    project::Project project = smallProject();
    project.page.container.maxWidth = units::Length::px(900);
    PageToAdopt page;
    page.bytes = row;
    page.theme =
        "html { font-size: 62.5% } .deck { float: left } .elsewhere { color: red } main { width: 40% }";
    project::Problems problems;
    const auto alone = adopt(project, page, problems);
    ASSERT_TRUE(alone.has_value());
    // Each rule with its line and column in what was pasted.
    EXPECT_EQ(alone->project.row().given->theme,
              "html { font-size: 62.5%; } /* :1:1 */\n.deck { float: left; } /* :1:27 */\n");
    EXPECT_EQ(alone->project.page.rootSize, 10);
    EXPECT_EQ(alone->project.page.container.maxWidth.css(), "900px");
    const std::string within = "<main>" + row + "</main>";
    page.bytes = within;
    const auto inMain = adopt(project, page, problems);
    ASSERT_TRUE(inMain.has_value());
    EXPECT_EQ(inMain->project.page.container.width.css(), "40%");
    // Said to be nothing, nothing is known.
    page.theme = "";
    const auto none = adopt(alone->project, page, problems);
    EXPECT_EQ(none->project.row().given->theme, "");
}

TEST(Adopt, names_each_picture_that_has_no_address_of_its_own) {
    PageToAdopt page;
    const std::string row =
        "<div class=deck><div class=pool><img src='data:image/gif;base64,R0lGODlh'><h3>Low</h3></div>"
        "<div class=pool><img src='data:image/gif;base64,R0lGODlh'><h3>High</h3></div></div>";
    page.bytes = row;
    project::Problems problems;
    const auto adopted = adopt(smallProject(), page, problems);
    ASSERT_TRUE(adopted.has_value());
    EXPECT_EQ(std::get<project::PicturePart>(adopted->project.row().cards[0].parts[0]).file, "picture-1");
    EXPECT_EQ(std::get<project::PicturePart>(adopted->project.row().cards[1].parts[0]).file, "picture-2");
}

// The attributes of a picture can be the size of its slot.
TEST(Adopt, takes_the_sizes_of_pictures_from_their_files) {
    const std::filesystem::path folder =
        std::filesystem::temp_directory_path() / ("tenter-adopt-" + std::to_string(getpid()));
    std::filesystem::create_directories(folder);
    std::ofstream(folder / "low.jpg") << "a picture";
    PageToAdopt page;
    const std::string row =
        "<div class=deck><div class=pool><img src=low.jpg width=300 height=200><h3>Low</h3></div>"
        "<div class=pool><img src=gone.jpg width=300 height=200><h3>High</h3></div></div>";
    page.bytes = row;
    page.file = folder / "page.html";
    page.projectFolder = folder;
    page.pictureSize = [&](const std::filesystem::path& file) {
        EXPECT_EQ(file.filename(), "low.jpg");
        EXPECT_TRUE(std::filesystem::exists(file));
        return std::optional(std::pair(640, 400));
    };
    project::Problems problems;
    const auto adopted = adopt(smallProject(), page, problems);
    std::filesystem::remove_all(folder);
    ASSERT_TRUE(adopted.has_value());
    const auto& cards = adopted->project.row().cards;
    EXPECT_EQ(std::get<project::PicturePart>(cards[0].parts[0]).width, 640);
    EXPECT_EQ(std::get<project::PicturePart>(cards[0].parts[0]).height, 400);
    EXPECT_EQ(std::get<project::PicturePart>(cards[1].parts[0]).width, 300);
}

TEST(Adopt, says_in_one_line_why_it_cannot) {
    EXPECT_NE(problemsOf("").find("No row of cards was found"), std::string::npos);
    EXPECT_NE(problemsOf("%PDF-1.7 and so on").find("Enter a selector for card."), std::string::npos);
    EXPECT_NE(problemsOf("<frameset><frame></frameset>").find("No row of cards"), std::string::npos);
    EXPECT_NE(problemsOf(floats, {{"row", ".gone"}}).find("The selector for row selects nothing."),
              std::string::npos);
    EXPECT_NE(
        problemsOf(floats, {{"card", "..x"}})
            .find("The selector \"..x\" for card is not valid. Expected a class name, but found \".\"."),
        std::string::npos);
    EXPECT_NE(problemsOf(floats, {{"No Role", "p"}})
                  .find("The role must be row, card, picture, or the name of a text role"),
              std::string::npos);
}

// A folder of its own, gone afterwards.
class Folder {
public:
    Folder()
        : path_(std::filesystem::temp_directory_path() /
                ("tenter-adopt-" + std::to_string(std::random_device()()))) {
        std::filesystem::create_directories(path_);
    }
    ~Folder() { std::filesystem::remove_all(path_); }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    [[nodiscard]] std::filesystem::path put(const std::string& name, const std::string& content) const {
        std::filesystem::create_directories((path_ / name).parent_path());
        std::ofstream(path_ / name, std::ios::binary) << content;
        return path_ / name;
    }
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }

private:
    std::filesystem::path path_;
};

TEST(Adopt, imports_pictures_saved_with_the_page_and_keeps_the_names_of_others) {
    const Folder folder;
    (void)folder.put("saved/shore_files/low-tide.jpg", "x");
    (void)folder.put("saved/page_files/dunes.jpg", "x");
    const std::filesystem::path page = folder.put("saved/page.html", boxesInBoxes);
    project::Problems problems;
    const auto row = adopt(smallProject(), {boxesInBoxes, page, folder.path(), {}}, problems);
    ASSERT_TRUE(row) << linesOf(problems);
    const auto file = [&](std::size_t card) {
        return std::get<project::PicturePart>(row->project.row().cards.at(card).parts.at(0)).file;
    };
    EXPECT_EQ(file(0), "saved/shore_files/low-tide.jpg");
    EXPECT_EQ(file(1), "saved/page_files/dunes.jpg");
    EXPECT_EQ(file(2), "creek.jpg");
    // The project can be opened although one picture is not there.
    const std::filesystem::path written = folder.put("walks.tenter.json", project::write(row->project));
    const auto again = project::read(written, problems);
    ASSERT_TRUE(again) << linesOf(problems);
    EXPECT_EQ(again->row().cards.size(), 3U);
    EXPECT_EQ(project::write(*again), project::write(row->project));
}

TEST(Adopt, looks_at_no_file_outside_the_pages_folder) {
    const Folder folder;
    (void)folder.put("secret.jpg", "x");
    const std::filesystem::path page = folder.put("saved/page.html", "");
    std::string html = floats;
    html.replace(html.find("north.jpg"), 9, "../secret.jpg");
    html.replace(html.find("south.jpg"), 9, "%2e%2e/secret.jpg?a#b");
    html.replace(html.find("loft.jpg"), 8, (folder.path() / "secret.jpg").string());
    project::Problems problems;
    const auto row = adopt(smallProject(), {html, page, folder.path(), {}}, problems);
    ASSERT_TRUE(row) << linesOf(problems);
    for (const project::Card& card : row->project.row().cards)
        EXPECT_EQ(std::get<project::PicturePart>(card.parts.at(1)).file, "secret.jpg");
    EXPECT_NE(std::ranges::find(row->report,
                                "Warning: The picture file \"secret.jpg\" is not saved with the page. "
                                "Put it into the folder of the project."),
              row->report.end());
}

// Whatever is made of a page by chance, there is a project that opens, or a problem.
TEST(Adopt, gives_a_project_or_a_problem_for_every_page) {
    const std::vector<std::string> rows{boxesInBoxes, plainList, figures, articles, floats, linkedCards};
    std::mt19937 random(7);
    const auto any = [&](std::size_t count) {
        return std::uniform_int_distribution<std::size_t>(0, count - 1)(random);
    };
    for (int i = 0; i < 600; ++i) {
        std::string html = rows[any(rows.size())];
        for (std::size_t n = any(20); n > 0; --n)
            html[any(html.size())] =
                static_cast<char>(any(4) == 0 ? any(256) : std::string("<>/=\" &;ap")[any(10)]);
        project::Problems problems;
        const auto row = adopt(smallProject(), {html, "page.html", ".", {}}, problems);
        ASSERT_TRUE(row || !problems.empty());
        if (!row) continue;
        project::Problems unresolved;
        ASSERT_TRUE(givenRow(row->project, unresolved)) << linesOf(unresolved) << html;
    }
}

}  // namespace
}  // namespace tenter::markup
