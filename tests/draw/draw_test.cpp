// What is drawn of a row: geometry by the clauses of CSS that each test names, pictures by their own bytes.
#include <gtest/gtest.h>

#include <cmath>
#include <filesystem>

#include "draw/corners.h"
#include "draw/device_grid.h"
#include "draw/glyph_outline.h"
#include "draw/picture_source.h"
#include "draw/row_drawing.h"
#include "draw/row_picture.h"
#include "draw/shadow_patch.h"
#include "draw/text_block.h"
#include "draw/text_line.h"
#include "project/file.h"

namespace tenter::draw {
namespace {

// CSS Backgrounds 3 § 4.5: one factor for all corners, the smallest of side ÷ sum of its two radii.
TEST(Corners, AreReducedByOneFactorSoThatTheyDoNotOverlap) {
    const Corners fitted = Corners{30, 10, 10, 30}.fitted(100, 40);
    EXPECT_DOUBLE_EQ(fitted.topLeft, 20);
    EXPECT_DOUBLE_EQ(fitted.topRight, 10 * 2.0 / 3);
    EXPECT_EQ((Corners{30, 10, 10, 30}.fitted(100, 60)), (Corners{30, 10, 10, 30}));
    EXPECT_EQ((Corners::all(8).inset(3)), (Corners::all(5)));
    EXPECT_TRUE(Corners::all(2).inset(3).square());
}

// CSS Backgrounds 3 § 3.3: rounded down to whole device px, but at least 1.
TEST(DeviceGrid, RoundsBoxesToTheNearestPxAndBordersDown) {
    const DeviceGrid grid{2, 10, 0};
    EXPECT_EQ(grid.snapped({1.2, 3.3, 10, 10.3}), (DeviceBox{12, 7, 20, 20}));
    EXPECT_EQ(grid.borderWidth(0.2), 1);
    EXPECT_EQ(grid.borderWidth(1.9), 3);
    EXPECT_EQ(grid.borderWidth(0), 0);
}

// CSS Images 3 § 5.5 and CSS Backgrounds 3 § 3.6: the spare length is shared by the focal point.
// Measured in Chromium 156 with four faces at pixel ratios 1 and 2: rows below the baseline, and their
// number.
TEST(UnderlineRows, AreThoseOfChromium) {
    struct Case {
        double size;
        int below, count;
    };
    for (const Case& one :
         {Case{10, 1, 1}, Case{16, 1, 1}, Case{19, 1, 1}, Case{20, 1, 2}, Case{22, 2, 2}, Case{29.2, 2, 2},
          Case{31, 2, 3}, Case{40, 2, 4}, Case{44, 3, 4}, Case{60, 3, 6}}) {
        EXPECT_EQ(underlineRows(one.size).below, one.below) << one.size;
        EXPECT_EQ(underlineRows(one.size).count, one.count) << one.size;
    }
}

TEST(CoverCrop, KeepsTheRatioOfTheSlotAroundTheFocalPoint) {
    const Crop wide = coverCrop(400, 100, 100, 100, 0.25, 0.5);
    EXPECT_DOUBLE_EQ(wide.x, 75);
    EXPECT_DOUBLE_EQ(wide.y, 0);
    EXPECT_DOUBLE_EQ(wide.width, 100);
    const Crop tall = coverCrop(100, 400, 50, 25, 0, 1);
    EXPECT_DOUBLE_EQ(tall.y, 350);
    EXPECT_DOUBLE_EQ(tall.height, 50);
}

// A Gaussian with a standard deviation of half the blur: at the edge of a large box it is one half, and at
// one standard deviation outside it Φ(−1) = 0.1587 (tables of the normal distribution).
TEST(ShadowPatch, FallsAsAGaussian) {
    const ShadowPatch patch = shadowPatch(0, 40);
    const auto at = [&](int x) {
        return patch.opacity[static_cast<std::size_t>(patch.corner * patch.side + x)] / 255.0;
    };
    const auto between = [&](int x) { return (at(x - 1) + at(x)) / 2; };
    EXPECT_NEAR(between(patch.margin), 0.5, 0.01);
    EXPECT_NEAR(between(patch.margin - 20), 0.1587, 0.01);
    EXPECT_NEAR(between(patch.margin + 20), 0.8413, 0.01);
    EXPECT_NEAR(at(patch.corner), 1, 0.01);
}

// CSS Backgrounds 3 § 6.1.1: a sharp corner stays sharp, a round one grows with the spread.
TEST(CastingBox, GrowsWithTheSpread) {
    CastShadow shadow{{10, 10, 100, 50}, 8, 2, 4, 0, 6, {0, 0, 0}, false};
    EXPECT_EQ(castingBox(shadow).box, (layout::Box{6, 8, 112, 62}));
    EXPECT_DOUBLE_EQ(castingBox(shadow).radius, 14);
    shadow.radius = 0;
    EXPECT_DOUBLE_EQ(castingBox(shadow).radius, 0);
}

// A ring of straight edges: x from 0 to 1 below 0.5, from 0.2 to 0.8 above.
TEST(GlyphOutline, FindsItsInkInAStrip) {
    using Verb = GlyphOutline::Verb;
    const GlyphOutline step{{Verb::Move, Verb::Line, Verb::Line, Verb::Line, Verb::Line, Verb::Line,
                             Verb::Line, Verb::Line, Verb::Close},
                            {{0, 0}, {1, 0}, {1, 0.5}, {0.8, 0.5}, {0.8, 1}, {0.2, 1}, {0.2, 0.5}, {0, 0.5}}};
    const auto upper = step.between(0.6, 0.7);
    ASSERT_TRUE(upper);
    EXPECT_DOUBLE_EQ(upper->from, 0.2);
    EXPECT_DOUBLE_EQ(upper->to, 0.8);
    EXPECT_DOUBLE_EQ(step.between(0.1, 0.2)->to, 1);
    EXPECT_FALSE(step.between(1.1, 1.2));
}

/// A sample with what a drawing needs, laid out at one width.
struct Sample {
    explicit Sample(const std::string& name, double width) : folder(TENTER_SOURCE_DIR "/sample-projects") {
        project::Problems problems;
        project = *project::read(folder / (name + ".tenter.json"), problems);
        fonts.use(project.fonts, folder);
        prepared = std::make_unique<layout::PreparedRow>(project, 0, store, text::defaultProfile());
        layout = layout::layOut(*prepared, width);
    }
    [[nodiscard]] LaidOutRow row() const { return {project, *prepared, layout}; }
    std::filesystem::path folder;
    project::Project project;
    text::Fonts fonts;
    text::ParagraphStore store{fonts};
    std::unique_ptr<layout::PreparedRow> prepared;
    layout::Layout layout;
};

std::size_t bigEndian(const std::string& bytes, std::size_t at) {
    std::size_t value = 0;
    for (std::size_t i = 0; i < 4; ++i)
        value = value << 8U | static_cast<unsigned char>(bytes.at(at + i));
    return value;
}

TEST(RowDrawing, HasEveryPictureAndEveryTextInTheOrderOfTheCards) {
    const Sample sample("shore-walks", 1200);
    const Drawing drawing = drawRow(sample.row());
    std::size_t pictures = 0;
    std::size_t texts = 0;
    std::size_t last = 0;
    for (const Operation& operation : drawing) {
        pictures += std::holds_alternative<ShowPicture>(operation.what) ? 1 : 0;
        texts += std::holds_alternative<ShowText>(operation.what) ? 1 : 0;
        if (operation.part) {
            EXPECT_GE(*operation.part, last);
            last = *operation.part;
        }
    }
    std::size_t expected = 0;
    for (const layout::LaidPart& part : sample.layout.parts)
        expected += part.picture ? 1 : 0;
    EXPECT_EQ(pictures, expected);
    EXPECT_EQ(texts, sample.layout.parts.size() - expected);
}

TEST(RowDrawing, ShowsHoverColoursAndTheFocusRingOfThePartsWithAttention) {
    const Sample sample("shore-walks", 1200);
    std::size_t button = 0;
    for (std::size_t i = 0; i < sample.layout.parts.size(); ++i)
        if (kindOf(sample.row(), sample.layout.parts[i]) == "button") button = i;
    Drawing calm;
    Drawing attended;
    drawRow(sample.row(), {}, 0, calm);
    drawRow(sample.row(), {button, button}, 0, attended);
    const auto rings = [](const Drawing& drawing) {
        std::size_t count = 0;
        for (const Operation& operation : drawing)
            count += std::holds_alternative<OutlineBox>(operation.what) ? 1 : 0;
        return count;
    };
    EXPECT_EQ(rings(calm), 0U);
    EXPECT_EQ(rings(attended), 1U);
}

// PNG, § 11.2.2: width and height follow the signature and the header of IHDR, at bytes 16 and 20.
TEST(PngPicture, HasTheSizeOfThePageTimesTheRatio) {
    const Sample sample("shore-walks", 700);
    PictureSource pictures(sample.folder);
    text::Fonts fonts;
    text::ParagraphStore store(fonts);
    for (const double ratio : {1.0, 2.0}) {
        project::Problems problems;
        const std::string png = pngPicture(sample.row(), ratio, pictures, store, problems);
        ASSERT_TRUE(problems.empty());
        ASSERT_TRUE(png.starts_with("\x89PNG\r\n"));
        EXPECT_EQ(bigEndian(png, 16), 700 * ratio);
        EXPECT_EQ(bigEndian(png, 20), std::round(sample.layout.pageHeight * ratio));
    }
    EXPECT_TRUE(pictures.missing().empty());
}

TEST(PngPicture, IsRefusedIfItIsLargerThanAnImageCanBe) {
    const Sample sample("shore-walks", 5000);
    PictureSource pictures(sample.folder);
    text::Fonts fonts;
    text::ParagraphStore store(fonts);
    project::Problems problems;
    EXPECT_EQ(pngPicture(sample.row(), 8, pictures, store, problems), "");
    ASSERT_EQ(problems.size(), 1U);
    EXPECT_NE(problems[0].what.find("40000 × "), std::string::npos) << problems[0].what;
}

TEST(SvgPicture, HasOutlinesInsteadOfTextAndAsksForNothing) {
    for (const char* name : {"shore-walks", "marsh-ar"}) {
        const Sample sample(name, 700);
        PictureSource pictures(sample.folder);
        text::Fonts fonts;
        text::ParagraphStore store(fonts);
        const std::string svg = svgPicture(sample.row(), pictures, store);
        EXPECT_TRUE(svg.starts_with("<svg ")) << name;
        EXPECT_TRUE(svg.ends_with("</svg>\n")) << name;
        EXPECT_EQ(svg.find("<text"), std::string::npos) << name;
        EXPECT_EQ(svg.find("font-"), std::string::npos) << name;
        for (std::size_t at = svg.find("href=\""); at != std::string::npos; at = svg.find("href=\"", at + 1))
            EXPECT_TRUE(svg.compare(at + 6, 1, "#") == 0 || svg.compare(at + 6, 5, "data:") == 0) << name;
        EXPECT_NE(svg.find("<path"), std::string::npos) << name;
    }
}

TEST(Pictures, ThatCannotBeReadAreNamedAndShownAsAPlaceWithTheName) {
    Sample sample("shore-walks", 700);
    PictureSource pictures(sample.folder / "no-such-folder");
    text::Fonts fonts;
    text::ParagraphStore store(fonts);
    const std::string svg = svgPicture(sample.row(), pictures, store);
    EXPECT_EQ(svg.find("<image"), std::string::npos);
    EXPECT_NE(svg.find("#e6e6e4"), std::string::npos);
    EXPECT_FALSE(pictures.missing().empty());
}

TEST(TextBlock, BreaksAtItsWidthAndAlignsItsLines) {
    text::Fonts fonts;
    text::ParagraphStore store(fonts);
    BlockStyle style;
    style.size = 10;
    style.lineHeight = 14;
    style.align = TextAlign::End;
    const TextBlock block("One line that is much too long for the width", style, 80, store);
    ASSERT_GT(block.lines().size(), 1U);
    EXPECT_DOUBLE_EQ(block.height(), 14.0 * static_cast<double>(block.lines().size()));
    for (const layout::LaidLine& line : block.lines())
        EXPECT_NEAR(line.x + line.line.width, 80, 1e-9);
}

}  // namespace
}  // namespace tenter::draw
