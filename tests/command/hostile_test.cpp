// Input that is made to take time or memory, up to 64 MB: each is answered, by a result or by messages of one
// line.
#include <gtest/gtest.h>
#include <sys/stat.h>

#include <functional>

#include "process.h"

namespace tenter::tests {
namespace {

constexpr std::size_t megabyte = 1U << 20U;

// What the README promises is 2 s; other tests run at the same time, and machines differ.
constexpr double mostSeconds = 6;
constexpr double mostMegabytes = 512;

std::string times(const std::string& piece, std::size_t count) {
    std::string out;
    out.reserve(piece.size() * count);
    for (std::size_t i = 0; i < count; ++i)
        out += piece;
    return out;
}
/// `piece`, repeated to at most `bytes`.
std::string filled(const std::string& piece, std::size_t bytes) {
    return times(piece, bytes / piece.size());
}
/// `piece(0)` to `piece(count - 1)`, with `between`.
std::string listed(std::size_t count, const std::string& between,
                   const std::function<std::string(std::string)>& piece) {
    std::string out;
    for (std::size_t i = 0; i < count; ++i)
        out += (i == 0 ? "" : between) + piece(std::to_string(i));
    return out;
}

std::string hostileProject(const std::string& cards, const std::string& more = "",
                           const std::string& variants = R"([{"class": "walks", "bands": [{}]}])") {
    return R"({"format": "tenter-project", "version": 1, "name": "Walks", )" + more + R"("cards": )" + cards +
           R"(, "variants": )" + variants + "}";
}
std::string cardOf(const std::string& copy) {
    return R"([{"parts": [{"role": "heading", "copy": ")" + copy + R"("}]}])";
}
std::string given(const std::string& markup, const std::string& card, const std::string& theme) {
    return R"("given": {"markup": ")" + markup + R"(", "selectors": {"row": "", "card": ")" + card +
           R"("}, "theme": ")" + theme + R"("}, )";
}

const std::string cardRow =
    "<div class=row>" +
    times("<article class=card><h3>Tide</h3><p>Some text</p><a href='#'>Go</a></article>", 4) + "</div>";
std::string hostilePage(const std::string& css, const std::string& body = cardRow) {
    return "<!doctype html><title>Walks</title><style>" + css + "</style>" + body;
}

struct Hostile {
    std::string name;
    std::function<std::string()> content;
};

void expectAnswer(const Finished& finished, const std::string& name) {
    EXPECT_TRUE(finished.code >= 0 && finished.code <= 2) << name << ": exit code " << finished.code;
    EXPECT_LE(finished.seconds, mostSeconds) << name;
    EXPECT_LE(finished.megabytes, mostMegabytes) << name;
    EXPECT_LE(finished.errorLines(), 300U) << name;
    if (finished.code == 2) {
        EXPECT_GE(finished.errorLines(), 1U) << name;
    }
    EXPECT_LE(finished.err.size(), 200'000U) << name;
}

void expectAnswers(const std::vector<Hostile>& inputs, const std::string& ending,
                   const std::vector<std::vector<std::string>>& verbs) {
    const Folder folder;
    for (const Hostile& input : inputs) {
        const std::string file = folder.write("hostile" + ending, input.content());
        for (std::vector<std::string> arguments : verbs) {
            arguments.push_back(file);
            expectAnswer(tenterCli(arguments), input.name + ", " + arguments.front());
        }
    }
}

TEST(HostileInput, ProjectsAreAnsweredInTime) {
    const std::size_t most = 9 * megabyte;
    expectAnswers(
        {{"63 MB of text", [] { return hostileProject(cardOf(filled("tide ", 63 * megabyte))); }},
         {"text", [=] { return hostileProject(cardOf(filled("tide ", most))); }},
         {"one word", [=] { return hostileProject(cardOf(filled("t", 9'999))); }},
         {"one word with soft hyphens", [=] { return hostileProject(cardOf(times("t\u00ad", 4'999))); }},
         {"forced breaks", [=] { return hostileProject(cardOf(times("t\\n", 4'999))); }},
         {"changes of direction", [=] { return hostileProject(cardOf(times("\u05d0a\u202e", 3'333))); }},
         {"marks", [=] { return hostileProject(cardOf(times("\u0301", 9'999))); }},
         {"runs",
          [=] {
              return hostileProject(R"([{"parts": [{"role": "body", "copy": [)" +
                                    listed(most / 20, ",", [](const auto&) { return R"({"strong": "a"})"; }) +
                                    "]}]}]");
          }},
         {"lists", [=] { return filled("[", most); }},
         {"objects", [=] { return filled(R"({"a":)", most); }},
         {"a name", [=] { return hostileProject("[]", R"("x-name": ")" + filled("n", most) + R"(", )"); }},
         {"a number", [=] { return hostileProject("[]", R"("headingLevel": )" + filled("9", most) + ", "); }},
         {"cards",
          [=] { return hostileProject("[" + filled(R"({"parts":[]},)", most) + R"({"parts":[]}])"); }},
         {"families",
          [=] {
              return hostileProject(cardOf("Low tide"),
                                    R"("style": {"text": {"heading": {"family": [)" +
                                        listed(500'000, ",", [](const auto& i) { return "\"F" + i + "\""; }) +
                                        "]}}}, ");
          }},
         {"a theme",
          [=] {
              return hostileProject("[]", given("<p class=walks>", "p", filled(".c .d>p{color:red}", most)));
          }},
         {"a theme of the largest size",
          [=] {
              return hostileProject(
                  "[]", given("<p class=walks>", "p", filled(".c .d>p{color:red}", 2 * megabyte)));
          }},
         {"markup", [=] { return hostileProject("[]", given(filled("<div>", most), ".c", "")); }},
         {"a selector",
          [=] {
              return hostileProject(
                  "[]", given("<p class=walks>", times(":not(", 100'000) + "a" + times(")", 100'000), ""));
          }},
         {"NUL", [=] { return std::string(most, '\0'); }}},
        ".tenter.json", {{"check"}, {"page"}});
}

/// Stylesheets of `bytes` or less.
std::vector<Hostile> stylesheets(std::size_t bytes) {
    return {
        {"rules", [=] { return filled(".row{color:red}", bytes); }},
        {"declarations", [=] { return ".row{" + filled("width:1px;", bytes) + "}"; }},
        {"open braces", [=] { return filled("{", bytes); }},
        {"open rules", [=] { return filled("a{", bytes); }},
        {"conditions", [=] { return filled("@media (min-width:1px){", bytes); }},
        {"layers",
         [=] { return listed(bytes / 20, "", [](const auto& i) { return "@layer a" + i + ";"; }); }},
        {"imports", [=] { return filled("@import \"a.css\";", bytes); }},
        {":not() inside each other",
         [=] { return times(":not(", bytes / 8) + "a" + times(")", bytes / 8) + "{color:red}"; }},
        {"nested rules", [] { return ".row,.b{" + times("&.a,&.b{", 30) + "color:red" + times("}", 31); }},
        {"variables that grow",
         [] {
             return ":root{--a0:xxxxxxxxxx;" +
                    listed(60, "",
                           [](const auto& i) {
                               const std::string from = "var(--a" + i + ")";
                               return "--a" + std::to_string(std::stoi(i) + 1) + ":" + times(from, 4) + ";";
                           }) +
                    "}.row{width:var(--a60)}";
         }},
        {"a chain of variables",
         [=] {
             return ":root{" +
                    listed(bytes / 32, "",
                           [](const auto& i) {
                               return "--a" + i + ":var(--a" + std::to_string(std::stoi(i) + 1) + ");";
                           }) +
                    "}.row{width:var(--a0)}";
         }},
        {"fallbacks inside each other",
         [=] {
             return ".row{width:" + times("var(--a,", bytes / 10) + "1px" + times(")", bytes / 10) + "}";
         }},
        {"calc() inside each other",
         [=] { return ".row{width:" + times("calc(", bytes / 8) + "1px" + times(")", bytes / 8) + "}"; }},
        {"a sum", [=] { return ".row{width:calc(1px" + filled(" + 1px", bytes) + ")}"; }},
        {"repeated tracks", [] { return ".row{display:grid;grid-template-columns:repeat(1000000000,1px)}"; }},
        {"repeated lists of tracks",
         [] {
             return ".row{display:grid;grid-template-columns:" + times("repeat(10000,1px) ", 10'000) + "}";
         }},
        {"selectors", [=] { return ".row" + filled(",.row", bytes) + "{width:1px}"; }},
        {"numbers", [=] { return ".row{width:" + std::string(bytes, '9') + "px;height:1e999999999px}"; }},
        {"a comment", [=] { return "/*" + std::string(bytes, 'x'); }},
        {"backslashes", [=] { return std::string(bytes, '\\'); }},
        {"NUL", [=] { return std::string(bytes, '\0'); }}};
}

TEST(HostileInput, StylesheetsAreAnsweredInTime) {
    std::vector<Hostile> inputs = stylesheets(4 * megabyte - 1024);
    inputs.push_back({"63 MB of rules", [] { return filled(".row{color:red}", 63 * megabyte); }});
    expectAnswers(inputs, ".css", {{"intake"}});
}

TEST(HostileInput, PagesAreAnsweredInTime) {
    static const std::string manyElements =
        "<div class=row>" +
        times("<article class=card>" + times("<div class=c><p class=d>x</p></div>", 500) + "</article>", 8);
    std::vector<Hostile> inputs = {
        {"63 MB of elements", [] { return hostilePage("", cardRow + filled("<p>a</p>", 63 * megabyte)); }},
        {"elements", [] { return hostilePage("", cardRow + filled("<p>a</p>", 6 * megabyte - 4096)); }},
        {"cards",
         [] {
             return hostilePage("", "<div class=row>" + times("<p class=card><b>Tide</b> text</p>", 100'000));
         }},
        {"depth", [] { return hostilePage("", filled("<div>", 6 * megabyte - 4096)); }},
        {"depth of a row", [] { return hostilePage("", times("<div>", 450) + cardRow); }},
        {"misnested elements", [] { return hostilePage("", filled("<a><b><i><p>", 6 * megabyte - 4096)); }},
        {"attributes",
         [] {
             return hostilePage("", "<div " +
                                        listed(500'000, " ", [](const auto& i) { return "a" + i + "=b"; }) +
                                        ">" + cardRow);
         }},
        {"rules and elements",
         [] {
             return hostilePage(times(".c .d .c .d p:nth-child(2n+1 of .d){color:red}", 3'000), manyElements);
         }},
        {":has() and elements",
         [] { return hostilePage(times("div:has(p:has(+ .d)){color:red}", 3'000), manyElements); }},
        {"text",
         [] {
             return hostilePage(
                 "", "<div class=row>" + times("<article><h3>Tide</h3><p>" + filled("Some text ", megabyte) +
                                                   "</p></article>",
                                               4));
         }},
        {"cells",
         [] {
             return hostilePage(
                 "", "<table>" + times("<td colspan=99999999 rowspan=99999999>a", 10'000) + cardRow);
         }},
        {"families and breakpoints",
         [] {
             return hostilePage(listed(50'000, "", [](const auto& i) {
                 return ".card{font-family:F" + i + "}@media(min-width:" + i + "px){h3{font-size:" + i +
                        "px}}";
             }));
         }},
        {"fallbacks inside each other, of every element",
         [] {
             std::string css;
             for (const char* property : {"width", "font-size", "gap", "color", "margin-left", "line-height"})
                 css +=
                     std::string(property) + ":" + times("var(--a,", 9'000) + "1px" + times(")", 9'000) + ";";
             return hostilePage("*{" + css + "}");
         }},
        {"UTF-16 without a mark", [] { return std::string(4 * megabyte, '\0'); }},
    };
    // The largest stylesheets are those of the test above; here the page is read around them, too.
    for (const Hostile& sheet : stylesheets(megabyte))
        inputs.push_back({"page with " + sheet.name, [sheet] { return hostilePage(sheet.content()); }});
    expectAnswers(inputs, ".html", {{"intake"}});
}

TEST(HostileInput, AudiencesAreAnsweredInTime) {
    const std::string sample = TENTER_SAMPLES "/shore-walks.tenter.json";
    std::vector<Hostile> inputs;
    const std::size_t most = 8 * megabyte - 1024;
    inputs.push_back({"63 MB", [] { return "width,visits\n" + std::string(63 * megabyte, '9'); }});
    inputs.push_back({"lines", [=] { return "width,visits\n" + filled("390,5\n", most); }});
    inputs.push_back({"wrong lines", [=] { return "width,visits\n" + filled("x,y\n", most); }});
    inputs.push_back({"cells", [=] { return "width,visits\n" + filled("1,", most); }});
    inputs.push_back({"headings", [=] { return filled("width,", most); }});
    inputs.push_back({"an open quotation mark", [=] { return "width,visits\n\"" + filled("1,\n", most); }});
    inputs.push_back({"line ends", [=] { return std::string(most, '\n'); }});
    inputs.push_back({"digits", [=] { return "width,visits\n" + std::string(most, '9') + ",1\n"; }});
    inputs.push_back({"NUL", [=] { return std::string(most, '\0'); }});
    expectAnswers(inputs, ".csv", {{"check", sample, "--audience"}});
}

// A name in a project can lead to a pipe, which has no end, or to a font that is none.
TEST(HostileInput, FilesOfAProjectAreAnsweredInTime) {
    const Folder folder;
    ASSERT_EQ(mkfifo(folder.file("pipe").c_str(), 0600), 0);
    std::filesystem::create_symlink("/dev/zero", folder.file("zero"));
    folder.write("large", std::string(65 * megabyte, 'x'));
    folder.write("broken", "wOF2" + std::string(1'000, '\xff'));
    for (const std::string file : {"pipe", "zero", "large", "broken", "."}) {
        const std::string parts =
            R"([{"parts": [{"picture": ")" + file + R"("}, {"role": "body", "copy": "Low tide"}]}])";
        const std::string font = R"("fonts": [{"family": "Own", "file": ")" + file +
                                 R"("}], "style": {"text": {"body": {"family": ["Own"]}}}, )";
        const std::string hostile = folder.write("hostile.tenter.json", hostileProject(parts, font));
        for (const char* verb : {"check", "page", "sheet", "pictures"}) {
            std::vector<std::string> arguments{verb, hostile};
            if (arguments.front() == "pictures")
                arguments.insert(arguments.end(), {"--into", folder.file("out")});
            expectAnswer(tenterCli(arguments), file + ", " + verb);
        }
    }
}

TEST(HostileInput, ArgumentsAreAnswered) {
    const std::string sample = TENTER_SAMPLES "/shore-walks.tenter.json";
    const std::string longest(100'000, 'x');
    const std::vector<std::vector<std::string>> all{
        {longest},
        {"check", longest},
        {"check", "a\nb"},
        {"check", "\x1b[31m\xff"},
        {"check", sample, "--variant", longest},
        {"check", sample, "--fail-on", "\n"},
        {"geometry", sample, "--widths", "1-9999999999999999999"},
        {"geometry", sample, "--widths", "320-1920", "--step", "1e-9"},
        {"geometry", sample, "--widths", "nan"},
        {"geometry", sample, "--widths", longest},
        {"picture", sample, "--width", "1e308"},
        {"picture", sample, "--width", "800", "--ratio", "1e9"},
        {"size", times("calc(", 20'000) + "1px" + times(")", 20'000)},
        {"stylesheet", sample, "--out", "/"},
        {"stylesheet", sample, "--out", "/no/such/folder/a.css"},
        {"solve", sample, "--columns", "-1"},
    };
    for (const std::vector<std::string>& arguments : all) {
        const Finished finished = tenterCli(arguments);
        const std::string name = arguments.front().substr(0, 20) + " …" + arguments.back().substr(0, 30);
        EXPECT_EQ(finished.code, 2) << name;
        expectAnswer(finished, name);
        EXPECT_EQ(finished.errorLines(), 1U) << name << ": " << finished.err.substr(0, 400);
        EXPECT_EQ(finished.err.find('\x1b'), std::string::npos) << name;
    }
}

}  // namespace
}  // namespace tenter::tests
