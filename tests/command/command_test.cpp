// The source of all of these is the description of the command line: exit 0 done, 2 wrong input or arguments
// with one line that says what is wrong and how to fix it; nothing is ever half written.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <nlohmann/json.hpp>
#include <sstream>

#include "process.h"

namespace tenter::tests {
namespace {

using Json = nlohmann::json;
using Words = std::vector<std::string>;

const char* const project =
    R"({"format": "tenter-project", "version": 1, "name": "Tide table", "row": "tides",
 "range": {"from": 340, "to": 1700},
 "style": {"text": {"heading": {"size": [[400, 18], [1500, 27]]}}},
 "cards": [{"parts": [{"role": "heading", "copy": "High water at the harbour steps"},
                      {"role": "body", "copy": "Twice a day, a little later each time."},
                      {"role": "button", "copy": "See the table", "link": "#table"}]}],
 "variants": [{"class": "tides-pair", "bands": [{"upTo": 700, "set": {"row": {"columns": 1}}},
                                                {"set": {"row": {"columns": 2}}}]},
              {"class": "tides-trio", "bands": [{"upTo": 700, "set": {"row": {"columns": 1}}},
                                                {"set": {"row": {"columns": 3}}}]}]}
)";

class Command : public ::testing::Test {
protected:
    void SetUp() override { file_ = folder_.write("tides.tenter.json", project); }

    Finished run(const std::string& verb, Words more = {}) const {
        more.insert(more.begin(), {verb, file_});
        return tenterCli(more);
    }
    static void expectRefused(const Finished& finished, const std::string& what) {
        EXPECT_EQ(finished.code, 2);
        EXPECT_EQ(finished.out, "");
        EXPECT_EQ(finished.errorLines(), 1U) << finished.err;
        EXPECT_NE(finished.err.find(what), std::string::npos) << finished.err;
        // Full sentences that also say how to fix it, or which values are allowed.
        EXPECT_TRUE(finished.err.ends_with(".\n") || finished.err.ends_with("?\n")) << finished.err;
        EXPECT_TRUE(finished.err.find(". ") != std::string::npos ||
                    finished.err.find(" must be ") != std::string::npos)
            << "no fix in: " << finished.err;
    }

    Folder folder_;
    std::string file_;
};

TEST_F(Command, GeometryLaysOutAtEveryWholeWidthOfTheRange) {
    const Finished finished = run("geometry");
    ASSERT_EQ(finished.code, 0) << finished.err;
    EXPECT_EQ(finished.err, "");
    const Json json = Json::parse(finished.out);
    EXPECT_EQ(json["project"], file_);
    EXPECT_EQ(json["variant"], "tides-pair");
    EXPECT_EQ(json["engine"], "blink");
    ASSERT_EQ(json["layouts"].size(), 1361U);
    EXPECT_EQ(json["layouts"].front()["width"], 340);
    EXPECT_EQ(json["layouts"].back()["width"], 1700);
}

TEST_F(Command, GeometryReadsListsRangesAndSteps) {
    const auto widths = [&](const Words& more) {
        std::vector<double> out;
        const Json json = Json::parse(run("geometry", more).out);
        for (const Json& layout : json["layouts"])
            out.push_back(layout["width"]);
        return out;
    };
    EXPECT_EQ(widths({"--widths", "320,859.5,860"}), (std::vector<double>{320, 859.5, 860}));
    EXPECT_EQ(widths({"--widths", "400-401", "--step", "0.5"}), (std::vector<double>{400, 400.5, 401}));
    EXPECT_EQ(widths({"--widths=500-505", "--step=2"}), (std::vector<double>{500, 502, 504}));
    EXPECT_EQ(widths({"--widths", "700"}), (std::vector<double>{700}));
    EXPECT_EQ(widths({"--step", "680"}), (std::vector<double>{340, 1020, 1700}));
}

// Published: P. Rodriguez, "Linearly Scale font-size with CSS clamp()", CSS-Tricks, 2020.
TEST_F(Command, SizePrintsTheRampOfAPastedSize) {
    const std::string text = "font-size: clamp(1rem, -0.875rem + 8.333vw, 3.5rem)";
    const Finished said = tenterCli({"size", text});
    ASSERT_EQ(said.code, 0) << said.err;
    EXPECT_EQ(said.out,
              "16\u00A0px where the viewport is 360\u00A0px wide, 56\u00A0px where it is 840\u00A0px wide. "
              "Between these widths the size changes in a straight line; outside them it is constant.\n");
    const Json json = Json::parse(tenterCli({"size", text, "--json", "--most", "600"}).out);
    EXPECT_EQ(json["from"], (Json{{"width", 360}, {"size", 16}}));
    EXPECT_EQ(json["to"], (Json{{"width", 600}, {"size", 36}}));
    EXPECT_EQ(json["follow"], "viewport");
    EXPECT_EQ(json["exact"], true);
    EXPECT_EQ(tenterCli({"size", "2rem", "--root", "10"}).out,
              "20\u00A0px at every width. Assumed: 1rem is 10\u00A0px.\n");
    expectRefused(tenterCli({"size", "calc(1rem+1vw)"}),
                  "TEXT:1:10: A space is missing next to +. Write a space on both sides of +.");
    expectRefused(tenterCli({"size", "1rem", "--least", "2000"}), "The range of widths is not valid.");
}

TEST_F(Command, GeometryRefusesInvalidWidths) {
    for (const char* wrong :
         {"320-", "a", "320,,400", "1920-320", "0-100", "320,20000", "1e3", "nan", "inf", "320-1920-2"})
        expectRefused(run("geometry", {"--widths", wrong}), "--widths");
    for (const char* wrong : {"0", "-1", "x", "nan"})
        expectRefused(run("geometry", {"--step=" + std::string(wrong)}), "--step");
    expectRefused(run("geometry", {"--widths", "320,400", "--step", "2"}), "--step");
    expectRefused(run("geometry", {"--step", "0.001"}), "100000");
    expectRefused(run("geometry", {"--step", "1e-300"}), "--step");
}

TEST_F(Command, GeometryNamesTheEngines) {
    expectRefused(run("geometry", {"--engine", "tumbleweed"}),
                  "--engine: The engine must be blink or gecko; it is \"tumbleweed\".");
}

TEST_F(Command, WrapsGiveLineCountsOnBothSidesOfEachWidth) {
    const Finished finished = run("wraps", {"--json", "--variant", "tides-trio"});
    ASSERT_EQ(finished.code, 0) << finished.err;
    const Json wraps = Json::parse(finished.out);
    ASSERT_GT(wraps.size(), 0U);
    const auto linesAt = [&](double width, const Json& wrap) {
        const Json laid =
            Json::parse(run("geometry", {"--variant", "tides-trio", "--widths", std::to_string(width)}).out);
        const Json& part =
            laid["layouts"][0]["cards"][wrap["card"].get<int>()]["parts"][wrap["part"].get<int>()];
        EXPECT_EQ(part["kind"], wrap["kind"]);
        return part["lines"].size();
    };
    // At each width, `geometry` rounds lengths to the engine's grid; `wraps` takes the mean of what rounding
    // takes, so that the two may differ by some tenths of a px. At whole widths on both sides they do not.
    constexpr double leeway = 0.25;
    std::size_t compared = 0;
    for (const Json& wrap : wraps) {
        const double below = std::floor(wrap["width"].get<double>() - leeway);
        const double above = std::ceil(wrap["width"].get<double>() + leeway);
        const auto isAlone = std::ranges::count_if(wraps, [&](const Json& other) {
            return other["card"] == wrap["card"] && other["part"] == wrap["part"] &&
                   other["width"].get<double>() > below - leeway &&
                   other["width"].get<double>() < above + leeway;
        });
        if (isAlone != 1) continue;
        ++compared;
        EXPECT_EQ(linesAt(below, wrap), wrap["below"]) << wrap;
        EXPECT_EQ(linesAt(above, wrap), wrap["above"]) << wrap;
    }
    EXPECT_GT(compared, wraps.size() / 2);
}

TEST_F(Command, WrapsAreATableUnlessJsonIsAskedFor) {
    const Json wraps = Json::parse(run("wraps", {"--json"}).out);
    const Finished table = run("wraps");
    ASSERT_EQ(table.code, 0) << table.err;
    EXPECT_EQ(static_cast<std::size_t>(std::ranges::count(table.out, '\n')), wraps.size() + 1);
    EXPECT_NE(table.out.find("heading"), std::string::npos);
    EXPECT_NE(table.out.find(" → "), std::string::npos);
    expectRefused(run("wraps", {"--engine", "tumbleweed"}), "The engine must be blink or gecko");
    expectRefused(run("wraps", {"--widths", "400"}), "--widths");
}

TEST_F(Command, CheckListsFindingsWithItsCaution) {
    const Finished finished = run("check");
    EXPECT_EQ(finished.code, 0) << finished.out;
    EXPECT_NE(finished.out.find("do not prove conformance"), std::string::npos);
    EXPECT_NE(finished.out.find("% of widths"), std::string::npos);
}

TEST_F(Command, CheckPrintsFindingsAsJson) {
    const Json json = Json::parse(run("check", {"--json", "--engine", "gecko"}).out);
    ASSERT_TRUE(json.is_array());
    ASSERT_FALSE(json.empty());
    for (const Json& finding : json) {
        EXPECT_TRUE(finding["check"].is_string());
        EXPECT_TRUE(finding["source"].is_string());
        EXPECT_FALSE(finding["says"].get<std::string>().empty());
        EXPECT_LE(finding["share"].get<double>(), 1);
        for (const Json& span : finding["widths"])
            EXPECT_LE(span[0].get<double>(), span[1].get<double>());
    }
}

TEST_F(Command, CheckFailsOnFindingsOfASeverity) {
    EXPECT_EQ(run("check", {"--fail-on", "error"}).code, 0);
    EXPECT_EQ(run("check", {"--fail-on", "note"}).code, 1);
    const std::string faint =
        std::string(project).replace(std::string(project).find("{\"size\""), 1, "{\"colour\": \"#cccccc\", ");
    const std::string file = folder_.write("faint.tenter.json", faint);
    EXPECT_EQ(tenterCli({"check", file}).code, 1);
    expectRefused(run("check", {"--fail-on", "never"}), "--fail-on");
}

TEST_F(Command, CheckPrintsRemediesAndRemedyAppliesOne) {
    const std::string faint =
        std::string(project).replace(std::string(project).find("{\"size\""), 1, "{\"colour\": \"#cccccc\", ");
    const std::string file = folder_.write("faint.tenter.json", faint);
    const Json json = Json::parse(tenterCli({"check", file, "--remedies", "--json"}).out);
    ASSERT_EQ(json[0]["check"], "contrast");
    const Json first = json[0]["remedies"][0];
    EXPECT_EQ(first["remedy"], "1.1");
    EXPECT_TRUE(first["removes"].get<bool>());
    EXPECT_EQ(first["moves"], 0);
    const std::string label = first["label"];
    EXPECT_TRUE(label.starts_with("Use #")) << label;
    const std::string list = tenterCli({"check", file, "--remedies"}).out;
    EXPECT_NE(list.find("  Remedy 1.1: " + label + ", in all variants. "), std::string::npos) << list;
    const std::string fixed = folder_.file("fixed.tenter.json");
    const Finished applied = tenterCli({"remedy", file, "1.1", "--out", fixed});
    EXPECT_EQ(applied.code, 0) << applied.err;
    EXPECT_TRUE(applied.err.starts_with(label)) << applied.err;
    for (const Json& finding : Json::parse(tenterCli({"check", fixed, "--json"}).out))
        EXPECT_NE(finding["check"], "contrast");
    for (const std::string none : {"1", "1.0", "a.b", "1.1.1", "-1.2"})
        expectRefused(tenterCli({"remedy", file, "--", none}), "such as 2.1");
    expectRefused(tenterCli({"remedy", file, "99.1"}), "There is no finding 99");
    expectRefused(tenterCli({"remedy", file, "1.99"}), "Finding 1 has no remedy 99");
    expectRefused(tenterCli({"check", file, "--remedies", "--try", "longer"}), "--try");
}

TEST_F(Command, CheckPrintsTheRoomForText) {
    const Json rooms = Json::parse(run("check", {"--room", "--json"}).out);
    ASSERT_EQ(rooms.size(), 2U);  // of the heading and the button
    EXPECT_EQ(rooms[0]["kind"], "heading");
    EXPECT_EQ(rooms[0]["lines"], 3);
    EXPECT_EQ(rooms[0]["characters"], 31);
    EXPECT_GT(rooms[0]["spare"], 0);
    const Finished table = run("check", {"--room"});
    EXPECT_EQ(table.code, 0);
    EXPECT_NE(table.out.find(std::to_string(rooms[0]["spare"].get<int>()) + "  "), std::string::npos)
        << table.out;
    EXPECT_NE(table.out.find("“See the table”"), std::string::npos) << table.out;
}

TEST_F(Command, CheckWeightsByAnAudience) {
    const std::string visits = folder_.write("visits.csv", "width,visits\n390,3\n1440,1\nwide,2\n");
    const Finished finished = run("check", {"--audience", visits});
    EXPECT_NE(finished.out.find("% of visits"), std::string::npos);
    EXPECT_NE(finished.err.find("visits.csv:4: The line has no width"), std::string::npos) << finished.err;
    expectRefused(run("check", {"--audience", folder_.file("none.csv")}), "none.csv");
    expectRefused(run("check", {"--audience", folder_.write("empty.csv", "")}), "empty.csv");
    expectRefused(run("check", {"--engine", "tumbleweed"}), "tumbleweed");
}

TEST_F(Command, PrintsMarkupAndTheClassesOfItsElements) {
    const std::string html = run("markup", {"--variant", "tides-trio"}).out;
    EXPECT_EQ(html.rfind("<section class=\"tides-trio\"", 0), 0U) << html;
    // Each line of the list has an element and a class that the markup contains.
    std::istringstream lines(run("markup", {"--variant", "tides-trio", "--classes"}).out);
    std::string element, name;
    int count = 0;
    for (; lines >> element >> name; ++count)
        EXPECT_NE(html.find("class=\"" + name), std::string::npos) << element << " " << name;
    EXPECT_GE(count, 3);
}

TEST_F(Command, VariantIsThatOfTheClass) {
    EXPECT_EQ(Json::parse(run("geometry", {"--variant", "tides-trio", "--widths", "900"}).out)["variant"],
              "tides-trio");
    EXPECT_NE(run("page", {"--variant", "tides-trio"}).out.find("<section class=\"tides-trio\""),
              std::string::npos);
    for (const char* verb : {"geometry", "wraps", "stylesheet", "page"})
        expectRefused(
            run(verb, {"--variant", "tides-sextet"}),
            "/variants: No variant has the class \"tides-sextet\". Use one of tides-pair, tides-trio.");
}

TEST_F(Command, StylesheetIsOfOneVariantOrOfAll) {
    const Finished one = run("stylesheet");
    ASSERT_EQ(one.code, 0) << one.err;
    EXPECT_NE(one.out.find(".tides-pair {"), std::string::npos);
    EXPECT_EQ(one.out.find(".tides-trio"), std::string::npos);
    const Finished all = run("stylesheet", {"--all-variants"});
    EXPECT_NE(all.out.find(".tides-pair .tides-heading,\n.tides-trio .tides-heading {"), std::string::npos);
    expectRefused(run("stylesheet", {"--all-variants", "--variant", "tides-pair"}), "--variant");
}

TEST_F(Command, StylesheetHasTheUnitOfFontSizes) {
    EXPECT_NE(run("stylesheet", {"--unit", "px"}).out.find("font-size: clamp(18px, "), std::string::npos);
    EXPECT_NE(run("stylesheet", {"--unit", "rem"}).out.find("font-size: clamp(1.125rem, "),
              std::string::npos);
    expectRefused(run("stylesheet", {"--unit", "pt"}), "--unit");
}

TEST_F(Command, StylesheetSizesFollowTheCard) {
    const Finished card = run("stylesheet", {"--follow", "card"});
    EXPECT_EQ(card.code, 0);
    EXPECT_NE(card.out.find("container-type: inline-size"), std::string::npos);
    EXPECT_NE(card.out.find("cqi, "), std::string::npos);
    EXPECT_EQ(card.out.find("vw"), std::string::npos);
    expectRefused(run("stylesheet", {"--follow", "moon"}), "--follow");
}

TEST_F(Command, StylesheetIsForOwnMarkupUnlessThereIsAnother) {
    EXPECT_EQ(run("stylesheet", {"--markup", "own"}).out, run("stylesheet").out);
    expectRefused(run("stylesheet", {"--markup", "given"}), "The project has no imported row.");
    expectRefused(run("stylesheet", {"--markup", "x"}), "--markup");
}

TEST_F(Command, ReportIsATableOfEveryVariant) {
    const Finished finished = run("report");
    ASSERT_EQ(finished.code, 0) << finished.err;
    EXPECT_NE(finished.out.find("\n.tides-pair\n"), std::string::npos);
    EXPECT_NE(finished.out.find("\n.tides-trio\n"), std::string::npos);
}

TEST_F(Command, ReportHasTheFindingsThatCheckHas) {
    const std::string report = run("report").out;
    for (const char* variant : {"tides-pair", "tides-trio"}) {
        const Json findings = Json::parse(run("check", {"--json", "--variant", variant}).out);
        ASSERT_GT(findings.size(), 0U);
        for (const Json& finding : findings)
            EXPECT_NE(report.find("    " + finding["says"].get<std::string>() + "\n"), std::string::npos)
                << finding["says"];
    }
}

TEST_F(Command, PageReportsAFileThatIsNotAPictureAndIsStillPrinted) {
    folder_.write("shore.png", "no picture");
    const std::string file = folder_.write("photo.tenter.json", R"({"format": "tenter-project", "version": 1,
      "name": "P", "cards": [{"parts": [{"picture": "shore.png", "size": [30, 20]}]}],
      "variants": [{"class": "p", "bands": [{}]}]})");
    const Finished finished = tenterCli({"page", file});
    EXPECT_EQ(finished.code, 0);
    EXPECT_NE(finished.out.find("</html>"), std::string::npos);
    EXPECT_EQ(finished.errorLines(), 1U) << finished.err;
    EXPECT_NE(finished.err.find("/cards/0/parts/0/picture: The picture file \"shore.png\" is not a PNG"),
              std::string::npos)
        << finished.err;
}

TEST_F(Command, SolvePrintsTheProjectWithSizesThatKeepItsWishes) {
    const Finished finished = run("solve", {"heading.lines=2", "body.size=16-", "--variant", "tides-trio"});
    ASSERT_EQ(finished.code, 0) << finished.err;
    const Json solved = Json::parse(finished.out);
    EXPECT_EQ(solved["wishes"]["roles"][0], Json::parse(R"({"role": "heading", "lines": 2})"));
    EXPECT_TRUE(solved["variants"][1]["set"]["text"]["heading"].contains("size"));
    EXPECT_EQ(solved["variants"][0], Json::parse(project)["variants"][0]);
    // Standard error has the table of sizes, then the limits with the word that causes each.
    EXPECT_TRUE(finished.err.starts_with("Sizes in px at the two ends of each band:\n")) << finished.err;
    EXPECT_NE(finished.err.find("\nHeading  701–1700\u00A0px (3 columns)"), std::string::npos)
        << finished.err;
    EXPECT_NE(finished.err.find("\nHeading, 701–1700\u00A0px (3 columns): at most "), std::string::npos)
        << finished.err;
    EXPECT_NE(finished.err.find(" just above 700\u00A0px viewport width, because of the wish “at most 2 "
                                "lines”, limited by the word “"),
              std::string::npos)
        << finished.err;
    // What it prints is a project like any other, and keeps its wishes: nothing is left to do.
    const std::string again = folder_.write("again.tenter.json", finished.out);
    const Finished second = tenterCli({"solve", again, "--variant", "tides-trio"});
    EXPECT_EQ(second.out, finished.out);
}

TEST_F(Command, SolvePrintsNothingWhereWishesConflictAndTellsWhatHelps) {
    const Finished finished = run("solve", {"heading.lines=1", "heading.size=40-"});
    EXPECT_EQ(finished.code, 1);
    EXPECT_EQ(finished.out, "");
    for (const char* told : {"No sizes satisfy these wishes together:\n  “heading on one line”\n  “heading "
                             "at least 40\u00A0px”\n",
                             " just above 700\u00A0px viewport width, because of the wish “one line”, "
                             "limited by the word “steps” (card ",
                             "Any one of these changes resolves the conflict:\n  Change “"})
        EXPECT_NE(finished.err.find(told), std::string::npos) << finished.err;
}

TEST_F(Command, SolveTakesEveryVariantAtOnceAndEitherEngine) {
    const Finished all = run("solve", {"--all-variants", "heading.lines=2", "--engine", "gecko"});
    ASSERT_EQ(all.code, 0) << all.err;
    EXPECT_TRUE(Json::parse(all.out)["style"]["text"]["heading"].contains("size"));
    expectRefused(run("solve", {"--all-variants", "--variant", "tides-trio"}),
                  "--variant cannot be used together with --all-variants.");
}

TEST_F(Command, SolveAddsTheSameRowInOtherColumns) {
    const Finished finished = run("solve", {"--columns", "4"});
    ASSERT_EQ(finished.code, 0) << finished.err;
    const Json solved = Json::parse(finished.out);
    ASSERT_EQ(solved["variants"].size(), 3U);
    EXPECT_EQ(solved["variants"][0], Json::parse(project)["variants"][0]);
    EXPECT_EQ(solved["variants"][2]["class"], "tides-quartet");
    EXPECT_EQ(solved["variants"][2]["bands"].back()["set"]["row"]["columns"], 4);
    expectRefused(run("solve", {"--columns", "3"}), "already has a variant with the class tides-trio");
    expectRefused(run("solve", {"--columns", "3", "--class", "3"}), "is not a class name");
    expectRefused(run("solve", {"--columns", "13"}), "--columns");
    EXPECT_EQ(run("solve", {"--columns", "3", "--class", "tides-other"}).code, 0);
}

TEST_F(Command, SolveLetsSizesFollowTheCardAndThePageAgain) {
    const Finished card = run("solve", {"--follow", "card"});
    ASSERT_EQ(card.code, 0) << card.err;
    EXPECT_NE(card.err.find("cqi"), std::string::npos) << card.err;
    EXPECT_NE(
        card.err.find("\nSizes in px at the two ends of each band (before: converted, not yet solved):\n"),
        std::string::npos)
        << card.err;
    const Json turned = Json::parse(card.out);
    EXPECT_EQ(turned["style"]["text"]["heading"]["follow"], "card");
    for (const Json& variant : turned["variants"])
        EXPECT_EQ(variant.dump().find("\"size\""), std::string::npos) << variant.dump();
    const std::string again = folder_.write("by-card.tenter.json", card.out);
    const Finished page = tenterCli({"solve", again, "--follow", "viewport"});
    ASSERT_EQ(page.code, 0) << page.err;
    EXPECT_EQ(Json::parse(page.out)["variants"][0]["bands"][1]["set"]["text"]["heading"]["follow"],
              "viewport");
    expectRefused(run("solve", {"--follow", "moon"}), "The width must be card or viewport; it is \"moon\"");
}

TEST_F(Command, SolveTellsWhatWishesAllowAndLeaveOpen) {
    const Finished allowed = run("solve", {"--allowed", "heading.lines=1"});
    ASSERT_EQ(allowed.code, 0) << allowed.err;
    const Json json = Json::parse(allowed.out);
    EXPECT_EQ(json["heading"]["least"][0][0], Json::parse("[340, 11]"));
    EXPECT_EQ(json["body"]["most"][0].back()[0], 1700);

    const Finished leeway = run("solve", {"--leeway", "breakpoint"});
    ASSERT_EQ(leeway.code, 0) << leeway.err;
    EXPECT_TRUE(leeway.out.starts_with("Breakpoint at 700\u00A0px (1 to 2 columns): at least "))
        << leeway.out;
    expectRefused(run("solve", {"--leeway", "colour"}),
                  "must be breakpoint, gap, padding or row-width; it is \"colour\"");
}

TEST_F(Command, SolveRefusesWishesThatAreNone) {
    expectRefused(run("solve", {"heading.lines=none"}), "heading.lines=none: \"none\" is not a number");
    expectRefused(run("solve", {"headin.lines=2"}), "Did you mean");
    expectRefused(run("solve", {"reserve=80%"}), "must be a number from 0 to 0.5");
}

TEST_F(Command, OutReplacesAFileWholeOrLeavesIt) {
    const std::string out = folder_.write("row.css", "old");
    const Finished finished = run("stylesheet", {"--out", out});
    EXPECT_EQ(finished.code, 0) << finished.err;
    EXPECT_EQ(finished.out, "");
    EXPECT_EQ(contentOf(out), run("stylesheet").out);
    expectRefused(run("stylesheet", {"--out", out, "--variant", "none"}), "none");
    EXPECT_EQ(contentOf(out), run("stylesheet").out);
    expectRefused(run("stylesheet", {"--out", folder_.file("no/such/row.css")}), "row.css");
    EXPECT_EQ(folder_.names(), (Words{"row.css", "tides.tenter.json"}));
}

TEST_F(Command, OutIsNeverTheProjectItself) {
    for (const char* verb : {"geometry", "wraps", "stylesheet", "page", "report"})
        expectRefused(run(verb, {"--out", file_}), "--out");
    EXPECT_EQ(contentOf(file_), project);
}

TEST_F(Command, RefusesAnInvalidProjectWithItsPlace) {
    expectRefused(tenterCli({"geometry", folder_.file("none.tenter.json")}), "none.tenter.json");
    expectRefused(tenterCli({"geometry", folder_.write("a.tenter.json", "{\"format\": ")}),
                  "a.tenter.json:1:12: The file ends in the middle of its JSON.");
    expectRefused(tenterCli({"page", folder_.write("b.tenter.json", "{}")}), "b.tenter.json");
    std::string wrong = project;
    wrong.replace(wrong.find("tides-pair"), 10, "3-columns!");
    expectRefused(
        tenterCli({"stylesheet", folder_.write("c.tenter.json", wrong)}),
        "c.tenter.json:7:16: \"class\" must be a class name: letters, digits, hyphens and underscores, "
        "starting with a letter; it is \"3-columns!\".");
}

TEST_F(Command, RefusesArgumentsItDoesNotKnowInOneLine) {
    expectRefused(tenterCli({}), "A verb is missing.");
    expectRefused(
        tenterCli({"weave"}),
        "There is no verb \"weave\". Use one of geometry, wraps, check, remedy, stylesheet, markup, page, "
        "folder, tokens, diff, pictures, report, picture, sheet, new, adopt, intake, size, solve, serve.");
    expectRefused(tenterCli({"--loud"}), "A verb is missing.");
    expectRefused(tenterCli({"geometry"}), "PROJECT");
    expectRefused(run("geometry", {"--loud"}), "--loud");
    expectRefused(run("geometry", {"more.tenter.json"}), "more.tenter.json");
    expectRefused(run("geometry", {"--widths"}), "--widths");
    expectRefused(run("geometry", {"--widths", "400", "--widths", "500"}), "--widths");
}

TEST_F(Command, MakesControlCharactersInMessagesVisible) {
    const Finished finished = run("page", {"--variant", "a\x1b[31m\nb"});
    expectRefused(finished, "No variant has the class");
    EXPECT_EQ(finished.err.find('\x1b'), std::string::npos);
}

TEST_F(Command, HelpsWithEveryVerb) {
    EXPECT_EQ(tenterCli({"--help"}).code, 0);
    for (const char* verb : {"geometry", "wraps", "stylesheet", "page", "report", "new"}) {
        const Finished finished = tenterCli({verb, "--help"});
        EXPECT_EQ(finished.code, 0);
        EXPECT_EQ(finished.err, "");
        EXPECT_NE(finished.out.find("--out"), std::string::npos) << finished.out;
        EXPECT_NE(tenterCli({"--help"}).out.find(verb), std::string::npos);
    }
}

TEST_F(Command, AdoptImportsThePagesRowAndReportsWhatItGuessed) {
    const std::string page = folder_.write(
        "page.html",
        "<ul><li><img src=a.jpg alt=Quay><h3>High water</h3><p>Twice a day, a little later each "
        "time.</p></li>"
        "<li><img src=b.jpg alt=Steps><h3>Low water</h3><p>When the steps are green and dry.</p></li></ul>");
    const Finished finished = run("adopt", {page, "--part", "kicker=li p"});
    ASSERT_EQ(finished.code, 0) << finished.err;
    const Json json = Json::parse(finished.out);
    EXPECT_EQ(json["given"]["selectors"].dump(),
              R"({"card":"li","heading":"h3","kicker":"li p","picture":"img","row":""})");
    EXPECT_EQ(json["cards"][1]["parts"][2]["copy"], "When the steps are green and dry.");
    EXPECT_NE(finished.err.find("Warning: The row on the page does not have the class of a variant. "
                                "Tenter added tides-pair to the imported markup. Add it to the row in the "
                                "CMS, too."),
              std::string::npos)
        << finished.err;
    // What is printed can be opened, although the pictures are elsewhere.
    folder_.write("adopted.tenter.json", finished.out);
    const std::string adopted = folder_.file("adopted.tenter.json");
    EXPECT_EQ(tenterCli({"geometry", adopted, "--widths", "900"}).code, 0);
    const Finished sheet = tenterCli({"stylesheet", adopted});
    EXPECT_EQ(sheet.out, tenterCli({"stylesheet", adopted, "--markup", "given"}).out);
    EXPECT_NE(sheet.out.find(".tides-pair h3 {"), std::string::npos) << sheet.out;
    EXPECT_NE(tenterCli({"page", adopted}).out.find("<h3 data-tenter-part=\"0.1\">High water</h3>"),
              std::string::npos);
}

TEST_F(Command, PageIsTheSavedPageAroundTheRow) {
    const std::string page =
        folder_.write("page.html",
                      "<h1>Tides</h1><ul class=tides-pair><li><h3>High water</h3><p>Twice a day.</p></li>"
                      "<li><h3>Low</h3><p>Green.</p></li></ul>");
    folder_.write("adopted.tenter.json", run("adopt", {page}).out);
    const std::string adopted = folder_.file("adopted.tenter.json");
    const Finished around = tenterCli({"page", adopted, "--around", page});
    ASSERT_EQ(around.code, 0) << around.err;
    EXPECT_NE(around.out.find("<h1>Tides</h1>"), std::string::npos);
    EXPECT_NE(around.out.find(".tides-pair h3 {"), std::string::npos);
    expectRefused(tenterCli({"page", adopted, "--around", folder_.file("gone.html")}), "gone.html");
}

TEST_F(Command, AdoptReadsTheThemesCssFromAFile) {
    const std::string page = folder_.write(
        "page.html",
        "<ul><li><h3>High water</h3><p>Twice a day.</p></li><li><h3>Low</h3><p>Green.</p></li></ul>");
    const std::string theme = folder_.write("theme.css", "html { font-size: 62.5% } li { float: left }");
    const Finished finished = run("adopt", {page, "--theme", theme});
    ASSERT_EQ(finished.code, 0) << finished.err;
    EXPECT_EQ(Json::parse(finished.out)["page"]["rootSize"], 10);
    expectRefused(run("adopt", {page, "--theme", folder_.file("gone.css")}), "gone.css");
}

TEST_F(Command, AdoptRefusesPagesWithoutARowAndPartsWithoutASelector) {
    const std::string page = folder_.write("page.html", "Only words.");
    expectRefused(run("adopt", {page}), "No row of cards was found");
    expectRefused(run("adopt", {folder_.file("gone.html")}), "gone.html");
    expectRefused(run("adopt", {page, "--part", "heading"}), "--part");
}

TEST(SampleProjects, WorkWithEveryVerb) {
    int count = 0;
    for (const auto& entry : std::filesystem::directory_iterator(TENTER_SAMPLES)) {
        const std::string file = entry.path().string();
        if (!file.ends_with(".tenter.json")) continue;
        ++count;
        const Words verbs[] = {{"geometry", file, "--step", "100"},
                               {"wraps", file},
                               {"wraps", file, "--json", "--engine", "gecko"},
                               {"stylesheet", file, "--all-variants"},
                               {"stylesheet", file, "--follow", "viewport"},
                               {"page", file},
                               {"solve", file},
                               {"report", file}};
        for (const Words& words : verbs) {
            const Finished finished = tenterCli(words);
            EXPECT_EQ(finished.code, 0) << words[0] << " " << file << ": " << finished.err;
            // Converted sizes may depart from the line they had, which is told.
            // So are the wishes that decide sizes.
            if (words[0] != "solve" && std::ranges::find(words, "--follow") == words.end()) {
                EXPECT_EQ(finished.err, "");
            }
            EXPECT_FALSE(finished.out.empty());
        }
        std::string remedy;
        for (const Json& finding : Json::parse(tenterCli({"check", file, "--remedies", "--json"}).out))
            for (const Json& one : finding["remedies"])
                remedy = one["remedy"];
        EXPECT_FALSE(remedy.empty()) << file;
        const Finished applied = tenterCli({"remedy", file, remedy});
        EXPECT_EQ(applied.code, 0) << file << ": " << applied.err;
        EXPECT_EQ(applied.errorLines(), 1U) << applied.err;
    }
    EXPECT_GT(count, 0);
}

}  // namespace
}  // namespace tenter::tests
