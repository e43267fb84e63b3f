// Candidates compared with every choice of widths, and demand with counts by hand.
#include "pictures/candidates.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <random>

namespace tenter::pictures {
namespace {

std::vector<Demand> randomDemand(std::mt19937& random, int count, int most) {
    std::uniform_int_distribution<int> width(50, most);
    std::uniform_real_distribution<double> share(0.01, 1);
    std::vector<Demand> demand;
    while (static_cast<int>(demand.size()) < count) {
        const int next = width(random);
        if (std::ranges::none_of(demand, [&](const Demand& d) { return d.width == next; }))
            demand.push_back({next, share(random)});
    }
    std::ranges::sort(demand, {}, &Demand::width);
    double total = 0;
    for (const Demand& one : demand)
        total += one.share;
    for (Demand& one : demand)
        one.share /= total;
    return demand;
}

/// The surplus of `widths`, added up visit by visit: the narrowest file that is wide enough, else the widest.
/// HTML § 4.8.4.2.2.
double surplusOf(const std::vector<int>& widths, const std::vector<Demand>& demand, double ratio, int most) {
    double surplus = 0;
    for (const Demand& one : demand) {
        const int asked = std::min(one.width, most);
        int loaded = *std::ranges::max_element(widths);
        for (const int width : widths)
            if (width >= asked) loaded = std::min(loaded, width);
        surplus += one.share * (1.0 * loaded * loaded - 1.0 * asked * asked) / ratio;
    }
    return surplus;
}

/// The smallest surplus of any choice of at most `count` widths with which all demand is served.
double leastSurplus(const std::vector<Demand>& demand, int count, double ratio, int most) {
    std::vector<int> possible;
    for (const Demand& one : demand)
        possible.push_back(std::min(one.width, most));
    possible.erase(std::unique(possible.begin(), possible.end()), possible.end());
    const int widest = possible.back();
    double least = std::numeric_limits<double>::infinity();
    for (unsigned set = 1; set < 1U << possible.size(); ++set) {
        std::vector<int> widths;
        for (std::size_t i = 0; i < possible.size(); ++i)
            if ((set >> i & 1U) != 0) widths.push_back(possible[i]);
        if (static_cast<int>(widths.size()) > count || widths.back() != widest) continue;
        least = std::min(least, surplusOf(widths, demand, ratio, most));
    }
    return least;
}

TEST(Candidates, HaveTheSmallestSurplusOfAllChoices) {
    std::mt19937 random(41);
    for (int i = 0; i < 300; ++i) {
        const std::vector<Demand> demand = randomDemand(random, 1 + i % 12, 2000);
        const double ratio = 0.5 + i % 7 * 0.3;
        const int count = 1 + i % 6;
        const int most = i % 3 == 0 ? 900 : 4000;
        const Candidates best = bestCandidates(demand, count, ratio, most);
        ASSERT_FALSE(best.widths.empty());
        ASSERT_LE(static_cast<int>(best.widths.size()), count);
        ASSERT_TRUE(std::ranges::is_sorted(best.widths));
        ASSERT_EQ(best.widths.back(), std::min(most, demand.back().width)) << "demand that is not served";
        const double least = leastSurplus(demand, count, ratio, most);
        ASSERT_NEAR(best.surplus, least, 1e-9 * (1 + best.needed)) << i;
        ASSERT_NEAR(best.surplus, surplusOf(best.widths, demand, ratio, most), 1e-9 * (1 + best.needed));
    }
}

// The same recursion without the shortcut, on demand as fine as that of a real audience.
TEST(Candidates, HaveTheSmallestSurplusOnFineDemand) {
    std::mt19937 random(43);
    const std::vector<Demand> demand = randomDemand(random, 600, 5000);
    constexpr int count = 5;
    const std::size_t size = demand.size();
    std::vector<std::vector<double>> load(
        count + 1, std::vector<double>(size + 1, std::numeric_limits<double>::infinity()));
    load[0][0] = 0;
    for (int k = 1; k <= count; ++k)
        for (std::size_t j = 1; j <= size; ++j) {
            double share = 0;
            for (std::size_t i = j; i-- > 0;) {
                share += demand[i].share;
                load[k][j] =
                    std::min(load[k][j], load[k - 1][i] + share * demand[j - 1].width * demand[j - 1].width);
            }
        }
    const Candidates best = bestCandidates(demand, count, 1, 5000);
    EXPECT_NEAR(best.surplus + best.needed, load[count][size], 1e-6 * load[count][size]);
}

TEST(Candidates, AreNoMoreThanTheDemandedWidths) {
    const std::vector<Demand> demand{{400, 0.5}, {800, 0.5}};
    EXPECT_EQ(bestCandidates(demand, 6, 1.5, 4000).widths, (std::vector<int>{400, 800}));
    EXPECT_EQ(bestCandidates(demand, 6, 1.5, 4000).surplus, 0);
    EXPECT_EQ(bestCandidates(demand, 1, 1.5, 4000).widths, (std::vector<int>{800}));
}

TEST(Candidates, AreNeverWiderThanTheSource) {
    const std::vector<Demand> demand{{400, 0.5}, {800, 0.25}, {1600, 0.25}};
    EXPECT_EQ(bestCandidates(demand, 3, 1.5, 1000).widths, (std::vector<int>{400, 800, 1000}));
    EXPECT_EQ(bestCandidates(demand, 3, 1.5, 300).widths, (std::vector<int>{300}));
    EXPECT_TRUE(bestCandidates(demand, 3, 1.5, 0).widths.empty());
    EXPECT_TRUE(bestCandidates({}, 3, 1.5, 300).widths.empty());
}

/// A slot that is drawn half as wide as the viewport.
Slot halfSlot() {
    Slot slot;
    slot.width = slot.drawn = {{300, 150}, {2000, 1000}};
    slot.height = {{300, 100}, {2000, 666.6667}};
    slot.cutRatio = 1.5;
    return slot;
}

TEST(Demand, CountsVisitsByWidthAndPixelRatio) {
    const Slot slot = halfSlot();
    const Slot* slots[] = {&slot};
    const std::vector<Visit> visits{{400, 30}, {1000, 10}};
    const std::vector<RatioShare> ratios{{1, 0.25}, {2.5, 0.75}};
    EXPECT_EQ(demandOf(slots, visits, 300, 2000, ratios),
              (std::vector<Demand>{{200, 0.1875}, {500, 0.625}, {1250, 0.1875}}));
}

TEST(Demand, OfSeveralSlotsIsTheirMean) {
    const Slot slot = halfSlot();
    Slot whole = slot;
    whole.drawn = {{300, 300}, {2000, 2000}};
    const Slot* slots[] = {&slot, &whole};
    const std::vector<Visit> visits{{1000, 1}};
    const std::vector<RatioShare> one{{1, 1}};
    EXPECT_EQ(demandOf(slots, visits, 300, 2000, one), (std::vector<Demand>{{500, 0.5}, {1000, 0.5}}));
}

TEST(Demand, WithoutAudienceCountsEveryWidthTheSame) {
    const Slot slot = halfSlot();
    const Slot* slots[] = {&slot};
    const std::vector<RatioShare> one{{1, 1}};
    const std::vector<Demand> demand = demandOf(slots, {}, 300, 303, one);
    EXPECT_EQ(demand, (std::vector<Demand>{{150, 0.25}, {151, 0.5}, {152, 0.25}}));
    double total = 0;
    for (const Demand& each : demandOf(slots, {}, 300, 2000))
        total += each.share;
    EXPECT_NEAR(total, 1, 1e-9);
}

}  // namespace
}  // namespace tenter::pictures
