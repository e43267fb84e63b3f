// Checks of cards beside each other. Limits from common practice; layouts are the reference.
#include "checking.h"
#include "layout/prepared.h"

namespace tenter::checks {
namespace {

using namespace test;  // NOLINT(google-build-using-namespace)

TEST(HolesCheck, ReportsHolesThatAnotherColumnCountFills) {
    const std::string four = "[" + card("A", "One.") + "," + card("B", "Two.") + "," + card("C", "Three.") +
                             "," + card("D", "Four.") + "]";
    const std::string bands =
        R"([{"upTo": 700, "set": {"row": {"columns": 2}}}, {"set": {"row": {"columns": 3}}}])";
    project::Project project = quiet(four, bands);
    expectSpans(findingOf(project, "holes"), {{700, 1920}});
    setInBand(project, 1, "row/lastLine", R"("center")");
    EXPECT_FALSE(has(project, "holes"));
    setInBand(project, 1, "row/lastLine", R"("start")");
    setInBand(project, 0, "row/columns", "3");  // no count fills the line
    EXPECT_FALSE(has(project, "holes", Severity::Warning));
    EXPECT_NE(findingOf(project, "holes", Severity::Note)
                  .says.find(". Centre the last line of cards (Row › Last line of cards)."),
              std::string::npos);
    // Five cards leave one place empty in two columns, one in three and three in four.
    setInBand(project, 0, "row/columns", "2");
    setInBand(project, 1, "row/columns", "4");
    project.row().cards.push_back(project.row().cards.front());
    EXPECT_NE(findingOf(project, "holes").says.find("3 of 4 places in the last line of cards are empty"),
              std::string::npos);
    EXPECT_NE(findingOf(project, "holes")
                  .says.find("Use 2 columns (Row › Columns), which leave 1 place empty, or centre"),
              std::string::npos)
        << findingOf(project, "holes").says;
}

TEST(SpareRoomCheck, NotesMinimumLinesThatNoTextHas) {
    const auto row = [](const std::string& heading) {
        project::Project project = quiet("[" + card("A", "One.") + "," + card(heading, "Two.") + "]", "[{}]",
                                         R"({"columns": 2, "width": "600px"})");
        set(project, "text/heading/keepLines", "2");
        set(project, "text/heading/size", "20");
        return project;
    };
    const Finding kept = findingOf(row("B"), "spare-room");
    EXPECT_NE(kept.says.find("reserve space for 2 lines, but none of them needs 2."), std::string::npos)
        << kept.says;
    EXPECT_NE(kept.says.find("or align the parts instead (Row › Align parts)"), std::string::npos)
        << kept.says;
    // A centred last line of cards does not allow it.
    project::Project centred = row("B");
    set(centred, "row/lastLine", "\"center\"");
    EXPECT_EQ(findingOf(centred, "spare-room").says.find("align the parts"), std::string::npos);
    EXPECT_FALSE(has(row("Low tide and the long way round by the wall"), "spare-room"));
}

TEST(SpareRoomCheck, NotesHalfEmptyCardsBesideFullerOnes) {
    const std::string two = "[" + card("A", "One.") + "," + card("B", longText) + "]";
    const project::Project project = quiet(two, "[{}]", R"({"columns": 2, "width": "600px"})");
    EXPECT_TRUE(has(project, "spare-room", Severity::Note));
    EXPECT_FALSE(has(quiet(two, "[{}]", R"({"columns": 2, "width": "1900px"})"), "spare-room"));
    EXPECT_FALSE(has(quiet(two, "[{}]", R"({"columns": 1, "width": "300px"})"), "spare-room"));
}

// Computed by hand: with two columns the longer heading has two lines until the viewport is twice as wide as
// the heading's text.
TEST(OutOfLineCheck, ReportsTextThatStartsAtDifferentHeights) {
    const std::string cards = "[" + card("Low tide and the long way round by the sea wall", "Out and back.") +
                              "," + card("Dunes", "Out and back.") + "]";
    project::Project project =
        quiet(cards, R"([{"upTo": 600, "set": {"row": {"columns": 1}}}, {"set": {"row": {"columns": 2}}}])",
              R"({"columnGap": "0"})");
    set(project, "text/heading/size", "20");
    const layout::PreparedRow row(project, 0, checkStore(), text::blink());
    const auto& heading = *row.band(1).cards[0].parts[0].paragraph;
    const double wide = heading.ems(0, static_cast<std::uint32_t>(heading.clusters().size())) * 20;
    ASSERT_GT(2 * wide, 600);
    expectSpans(findingOf(project, "out-of-line"), {{600, 2 * wide}}, 1e-5);

    project::Project level = project;
    set(level, "row/level", R"("subgrid")");
    EXPECT_FALSE(has(level, "out-of-line"));
    project::Project apart = project;
    setInBand(apart, 1, "row/columns", "1");
    EXPECT_FALSE(has(apart, "out-of-line"));
    project::Project alike = project;
    alike.row().cards[1] = alike.row().cards[0];
    EXPECT_FALSE(has(alike, "out-of-line"));
}

/// A card with a picture of that size above its heading and paragraph.
std::string picturedCard(int width, int height, const std::string& heading) {
    return R"({"parts": [{"picture": ")" + heading + R"(.png", "size": [)" + std::to_string(width) + ", " +
           std::to_string(height) + R"(], "alt": "A quay"}, {"role": "heading", "copy": ")" + heading +
           R"("}, {"role": "body", "copy": "Out and back."}]})";
}

TEST(OutOfLineCheck, CountsMinimumLines) {
    project::Project project =
        quiet("[" + card("Low tide and the long way round by the sea wall", "Out.") + "," +
                  card("Dunes", "Out.") + "]",
              R"([{"set": {"row": {"columns": 2}}}])", R"({"width": "700px", "columnGap": "0"})");
    set(project, "text/heading/size", "20");
    const layout::PreparedRow row(project, 0, checkStore(), text::blink());
    ASSERT_EQ(layout::layOut(row, 800).parts[0].lineCount, 2U);
    ASSERT_TRUE(has(project, "out-of-line"));
    set(project, "text/heading/keepLines", "2");
    EXPECT_FALSE(has(project, "out-of-line"));
}

// Computed by hand: 6 px are less than half an em of 16 px, and exactly half an em of 12 px.
TEST(InsetCheck, NotesTextCloseToAVisibleEdge) {
    project::Project project = quiet();
    set(project, "text/heading/size", "12");
    set(project, "text/body/size", "16");
    set(project, "card/padding", R"({"top": "6px", "right": "6px", "bottom": "6px", "left": "6px"})");
    set(project, "card/border", R"({"width": "0"})");
    set(project, "card/background", R"("transparent")");
    EXPECT_FALSE(has(project, "inset")) << "nothing shows where the card ends";
    set(project, "card/background", R"("#dfe6ea")");
    const Finding found = findingOf(project, "inset");
    expectSpans(found, {{320, 1920}});
    EXPECT_EQ(found.place->part, 1U);
    EXPECT_NE(found.says.find("comes within 0.38\u00A0em of the visible edge"), std::string::npos)
        << found.says;
    set(project, "card/background", R"("transparent")");
    set(project, "card/border", R"({"width": "1px", "colour": "#5a6b75"})");
    EXPECT_TRUE(has(project, "inset"));
    set(project, "card/padding/left", R"("8px")");
    EXPECT_TRUE(has(project, "inset")) << "at the right";
    set(project, "card/padding/right", R"("8px")");
    EXPECT_FALSE(has(project, "inset"));
}

// Computed by hand: two columns of half the viewport from 600 px on, pictures with ratios 300 : 200 and
// 300 : `height`. The difference is W / 2 · (height − 200) / 300, which is 2 px at 1200 px for a height of
// 201.
TEST(OutOfLineCheck, ReportsPicturesOfDifferentHeights) {
    const auto row = [](int height, const std::string& ratio) {
        project::Project project =
            quiet("[" + picturedCard(300, 200, "Low") + "," + picturedCard(300, height, "High") + "]",
                  R"([{"upTo": 600, "set": {"row": {"columns": 1}}}, {"set": {"row": {"columns": 2}}}])",
                  R"({"columnGap": "0"})");
        set(project, "picture/ratio", ratio);
        return project;
    };
    const Finding tall = findingOf(row(300, R"("own")"), "out-of-line");
    expectSpans(tall, {{600, 1920}});
    EXPECT_EQ(tall.place->card, 1U);
    EXPECT_EQ(tall.place->part, 0U);
    EXPECT_NE(
        tall.says.find(
            "From 601 to 1920\u00A0px, the picture High.png is up to 320\u00A0px taller than its neighbour."),
        std::string::npos)
        << tall.says;
    expectSpans(findingOf(row(201, R"("own")"), "out-of-line"), {{1200, 1920}}, 1e-3);
    EXPECT_FALSE(has(row(200, R"("own")"), "out-of-line"));
    EXPECT_FALSE(has(row(300, R"("3/2")"), "out-of-line"));
    project::Project level = row(300, R"("own")");
    set(level, "row/level", R"("subgrid")");
    EXPECT_FALSE(has(level, "out-of-line"));
    // A picture beside the text does not move the text.
    project::Project beside = row(300, R"("own")");
    set(beside, "card/direction", R"("beside")");
    EXPECT_FALSE(has(beside, "out-of-line"));
}

TEST(OutOfLineCheck, ReportsACardThatLacksAPartOfItsNeighbour) {
    const auto row = [](const std::string& other) {
        return quiet("[" + picturedCard(300, 200, "Low") + "," + other + "]",
                     R"([{"upTo": 600, "set": {"row": {"columns": 1}}}, {"set": {"row": {"columns": 2}}}])",
                     R"({"columnGap": "0"})");
    };
    const Finding lacks = findingOf(row(card("High", "Out and back.")), "out-of-line");
    expectSpans(lacks, {{600, 1920}});
    EXPECT_EQ(lacks.place->card, 0U);
    EXPECT_EQ(
        lacks.says.rfind(
            "From 601 to 1920\u00A0px, card 2 has no picture, but its neighbour has the picture Low.png.", 0),
        0U)
        << lacks.says;
    // A missing part at the end of a card moves nothing.
    EXPECT_FALSE(has(quiet("[" + card("Low", "Out.") + R"(, {"parts": [{"role": "heading", "copy": "High"},
                            {"role": "body", "copy": "Out."}]}])",
                           R"([{"set": {"row": {"columns": 2}}}])", R"({"columnGap": "0"})"),
                     "out-of-line"));
}

}  // namespace
}  // namespace tenter::checks
