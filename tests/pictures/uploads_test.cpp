// Uploads compared with the layouts of every variant at every whole width.
#include "pictures/uploads.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "../sweep/sweeping.h"

namespace tenter::pictures {
namespace {

/// The largest width at which a file with `ratio` covers each slot of `project`, over all variants, CSS px.
std::map<std::pair<std::size_t, std::size_t>, double> largestDrawn(
    const project::Project& project, const std::map<std::pair<std::size_t, std::size_t>, double>& ratios) {
    std::map<std::pair<std::size_t, std::size_t>, double> most;
    for (std::size_t variant = 0; variant < project.row().variants.size(); ++variant) {
        const layout::PreparedRow row(project, variant, test::sweepStore(), text::defaultProfile());
        layout::Layout laid;
        const auto add = [&](double width) {
            layout::layOut(row, width, laid);
            for (const auto& [key, ratio] : ratios) {
                const layout::Box& box = laid.parts[test::indexOf(laid, key.first, key.second)].box;
                most[key] = std::max({most[key], box.width, box.height * ratio});
            }
        };
        for (int width = static_cast<int>(project.leastWidth); width <= project.mostWidth; ++width) {
            add(width);
            // Just above a breakpoint the next band applies.
            if (width + 0.001 < project.mostWidth) add(width + 0.001);
        }
    }
    return most;
}

TEST(Uploads, FillTheLargestSlotOfEveryVariantOfTheSamples) {
    int seen = 0;
    for (const auto& entry : std::filesystem::directory_iterator(TENTER_SOURCE_DIR "/sample-projects")) {
        if (!entry.path().string().ends_with(".tenter.json")) continue;
        project::Problems problems;
        const auto project = project::read(entry.path(), problems);
        ASSERT_TRUE(project.has_value()) << entry.path();
        const std::vector<PictureUpload> uploads =
            uploadsOf(*project, test::sweepStore(), text::defaultProfile());
        std::map<std::pair<std::size_t, std::size_t>, double> ratios;
        for (const PictureUpload& one : uploads)
            ratios[{one.place.card, one.place.part}] = static_cast<double>(one.size.width) / one.size.height;
        const auto drawn = largestDrawn(*project, ratios);
        ASSERT_EQ(drawn.size(), uploads.size());
        for (const PictureUpload& one : uploads) {
            const double most = drawn.at({one.place.card, one.place.part});
            // Whole px, the engine's grid of heights, and ratios of whole pixels.
            EXPECT_NEAR(one.size.width, most * 2, 3) << entry.path() << " card " << one.place.card;
            // Where the file is not as large as the upload, give or take rounding.
            const bool differs = std::abs(one.file.width - one.size.width) > 3;
            EXPECT_TRUE(!differs || one.isTooSmall == (one.file.width < one.size.width))
                << entry.path() << " card " << one.place.card;
            // The slot at that width is as large as stated.
            const layout::PreparedRow row(*project, one.variant, test::sweepStore(), text::defaultProfile());
            const layout::Layout laid = layout::layOut(row, one.width);
            const layout::LaidPart& part = laid.parts[test::indexOf(laid, one.place.card, one.place.part)];
            EXPECT_NEAR(part.box.width, one.slotWidth, 0.1) << entry.path();
            EXPECT_NEAR(part.box.height, one.slotHeight, 0.1) << entry.path();
            ++seen;
        }
    }
    EXPECT_GT(seen, 20);
}

TEST(Uploads, SayWhyTheFileExceedsTheLargestSlot) {
    PictureUpload upload;
    upload.slotWidth = 500;
    upload.slotHeight = 300;
    upload.size = {1000, 600};
    EXPECT_EQ(otherSlotsSentence(upload), "");
    upload.size = {1000, 800};
    EXPECT_NE(otherSlotsSentence(upload).find("taller"), std::string::npos);
    upload.size = {1200, 600};
    EXPECT_NE(otherSlotsSentence(upload).find("wider"), std::string::npos);
}

TEST(Uploads, NameTheVariantWithTheLargestSlot) {
    project::Problems problems;
    const auto project =
        project::read(TENTER_SOURCE_DIR "/sample-projects/shore-walks.tenter.json", problems);
    ASSERT_TRUE(project.has_value());
    const auto uploads = uploadsOf(*project, test::sweepStore(), text::defaultProfile());
    ASSERT_FALSE(uploads.empty());
    const std::string sentence = largestSlotSentence(*project, uploads[0]);
    EXPECT_TRUE(sentence.starts_with("The largest slot is ")) << sentence;
    EXPECT_NE(sentence.find("viewport width in the variant “"), std::string::npos) << sentence;
    project::Project alone = *project;
    alone.row().variants.resize(1);
    const auto own = uploadsOf(alone, test::sweepStore(), text::defaultProfile());
    EXPECT_EQ(own[0].variant, 0U);
    EXPECT_LE(own[0].size.width, uploads[0].size.width);
    EXPECT_TRUE(largestSlotSentence(alone, own[0]).ends_with("\u00A0px viewport width."));
}

}  // namespace
}  // namespace tenter::pictures
