#include <algorithm>
#include <map>

#include "laying.h"
#include "project/level_cases.h"

namespace tenter::layout {
namespace {

/// Top and bottom of a part's margin box, in CSS px.
struct Extent {
    double top = 0;
    double bottom = 0;
};

Extent outer(const LaidPart& part) {
    return {part.box.y - part.margin.top, part.box.bottom() + part.margin.bottom};
}

// CSS Grid 2 § 9: the items of a subgrid are placed in the tracks of its parent. Parts of one level start at
// the same height, or end at the same height if they have an automatic top margin; no part of the next level
// starts above.
TEST(Levels, AlignPartsAcrossTheRow) {
    for (const test::LevelCase& given : test::levelCases()) {
        SCOPED_TRACE(given.name);
        const auto row =
            test::prepareRow(test::projectOf(test::styleOf(given), "[{}]", test::cardsOf(given)));
        const Layout layout = layOut(row, 900);
        std::map<int, std::vector<Extent>> starts;
        std::map<int, std::vector<Extent>> ends;
        for (std::size_t c = 0; c < layout.cards.size(); ++c) {
            const LaidCard& card = layout.cards[c];
            for (std::uint32_t i = 0; i < card.partCount; ++i) {
                const LaidPart& part = layout.parts[card.firstPart + i];
                const int level = given.levels[c][i];
                const bool pushed = given.button == "auto" && given.cards[c][i] == 'B';
                if (level >= 0) {
                    (pushed ? ends : starts)[level].push_back(outer(part));
                } else {  // a full-bleed picture beside the text fills its card
                    EXPECT_NEAR(part.box.y, card.box.y + card.border, 1e-9);
                    EXPECT_NEAR(part.box.height, card.box.height - 2 * card.border, 1e-9);
                }
            }
        }
        double lowest = 0;
        for (int level = 0; level < given.count; ++level) {
            double bottom = lowest;
            for (const Extent& extent : starts[level]) {
                EXPECT_NEAR(extent.top, starts[level].front().top, 1e-9) << level;
                EXPECT_GE(extent.top, lowest - 1e-9) << level;
                bottom = std::max(bottom, extent.bottom);
            }
            for (const Extent& extent : ends[level]) {
                EXPECT_NEAR(extent.bottom, ends[level].front().bottom, 1e-9) << level;
                EXPECT_GE(extent.top, lowest - 1e-9) << level;
                bottom = std::max(bottom, extent.bottom);
            }
            EXPECT_GT(starts[level].size() + ends[level].size(), 0U) << level;
            lowest = bottom;
        }
        for (const LaidCard& card : layout.cards)
            EXPECT_NEAR(card.box.bottom(), lowest + card.padding.bottom + card.border, 1e-9);
    }
}

// Measured in Firefox 153, in cards 200 px wide with gaps of 36 px: where the first text of a card has
// minimum lines and a padding in percent, the row is lower than its cards by that padding.
TEST(Levels, FirefoxTakesPercentagesOfTheFirstTextForZeroInTheHeightOfTheRow) {
    const auto heights = [](const std::string& padding, const std::string& first) {
        const project::Project project = test::projectOf(
            test::styleOf(
                R"({"level": "subgrid", "rowGap": "36px", "width": "200px", "maxWidth": "none"})",
                R"({"padding": {"top": "0", "right": "0", "bottom": "0", "left": "0"}, "border": {"width": "0"}})"),
            R"([{"set": {"row": {"columns": 1}, "text": {"heading": {"lineHeight": "24px"}, "body": {"lineHeight": "24px", "keepLines": 2, "padding": {"top": ")" +
                padding + R"("}}}}}])",
            R"([{"parts": [)" + first + R"({"role": "body", "copy": "a"}, {"role": "note", "copy": "b"}]}])");
        static text::Fonts fonts;
        static text::ParagraphStore store(fonts);
        const Layout layout = layOutDrawn(PreparedRow(project, 0, store, text::gecko()), 800);
        return std::pair(layout.cards.front().box.height, layout.row.height);
    };
    const auto [card, row] = heights("10px", "");
    EXPECT_NEAR(row, card, 1e-6);
    EXPECT_NEAR(heights("5%", "").first, card, 1e-6);
    EXPECT_NEAR(heights("5%", "").second, card - 10, 1e-6);
    const auto [taller, after] = heights("5%", R"({"role": "heading", "copy": "a"}, )");
    EXPECT_NEAR(after, taller, 1e-6);
}

// Measured in Chromium 156: with a row gap of 15.234375 px (975/64), of which half is no whole number of 1/64
// px, parts of 20 px in a subgrid without gaps stand 20.015625 px apart; with 15.25 px 20 px apart.
TEST(Levels, HalfOfAGapIsRoundedAsInChromium) {
    const auto apart = [](const std::string& gap) {
        const auto row = test::prepareRow(test::projectOf(
            test::styleOf(R"({"level": "subgrid", "rowGap": ")" + gap + R"("})", test::plainCard),
            R"([{"set": {"row": {"columns": 1}, "text": {"heading": {"lineHeight": "20px"}, "body": {"lineHeight": "20px"}}}}])",
            R"([{"parts": [{"role": "heading", "copy": "a"}, {"role": "body", "copy": "a"}]}])"));
        const Layout layout = layOutDrawn(row, 700);
        return layout.parts[1].box.y - layout.parts[0].box.y;
    };
    EXPECT_EQ(apart("15.234375px"), 20.015625);
    EXPECT_EQ(apart("15.25px"), 20);
}

}  // namespace
}  // namespace tenter::layout
