// Slots compared with layouts at many widths, and with figures worked out by hand.
#include "pictures/slots.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "../sweep/sweeping.h"

namespace tenter::pictures {
namespace {

using test::Swept;

std::vector<Slot> slotsOf(const Swept& swept) {
    const sweep::Sweep all = sweep::sweep(swept.row, swept.project.leastWidth, swept.project.mostWidth);
    return pictures::slotsOf(swept.project, swept.row, all.curves);
}

/// The width at which a file with `ratio` covers a box. CSS Images 3 § 5.5.
double drawnIn(const layout::Box& box, double ratio) {
    return std::max(box.width, box.height * ratio);
}

/// The largest sum of rounding in a card's height, CSS px: engines round every line, margin and padding to
/// 1/60 or 1/64 px, and ascents of different faces to whole px.
double gridOf(const layout::Layout& laid) {
    double most = 0;
    for (const layout::LaidCard& card : laid.cards) {
        double own = 4.0 / 60;
        for (std::uint32_t i = card.firstPart; i < card.firstPart + card.partCount; ++i) {
            const layout::LaidPart& part = laid.parts[i];
            const double number = part.fontSize > 0 ? part.lineHeight / part.fontSize : 0;
            const double unlike = part.paragraph != nullptr && part.paragraph->unlikeStruts() ? 1 : 0;
            own += part.lineCount * ((1 + number) / 60 + unlike) + 8.0 / 60;
        }
        most = std::max(most, own);
    }
    return most;
}

bool isNearJump(const sweep::Curve& curve, double width) {
    return std::any_of(curve.begin(), curve.end(),
                       [&](const sweep::Vertex& vertex) { return std::abs(vertex.width - width) < 1e-5; });
}

void expectCovered(const Swept& swept) {
    const std::vector<Slot> slots = slotsOf(swept);
    std::mt19937 random(37);
    layout::Layout laid;
    for (int i = 0; i < 300; ++i) {
        const double width = test::somewhere(swept.project.leastWidth, swept.project.mostWidth, random);
        layout::layOut(swept.row, width, laid);
        std::size_t next = 0;
        for (const layout::LaidPart& part : laid.parts) {
            if (!part.picture) continue;
            const Slot& slot = slots.at(next++);
            if (!(slot.cutRatio > 0) || isNearJump(slot.drawn, width)) continue;
            const double drawn = drawnIn(part.box, slot.cutRatio);
            // Of the lengths that make a box, at least one in rem.
            const double root =
                2 * test::rootShare(swept.row, laid) * std::max(laid.container.width, laid.row.width);
            const double within = (gridOf(laid) + root) * std::max(1.0, slot.cutRatio) + 1e-6 * drawn;
            ASSERT_NEAR(sweep::valueAt(slot.drawn, width), drawn, within) << swept.name << " at " << width;
            ASSERT_LE(drawn, slot.largest.value + within) << swept.name << " at " << width;
        }
        ASSERT_EQ(next, slots.size()) << swept.name;
    }
}

TEST(Slots, SayHowWideACutFileIsDrawnAtEveryWidthOfTheSamples) {
    test::forEachSample(expectCovered);
}

TEST(Slots, SayHowWideACutFileIsDrawnAtEveryWidthOfRandomProjects) {
    test::forEachRandomProject(expectCovered);
}

TEST(Slots, FindTheLargestDrawnWidthOfTheSamples) {
    test::forEachSample([](const Swept& swept) {
        const std::vector<Slot> slots = slotsOf(swept);
        std::vector<double> most(slots.size());
        layout::Layout laid;
        for (double width = swept.project.leastWidth; width <= swept.project.mostWidth; width += 1) {
            layout::layOut(swept.row, width, laid);
            std::size_t next = 0;
            for (const layout::LaidPart& part : laid.parts)
                if (part.picture) {
                    most[next] = std::max(most[next], drawnIn(part.box, slots[next].cutRatio));
                    ++next;
                }
        }
        for (std::size_t i = 0; i < slots.size(); ++i) {
            // A step of 1 px of the viewport misses less than 1 px of the slot.
            EXPECT_GE(slots[i].largest.value, most[i] - 0.1) << swept.name;
            EXPECT_LE(slots[i].largest.value, most[i] + 1) << swept.name;
            EXPECT_NEAR(sweep::valueAt(slots[i].drawn, slots[i].largest.width), slots[i].largest.value, 1e-6);
        }
    });
}

/// A row of pictures, one column up to 980 px, then `wide` columns, 80 % of the page wide, without gaps,
/// borders or padding.
project::Project rowOfPictures(const std::string& picture, const std::string& more = "") {
    project::Problems problems;
    const std::string json = R"({"format": "tenter-project", "version": 1, "name": "slots", "language": "en",
      "style": {"row": {"width": "80%", "columnGap": "0", "rowGap": "0"},
                "card": {"padding": {"left": "0", "right": "0"}, "border": {"width": "0"}}, "picture": {"ratio": "3/2", "margin": {"bottom": "0"}}},
      "cards": [{"parts": [{"picture": "a.jpg", "size": [1200, 900], "alt": "A" )" +
                             picture + R"(}]}],
      "variants": [{"class": "three", "bands": [{"upTo": 980, "set": {"row": {"columns": 1}}},
                                                {"set": {"row": {"columns": 3}} }]}])" +
                             more + "}";
    const auto project = project::parse(json, "row.tenter.json", {}, problems);
    for (const project::Problem& problem : problems)
        ADD_FAILURE() << problem.place << ": " << problem.what;
    return project ? *project : project::Project{};
}

Slot slotIn(const project::Project& project) {
    const layout::PreparedRow row(project, 0, test::sweepStore(), text::defaultProfile());
    const sweep::Sweep all = sweep::sweep(row, project.leastWidth, project.mostWidth);
    return pictures::slotsOf(project, row, all.curves).at(0);
}

// Common practice: pictures are sized by their largest use, which is where columns stack; 80 % of 980 px is a
// slot of 784 px.
TEST(Slots, AreLargestJustBelowABreakpoint) {
    const Slot slot = slotIn(rowOfPictures(""));
    EXPECT_NEAR(slot.largest.width, 980, 1e-9);
    EXPECT_NEAR(slot.largest.value, 784, 1e-6);
    EXPECT_NEAR(slot.largestHeight(), 784 / 1.5, 1e-6);
    EXPECT_NEAR(slot.cutRatio, 1.5, 1e-9);
    EXPECT_TRUE(slot.hasOneRatio());
}

TEST(Slots, NeedBothSidesInWholePixels) {
    const Slot slot = slotIn(rowOfPictures(""));
    const std::vector<Need> needs = needsOf(slot);
    ASSERT_EQ(needs.size(), 3U);
    EXPECT_EQ(needs[0].cut, (PixelSize{784, 523}));
    EXPECT_EQ(needs[1].cut, (PixelSize{1568, 1045}));
    EXPECT_EQ(needs[2].cut, (PixelSize{2352, 1568}));
    // The whole file of 4:3 is as wide as the slot and taller.
    EXPECT_EQ(needs[0].uncut, (PixelSize{784, 588}));
}

TEST(Slots, NeedAWiderFileThanTheSlotIfAFileIsWiderThanTheSlotsRatio) {
    project::Project project = rowOfPictures("");
    auto& picture = std::get<project::PicturePart>(project.part({0, 0, 0}));
    picture.width = 2000;
    picture.height = 1000;
    const Slot slot = slotIn(project);
    // Slot height 522.667 px × 2.
    EXPECT_EQ(needOf(slot, 1).uncut, (PixelSize{1046, 523}));
    EXPECT_EQ(needOf(slot, 1).cut, (PixelSize{784, 523}));
    EXPECT_NEAR(*pixelsPerCssPx(slot), 2000 / (784 / 1.5 * 2), 1e-6);
}

TEST(Slots, SayWhichOneFileToUpload) {
    project::Project project = rowOfPictures("");
    EXPECT_EQ(uploadOf(slotIn(project)).size, (PixelSize{1568, 1045}));
    EXPECT_TRUE(uploadOf(slotIn(project)).isTooSmall);  // 1200 of 1568 px
    EXPECT_FALSE(uploadOf(slotIn(project), 1.5).isTooSmall);
    std::get<project::PicturePart>(project.part({0, 0, 0})).width = 0;
    EXPECT_FALSE(uploadOf(slotIn(project)).isTooSmall);
    EXPECT_FALSE(pixelsPerCssPx(slotIn(project)).has_value());
}

TEST(Slots, WithSeveralRatiosCutOnlyWhatNoSlotShows) {
    project::Project project = rowOfPictures("");
    project.row().variants[0].bands[1].set.picture.ratio = project::Ratio{2, 1};
    auto& picture = std::get<project::PicturePart>(project.part({0, 0, 0}));
    const auto cutRatio = [&](double width, double height) {
        picture.width = width;
        picture.height = height;
        return slotIn(project).cutRatio;
    };
    EXPECT_FALSE(slotIn(project).hasOneRatio());
    EXPECT_NEAR(cutRatio(900, 900), 1.5, 1e-9);
    EXPECT_NEAR(cutRatio(1800, 1000), 1.8, 1e-9);
    EXPECT_NEAR(cutRatio(3000, 1000), 2, 1e-9);
    EXPECT_NEAR(cutRatio(0, 0), 2, 1e-9);
}

}  // namespace
}  // namespace tenter::pictures
