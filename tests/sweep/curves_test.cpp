// Curves compared with layouts at random widths. tests/engines compares layouts with browsers.
#include "sweep/curves.h"

#include <algorithm>
#include <cmath>

#include "layout/prepared.h"
#include "sweeping.h"

namespace tenter::sweep {
namespace {

using test::Swept;

/// Widths closer to a jump than this are not compared, CSS px.
bool isNearJump(const Curve& curve, double width) {
    return std::any_of(curve.begin(), curve.end(),
                       [&](const Vertex& vertex) { return std::abs(vertex.width - width) < 1e-5; });
}

void expectNear(const Curve& curve, double width, double laid, double within, const std::string& what) {
    if (isNearJump(curve, width)) return;
    ASSERT_NEAR(valueAt(curve, width), laid, within * std::max(1.0, std::abs(laid)))
        << what << " at " << testing::PrintToString(width);
}

double largestOf(const Curve& curve) {
    double largest = 0;
    for (const Vertex& vertex : curve)
        largest = std::max(largest, vertex.value);
    return largest;
}

void expectStraightCurves(const Swept& swept) {
    const Sweep all = sweep(swept.row, swept.project.leastWidth, swept.project.mostWidth);
    std::mt19937 random(29);
    for (int i = 0; i < 300; ++i) {
        const double width = test::somewhere(all.least, all.most, random);
        const layout::Layout laid = layout::layOut(swept.row, width);
        const double share = test::rootShare(swept.row, laid);
        // Of the widths that are added and subtracted for a width of a part, at least one in rem.
        const double within = 1e-6 + 2 * share * std::max(laid.container.width, laid.row.width);
        for (std::size_t part = 0; part < laid.parts.size(); ++part) {
            const PartCurves& curves = all.curves.parts[part];
            const layout::LaidPart& is = laid.parts[part];
            const std::string what = swept.name + ", part " + std::to_string(part) + ": ";
            ASSERT_EQ(curves.picture, is.picture);
            ASSERT_EQ(curves.place.part, is.index);
            if (is.picture) {
                expectNear(curves.slotWidth, width, is.box.width, share > 0 ? within : 1e-6, what + "slot");
                continue;
            }
            expectNear(curves.fontSize, width, is.fontSize, 1e-6, what + "size");
            expectNear(curves.available, width, is.available, share > 0 ? within : 1e-6, what + "available");
            expectNear(curves.lines, width, is.lineCount, 0, what + "lines");
            if (!isNearJump(curves.measure, width)) {
                ASSERT_NEAR(valueAt(curves.measure, width), is.measure,
                            0.0101 + 0.000101 * largestOf(curves.measure) +
                                (share > 0 && is.available > 0 ? is.measure * within / is.available : 0))
                    << what << width;
            }
        }
    }
}

TEST(Curves, AgreeWithLayoutsBetweenEvents) {
    test::forEachSample(expectStraightCurves);
    test::forEachRandomProject(expectStraightCurves);
}

/// The largest sum of rounding in a part's height, CSS px: each line, margin and padding is rounded to 1/60
/// or 1/64 px, and ascents of different faces to whole px.
double gridOf(const layout::LaidPart& part) {
    if (part.picture) return 2.0 / 60;
    const double number = part.fontSize > 0 ? part.lineHeight / part.fontSize : 0;
    const double unlike = part.paragraph->unlikeStruts() ? 1 : 0;
    return part.lineCount * ((1 + number) / 60 + unlike) + 8.0 / 60;
}

double spareOf(const Swept& swept, const layout::Layout& laid, const layout::LaidCard& card) {
    for (std::uint32_t i = 0; i < card.partCount; ++i) {
        const layout::LaidPart& part = laid.parts[card.firstPart + i];
        if (part.picture) continue;
        if (swept.row.interval(laid.interval).roles[part.role].margin.top.isAuto()) return part.autoMargin;
    }
    return 0;
}

void expectHeights(const Swept& swept) {
    const Sweep all = sweep(swept.row, swept.project.leastWidth, swept.project.mostWidth);
    std::mt19937 random(31);
    for (int i = 0; i < 300; ++i) {
        const double width = test::somewhere(all.least, all.most, random);
        const layout::Layout laid = layout::layOut(swept.row, width);
        // A card is as tall as its tallest neighbour, so the rounding of any of them may count.
        double within = 0;
        for (const layout::LaidCard& card : laid.cards) {
            double own = 4.0 / 60;
            for (std::uint32_t p = 0; p < card.partCount; ++p)
                own += gridOf(laid.parts[card.firstPart + p]);
            within = std::max(within, own);
        }
        for (std::size_t card = 0; card < laid.cards.size(); ++card) {
            const CardCurves& curves = all.curves.cards[card];
            if (isNearJump(curves.height, width)) continue;
            const std::string what = swept.name + ", card " + std::to_string(card) + " at ";
            ASSERT_NEAR(valueAt(curves.height, width), laid.cards[card].box.height, within) << what << width;
            ASSERT_NEAR(valueAt(curves.spare, width), spareOf(swept, laid, laid.cards[card]), 2 * within)
                << what << width;
        }
        for (std::size_t part = 0; part < laid.parts.size(); ++part) {
            const layout::LaidPart& is = laid.parts[part];
            const PartCurves& curves = all.curves.parts[part];
            if (isNearJump(is.picture ? curves.slotHeight : curves.lineHeight, width)) continue;
            if (is.picture) {
                ASSERT_NEAR(valueAt(curves.slotHeight, width), is.box.height, within) << swept.name << width;
            } else {
                ASSERT_NEAR(valueAt(curves.lineHeight, width), is.lineHeight, gridOf(is))
                    << swept.name << width;
            }
        }
    }
}

TEST(Curves, GiveHeightsWithinTheGrid) {
    test::forEachSample(expectHeights);
}

// In aligned cards each level is as tall as its tallest part, and that part changes with the width.
TEST(Curves, GiveHeightsOfAlignedCards) {
    auto project = test::projectOf(
        test::styleOf(R"({"level": "subgrid", "columnGap": "20px", "rowGap": "30px"})", test::plainCard),
        R"([{"upTo": 700, "set": {"row": {"columns": 2}}}, {"set": {"row": {"columns": 3}}}])",
        "[" + test::card("Low tide", "A short walk.") + "," +
            test::card("A heading that goes on for quite some way", "And copy of more than one line.") + "," +
            test::card("Dusk", "Bats, and a slow walk home along the shore in the last of the light.") + "]");
    project.row().style.text.of("heading").size = *units::Ramp::between({400, 16}, {1500, 40});
    test::forEachRow("levelled", project, expectHeights);
}

// Between two events one card may become taller than another: then the tallest is not a straight line.
TEST(Curves, HaveAVertexWhereAnotherCardBecomesTheTallest) {
    auto project =
        test::projectOf(test::styleOf(R"({"columns": 2, "columnGap": "0"})", test::plainCard), "[{}]",
                        R"([{"parts": [{"picture": "a.png", "size": [300, 200], "alt": ""}]},
            {"parts": [{"role": "body", "copy": "Low"}]}])");
    project.row().style.picture.ratio = project::Ratio{3, 1};
    project.row().style.text.of("body").lineHeight = units::LineHeight::of(units::Length::px(100));
    const Curve height = sweep(test::prepareRow(project), 320, 1920).curves.cards[1].height;
    // The picture is W / 6 tall, as tall as the line at 600 px.
    const auto turn = std::find_if(height.begin(), height.end(),
                                   [](const Vertex& v) { return std::abs(v.width - 600) < 0.2; });
    ASSERT_NE(turn, height.end());
    EXPECT_NEAR(turn->value, 100, 1.0 / 64);
    EXPECT_NEAR(valueAt(height, 450), 100, 1.0 / 64);
    EXPECT_NEAR(valueAt(height, 1200), 200, 1.0 / 32);
}

TEST(Curves, HaveTheLowerValueAtAJump) {
    const Curve curve{{100, 1}, {200, 2}, {200, 5}, {300, 5}};
    EXPECT_EQ(valueAt(curve, 150), 1.5);
    EXPECT_EQ(valueAt(curve, 200), 2);
    EXPECT_EQ(valueAt(curve, 200.5), 5);
    EXPECT_EQ(valueAt(curve, 50), 1);
    EXPECT_EQ(valueAt(curve, 400), 5);
    EXPECT_EQ(valueAt({}, 400), 0);
}

// A row without cards, and a card without parts.
TEST(Curves, AcceptEmptyCards) {
    const auto none = test::projectOf(test::styleOf("{}", test::plainCard), "[{}]", "[]");
    const Sweep nothing = sweep(test::prepareRow(none), 320, 1920);
    EXPECT_TRUE(nothing.wraps.empty());
    EXPECT_TRUE(nothing.curves.cards.empty());
    auto bare =
        test::projectOf(test::styleOf("{}", test::plainCard), "[{}]", "[" + test::card("A", "B") + "]");
    bare.row().cards.emplace_back();
    const Sweep swept = sweep(test::prepareRow(bare), 320, 1920);
    const auto laid = layout::layOut(test::prepareRow(bare), 900);
    EXPECT_NEAR(valueAt(swept.curves.cards[1].height, 900), laid.cards[1].box.height, 0.2);
}

}  // namespace
}  // namespace tenter::sweep
