// Comparison of browser layouts with the computed row. Here the browser layouts are made from the computed
// row and then changed; the tests of the window and of the engines use real browsers.
#include "judge/verdict.h"

#include <cmath>

#include "../layout/laying.h"

namespace tenter::judge {
namespace {

using What = Difference::What;

/// The layout of a browser that agrees with the computed one.
BrowserLayout browserLayoutOf(const layout::Layout& layout) {
    BrowserLayout read;
    read.width = layout.width;
    read.row = layout.row;
    for (std::size_t c = 0; c < layout.cards.size(); ++c) {
        const layout::LaidCard& card = layout.cards[c];
        read.cards.push_back(card.box);
        for (std::uint32_t i = 0; i < card.partCount; ++i) {
            const layout::LaidPart& part = layout.parts[card.firstPart + i];
            read.parts.push_back({c, part.index, part.box, {}, {}});
            if (part.picture) continue;
            read.parts.back().fontSize = part.fontSize;
            read.parts.back().lines = part.lineCount;
        }
    }
    return read;
}

class Judging : public testing::Test {
protected:
    project::Project project =
        test::projectOf(test::styleOf(R"({"columns": 2, "width": "100%"})", test::plainCard), "[{}]",
                        "[" + test::card("Low water", "The flats lie bare for three hours on either side.") +
                            ", " + test::card("High water", "The ferry lands at the outer pier.") + "]");
    layout::PreparedRow row = test::prepareRow(project);
    layout::Layout computed = layout::layOut(row, 700);
    BrowserLayout read = browserLayoutOf(computed);
    [[nodiscard]] Verdict verdict() const { return judge(row, computed, read); }
};

TEST_F(Judging, AgreesWithTheSameLayout) {
    EXPECT_TRUE(verdict().agrees());
    EXPECT_EQ(verdict().parts, 6U);
    EXPECT_EQ(verdict().largestBox, 0);
}

TEST_F(Judging, ReportsADifferentBoxWithBothValues) {
    read.parts[1].box.y += 0.75;
    const Verdict reported = verdict();
    ASSERT_EQ(reported.differences.size(), 1U);
    EXPECT_EQ(reported.differences[0].card, 0U);
    EXPECT_EQ(reported.differences[0].part, 1U);
    EXPECT_EQ(reported.differences[0].what, What::Y);
    EXPECT_DOUBLE_EQ(reported.differences[0].measured - reported.differences[0].computed, 0.75);
    EXPECT_NEAR(reported.largestBox, 0.75, 1e-9);
    EXPECT_EQ(reported.differingParts(), 1U);
}

TEST_F(Judging, AcceptsDifferencesWithinTheEnginesGrid) {
    read.row.height += 0.4;
    read.parts[0].fontSize = *read.parts[0].fontSize + 0.009;
    EXPECT_TRUE(verdict().agrees());
    EXPECT_NEAR(verdict().largestBox, 0.4, 1e-9);
    EXPECT_NEAR(verdict().largestSize, 0.009, 1e-9);
}

TEST_F(Judging, ReportsADifferentFontSize) {
    read.parts[0].fontSize = *read.parts[0].fontSize + 0.02;
    ASSERT_EQ(verdict().differences.size(), 1U);
    EXPECT_EQ(verdict().differences[0].what, What::FontSize);
}

// Firefox's app unit is 1/60 px.
TEST_F(Judging, AcceptsFirefoxsGridOfSizes) {
    read.parts[0].fontSize = *read.parts[0].fontSize - 1.0 / 60;
    EXPECT_FALSE(verdict().agrees());
    static text::Fonts fonts;
    static text::ParagraphStore store(fonts);
    const layout::PreparedRow gecko(project, 0, store, text::gecko());
    const layout::Layout laid = layout::layOut(gecko, 700);
    BrowserLayout of = browserLayoutOf(laid);
    of.parts[0].fontSize = *of.parts[0].fontSize - 1.0 / 60;
    EXPECT_TRUE(judge(gecko, laid, of).agrees());
    of.parts[0].fontSize = *of.parts[0].fontSize - 0.01;
    EXPECT_FALSE(judge(gecko, laid, of).agrees());
}

TEST_F(Judging, ReportsAnExtraLine) {
    ASSERT_GE(computed.parts[1].slack, text::tightSlack);
    read.parts[1].lines = *read.parts[1].lines + 1;
    ASSERT_EQ(verdict().differences.size(), 1U);
    EXPECT_EQ(verdict().differences[0].what, What::Lines);
    EXPECT_EQ(verdict().tightFits, 0U);
}

TEST_F(Judging, ReportsTextWithoutALineCount) {
    read.parts[1].lines.reset();
    ASSERT_EQ(verdict().differences.size(), 1U);
    EXPECT_EQ(verdict().differences[0].what, What::Lines);
}

// A tight fit may break either way, and the extra line moves the parts below it.
TEST_F(Judging, CountsTightFitsSeparately) {
    computed.parts[1].slack = 0.00005;
    read.parts[1].lines = *read.parts[1].lines + 1;
    read.parts[1].box.height += 24;
    read.cards[0].height += 24;
    EXPECT_TRUE(verdict().agrees());
    EXPECT_EQ(verdict().tightFits, 1U);
    read.cards[0].width += 24;
    EXPECT_FALSE(verdict().agrees());
}

TEST_F(Judging, ReportsMissingAndUnexpectedPartsAndCards) {
    read.parts.erase(read.parts.begin());
    read.parts.push_back({5, 0, {}, {}, {}});
    read.cards.pop_back();
    std::vector<What> reported;
    for (const Difference& difference : verdict().differences)
        reported.push_back(difference.what);
    EXPECT_EQ(reported, (std::vector<What>{What::Unexpected, What::Cards, What::Missing}));
}

TEST_F(Judging, TreatsNotANumberAsADifference) {
    read.row.width = std::nan("");
    EXPECT_FALSE(verdict().agrees());
}

// Firefox has its own dictionary for Thai and its own emoji font (measured in Firefox 153).
TEST_F(Judging, ExcludesTextThatUsesEngineData) {
    project::Project thai = project;
    std::get<project::TextPart>(thai.row().cards[0].parts[1]).copy = {
        {project::Run::Kind::Plain, "\u0E1F\u0E49\u0E32\u0E43\u0E2A", {}}};
    static text::Fonts fonts;
    static text::ParagraphStore store(fonts);
    for (const text::BreakProfile* profile : text::profiles()) {
        const layout::PreparedRow prepared(thai, 0, store, *profile);
        const layout::Layout laid = layout::layOut(prepared, 700);
        BrowserLayout of = browserLayoutOf(laid);
        of.parts[1].lines = *of.parts[1].lines + 1;
        const Verdict reported = judge(prepared, laid, of);
        const bool reached = profile == &text::blink();
        EXPECT_EQ(reported.excluded, reached ? 0U : 1U);
        EXPECT_EQ(reported.agrees(), !reached);
    }
}

TEST_F(Judging, AddsUpOverWidths) {
    Summary summary;
    summary.add(verdict());
    read.parts[1].box.x += 3;
    read.parts[2].lines = 9;
    summary.add(verdict());
    EXPECT_EQ(summary.widths, 2U);
    EXPECT_EQ(summary.differingWidths, 1U);
    EXPECT_EQ(summary.parts, 12U);
    EXPECT_EQ(summary.differingParts, 2U);
    EXPECT_NEAR(summary.largestBox, 3, 1e-9);
    EXPECT_EQ(summary.largestBoxAt, 700);
}

TEST(BrowserLayouts, ParseTheMessageOfAPage) {
    std::string wrong;
    const auto read = parseBrowserLayouts(
        R"({"layouts": [{"width": 320, "row": [0, 1, 2, 3.5], "cards": [[4, 5, 6, 7]], "parts":
           [{"name": "0.1", "box": [1, 2, 3, 4], "fontSize": 16.5, "lines": 2},
            {"name": "12.0", "box": [1, 2, 3, 4], "fontSize": null, "lines": null}]}]})",
        wrong);
    ASSERT_TRUE(read.has_value()) << wrong;
    ASSERT_EQ(read->size(), 1U);
    const BrowserLayout& one = read->front();
    EXPECT_EQ(one.width, 320);
    EXPECT_EQ(one.row, (layout::Box{0, 1, 2, 3.5}));
    ASSERT_EQ(one.parts.size(), 2U);
    EXPECT_EQ(one.parts[0].part, 1U);
    EXPECT_EQ(one.parts[0].lines, 2U);
    EXPECT_EQ(one.parts[1].card, 12U);
    EXPECT_FALSE(one.parts[1].fontSize.has_value());
}

TEST(BrowserLayouts, SayWhatIsWrongAndWhere) {
    const auto wrongOf = [](const std::string& json) {
        std::string wrong;
        EXPECT_FALSE(parseBrowserLayouts(json, wrong).has_value()) << json;
        return wrong;
    };
    EXPECT_EQ(wrongOf("{"), "/: is not valid JSON");
    EXPECT_EQ(wrongOf("[]"), "/: \"layouts\" is missing");
    EXPECT_EQ(wrongOf(R"({"layouts": 3})"), "/layouts: must be a list");
    EXPECT_EQ(wrongOf(R"({"layouts": [{}]})"), "/layouts/0: \"width\" is missing");
    EXPECT_EQ(wrongOf(R"({"layouts": [{"width": "320", "row": [0,0,0,0], "cards": [], "parts": []}]})"),
              "/layouts/0/width: must be a number");
    EXPECT_EQ(wrongOf(R"({"layouts": [{"width": 320, "row": [0,0,0], "cards": [], "parts": []}]})"),
              "/layouts/0/row: must be a box of four numbers");
    const auto part = [&](const std::string& name, const std::string& lines) {
        return wrongOf(R"({"layouts": [{"width": 320, "row": [0,0,0,0], "cards": [], "parts": [{"name": )" +
                       name + R"(, "box": [0,0,0,0], "fontSize": 1, "lines": )" + lines + "}]}]}");
    };
    for (const char* name : {R"("0")", R"("0.")", R"(".1")", R"("-1.2")", R"("0.1x")", "7"})
        EXPECT_EQ(part(name, "1"),
                  "/layouts/0/parts/0/name: must be the name of a part, such as 0.1 (card 0, part 1)");
    for (const char* lines : {"-1", "1.5", "\"2\"", "99999999999"})
        EXPECT_EQ(part(R"("0.1")", lines), "/layouts/0/parts/0/lines: must be a whole number of lines");
}

}  // namespace
}  // namespace tenter::judge
