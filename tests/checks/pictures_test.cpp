// Pictures with too few pixels, and cropped pictures. CSS Images 3 § 5.5; limits from common practice.
#include "checking.h"

namespace tenter::checks {
namespace {

using namespace test;  // NOLINT(google-build-using-namespace)

/// A picture of `width` × `height` px, as wide as a row of at most 600 px.
project::Project pictured(int width, int height, const std::string& more = "") {
    return quiet(R"([{"parts": [{"picture": "quay.png", "size": [)" + std::to_string(width) + ", " +
                     std::to_string(height) + R"(], "alt": "The quay"}]}])",
                 "[{}]", R"({"columns": 1, "width": "100%", "maxWidth": "600px")" + more + "}");
}

TEST(PictureCheck, CountsPixelsToASlot) {
    EXPECT_TRUE(has(pictured(899, 600), "picture", Severity::Warning));
    EXPECT_FALSE(has(pictured(900, 600), "picture", Severity::Warning));
    EXPECT_TRUE(has(pictured(900, 600), "picture", Severity::Note));
    EXPECT_FALSE(has(pictured(1200, 800), "picture"));
    // 750 px are enough for a slot of 500 px.
    expectSpans(findingOf(pictured(750, 500), "picture", Severity::Warning), {{500, 1920}}, 0.01);
}

// CSS Images 3 § 5.5: a file twice as wide as high needs 800 px in a slot of 3/2 that is 400 px high.
TEST(PictureCheck, CountsWhatCroppingCutsOff) {
    EXPECT_FALSE(has(pictured(1600, 800), "picture"));
    EXPECT_TRUE(has(pictured(1590, 795), "picture", Severity::Note));
}

// Computed by hand: a square file in a slot three times as high as wide shows a third. CSS Images 3 § 5.5.
TEST(PictureCheck, NotesCroppedPicturesWithoutAFocalPoint) {
    const auto row = [](const std::string& ratio) {
        project::Project project = pictured(6000, 6000);
        set(project, "picture/ratio", ratio);
        return project;
    };
    const Finding cropped = findingOf(row(R"("1/3")"), "picture");
    EXPECT_NE(cropped.says.find("shows less than 50\u00A0% of its image, at worst 33\u00A0%"),
              std::string::npos)
        << cropped.says;
    EXPECT_TRUE(has(row(R"("3/1")"), "picture"));
    EXPECT_FALSE(has(row(R"("2/3")"), "picture"));
    project::Project chosen = row(R"("1/3")");
    std::get<project::PicturePart>(chosen.row().cards[0].parts[0]).focusX = 0.3;
    EXPECT_FALSE(has(chosen, "picture"));
}

}  // namespace
}  // namespace tenter::checks
