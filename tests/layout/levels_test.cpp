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
