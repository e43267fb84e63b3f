// The `sizes` attribute read by HTML's rule, compared with slots.
#include "pictures/sizes.h"

#include <algorithm>
#include <cmath>
#include <regex>
#include <string>

#include "../sweep/sweeping.h"
#include "pictures/crop.h"

namespace tenter::pictures {
namespace {

using test::Swept;

/// The source size that `attribute` gives at viewport width `width` with `vw` px per 100vw: the first entry
/// whose media condition holds or that has none (HTML § 4.8.4.2.1). Negative if an entry has another form
/// than those that HTML allows and Tenter writes.
double readSize(const std::string& attribute, double width, double vw) {
    static const std::regex entry(
        R"(^(?:\(max-width: ([0-9.]+)px\) )?(?:([0-9.]+)px|(-?[0-9.]+)vw|calc\((-?[0-9.]+)vw ([+-]) ([0-9.]+)px\))$)");
    std::size_t from = 0;
    while (from <= attribute.size()) {
        const std::size_t to = std::min(attribute.find(", ", from), attribute.size());
        const std::string text = attribute.substr(from, to - from);
        from = to + 2;
        std::smatch found;
        if (!std::regex_match(text, found, entry)) return -1;
        if (found[1].matched && width > std::stod(found[1])) continue;
        if (found[2].matched) return std::stod(found[2]);
        if (found[3].matched) return std::stod(found[3]) / 100 * vw;
        const double px = std::stod(found[6]);
        return std::stod(found[4]) / 100 * vw + (found[5] == "-" ? -px : px);
    }
    return -1;
}

void expectExactSizes(const Swept& swept) {
    const sweep::Sweep all = sweep::sweep(swept.row, swept.project.leastWidth, swept.project.mostWidth);
    std::mt19937 random(47);
    for (const Slot& slot : slotsOf(swept.project, swept.row, all.curves)) {
        if (!(slot.cutRatio > 0)) continue;
        const std::string attribute = sizesAttribute(sourceSizes(slot, swept.row));
        for (int i = 0; i < 60; ++i) {
            const double width = test::somewhere(all.least, all.most, random);
            // At a jump the attribute is rounded to 0.01 px.
            if (std::ranges::any_of(
                    slot.drawn, [&](const auto& vertex) { return std::abs(vertex.width - width) < 0.02; }))
                continue;
            const layout::PagePlan& page = swept.row.at(width).page;
            const bool isOutside = page.scrollbar.always && swept.row.profile().vwExcludesSteadyScrollbar();
            const double vw = width - (isOutside ? page.scrollbar.width : 0);
            ASSERT_NEAR(readSize(attribute, width, vw), sweep::valueAt(slot.drawn, width), 0.05)
                << swept.name << " at " << width << ": " << attribute;
        }
    }
}

TEST(Sizes, AreTheDrawnWidthsOfTheSamples) {
    test::forEachSample(expectExactSizes);
}

TEST(Sizes, AreTheDrawnWidthsOfRandomProjects) {
    test::forEachRandomProject(expectExactSizes);
}

TEST(Sizes, AreWrittenAsHtmlAllows) {
    EXPECT_EQ((SourceSize{{}, 0, 80}).css(), "80vw");
    EXPECT_EQ((SourceSize{{}, 784, 0}).css(), "784px");
    EXPECT_EQ((SourceSize{{}, -18.5, 25.3333}).css(), "calc(25.3333vw - 18.5px)");
    EXPECT_EQ((SourceSize{{}, 18, 25}).css(), "calc(25vw + 18px)");
    EXPECT_EQ(sizesAttribute({{980, 0, 80}, {{}, -20, 30}}), "(max-width: 980px) 80vw, calc(30vw - 20px)");
}

TEST(Sizes, ChooseTheFirstConditionThatHolds) {
    const std::vector<SourceSize> sizes{{980, 0, 80}, {{}, -20, 30}};
    EXPECT_EQ(sourceSizeAt(sizes, 980), 784);
    EXPECT_NEAR(sourceSizeAt(sizes, 981), 274.3, 1e-9);
}

/// The part of a file that `object-fit: cover` with `object-position: x y` shows in a box with `ratio`, as
/// CSS Images 3 §§ 5.5 and 5.6 define it: left, top, width and height in px of the file.
struct Shown {
    double left, top, width, height;
};
Shown shown(double width, double height, double ratio, double x, double y) {
    const double wide = std::min(width, height * ratio);
    const double high = std::min(height, width / ratio);
    return {x * (width - wide), y * (height - high), wide, high};
}

TEST(Crop, CutsWhatCoverWouldShow) {
    std::mt19937 random(53);
    for (int i = 0; i < 400; ++i) {
        const PixelSize file{static_cast<int>(test::somewhere(200, 4000, random)),
                             static_cast<int>(test::somewhere(200, 4000, random))};
        const double ratio = test::somewhere(0.3, 3, random);
        const double x = test::somewhere(0, 1, random);
        const double y = test::somewhere(0, 1, random);
        const Crop crop = cropOf(file, ratio, x, y);
        const Shown wanted = shown(file.width, file.height, ratio, x, y);
        ASSERT_NEAR(crop.left, wanted.left, 1);
        ASSERT_NEAR(crop.top, wanted.top, 1);
        ASSERT_NEAR(crop.width, wanted.width, 0.5);
        ASSERT_NEAR(crop.height, wanted.height, 0.5);
        ASSERT_LE(crop.left + crop.width, file.width);
        ASSERT_LE(crop.top + crop.height, file.height);
    }
}

// A file cut to one ratio, shown in a box of another ratio, shows what the whole file would.
TEST(Crop, KeepsWhatOtherRatiosShow) {
    std::mt19937 random(59);
    for (int i = 0; i < 400; ++i) {
        const double width = test::somewhere(1000, 4000, random);
        const double height = test::somewhere(1000, 4000, random);
        const double x = test::somewhere(0, 1, random);
        const double y = test::somewhere(0, 1, random);
        double least = test::somewhere(0.3, 3, random);
        double most = test::somewhere(0.3, 3, random);
        if (least > most) std::swap(least, most);
        const double box = test::somewhere(least, most, random);
        const Shown cut = shown(width, height, std::clamp(width / height, least, most), x, y);
        const Shown twice = shown(cut.width, cut.height, box, x, y);
        const Shown once = shown(width, height, box, x, y);
        ASSERT_NEAR(cut.left + twice.left, once.left, 1e-6);
        ASSERT_NEAR(cut.top + twice.top, once.top, 1e-6);
        ASSERT_NEAR(twice.width, once.width, 1e-6);
    }
}

TEST(Crop, LeavesAFileOfThatRatioWhole) {
    EXPECT_EQ(cropOf({1200, 800}, 1.5, 0.2, 0.9), (Crop{0, 0, 1200, 800}));
    EXPECT_EQ(cropOf({1200, 800}, 1, 0.5, 0.5), (Crop{200, 0, 800, 800}));
    EXPECT_EQ(cropOf({1200, 800}, 1, 1, 0.5), (Crop{400, 0, 800, 800}));
    EXPECT_EQ(heightFor(784, 1.5), 523);
    EXPECT_EQ(heightFor(1, 40), 1);
}

}  // namespace
}  // namespace tenter::pictures
