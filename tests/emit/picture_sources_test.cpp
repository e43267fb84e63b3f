// Markup with cut files: srcset, sizes, formats, and which pictures have them.
#include "emit/picture_sources.h"

#include <gtest/gtest.h>

#include "emit/address.h"
#include "emit/page.h"
#include "project/file.h"

namespace tenter::emit {
namespace {

using pictures::Format;
using pictures::ListedPicture;

ListedPicture listed(std::vector<Format> formats) {
    ListedPicture picture;
    picture.variant = "pair";
    picture.source = "a b.jpg";
    picture.sizes = "(max-width: 700px) 100vw, calc(50vw - 12px)";
    for (const Format format : formats) {
        const std::string end(fileEnding(format));
        picture.formats.push_back(
            {format, {{"a-400x300" + end, {400, 300}}, {"a-800x600" + end, {800, 600}}}});
    }
    picture.fallback = "a-800x600.jpg";
    return picture;
}

project::Project rowWithPicture() {
    project::Problems problems;
    const auto project = project::parse(
        R"({"format": "tenter-project", "version": 1, "name": "markup", "row": "shelf", "language": "en",
            "cards": [{"parts": [{"picture": "a b.jpg", "size": [1600, 1200], "alt": "A \"quoted\" shelf",
                                  "focus": [0.2, 0.5]}]}],
            "variants": [{"class": "pair", "bands": [{}]}, {"class": "trio", "bands": [{}]}]})",
        "markup", {}, problems);
    for (const project::Problem& problem : problems)
        ADD_FAILURE() << problem.line();
    return project.value_or(project::Project{});
}

// HTML § 4.8.4.2.1: candidates are separated by commas, each with its width.
TEST(PictureSources, ListEveryCandidateWithItsWidth) {
    const PictureSources sources = pictureSources(listed({Format::Jpeg}), "/media/");
    EXPECT_EQ(sources.srcset, "/media/a-400x300.jpg 400w, /media/a-800x600.jpg 800w");
    EXPECT_EQ(sources.src, "/media/a-800x600.jpg");
    EXPECT_EQ(sources.size, (pictures::PixelSize{800, 600}));
    EXPECT_TRUE(sources.alternatives.empty());
}

// A browser uses the first source whose type it knows. HTML § 4.8.2.
TEST(PictureSources, PutFormatsWithSmallerFilesFirst) {
    for (const auto& formats : {std::vector{Format::Jpeg, Format::WebP, Format::Avif},
                                std::vector{Format::Avif, Format::Jpeg, Format::WebP}}) {
        const PictureSources sources = pictureSources(listed(formats), "");
        ASSERT_EQ(sources.alternatives.size(), 2U);
        EXPECT_EQ(sources.alternatives[0].type, "image/avif");
        EXPECT_EQ(sources.alternatives[1].type, "image/webp");
        EXPECT_EQ(sources.srcset, "a-400x300.jpg 400w, a-800x600.jpg 800w");
    }
}

TEST(PictureSources, AreInTheMarkup) {
    const project::Project project = rowWithPicture();
    pictures::Listing listing;
    listing.pictures = {listed({Format::Jpeg})};
    const std::string html = markup(project, 0, {&listing, "cut/"});
    EXPECT_NE(html.find("srcset=\"cut/a-400x300.jpg 400w, cut/a-800x600.jpg 800w\" "
                        "sizes=\"(max-width: 700px) 100vw, calc(50vw - 12px)\" src=\"cut/a-800x600.jpg\" "
                        "alt=\"A &quot;quoted&quot; shelf\" width=\"800\" height=\"600\" "
                        "style=\"object-position: 20% 50%\">"),
              std::string::npos)
        << html;
    EXPECT_EQ(html.find("<picture"), std::string::npos);
    EXPECT_EQ(markup(project, 0).find("srcset"), std::string::npos);
}

// The image stays a child of the card's box: `display: contents` makes no box. CSS Display 3 § 2.5.
TEST(PictureSources, OfSeveralFormatsStandInAPictureElementWithoutABox) {
    const project::Project project = rowWithPicture();
    pictures::Listing listing;
    listing.pictures = {listed({Format::WebP, Format::Jpeg})};
    const std::string html = markup(project, 0, {&listing, ""});
    EXPECT_NE(html.find("<picture style=\"display: contents\"><source type=\"image/webp\" "
                        "srcset=\"a-400x300.webp 400w, a-800x600.webp 800w\" "
                        "sizes=\"(max-width: 700px) 100vw, calc(50vw - 12px)\"><img class="),
              std::string::npos)
        << html;
    EXPECT_NE(html.find("></picture>\n"), std::string::npos);
    const std::string elements = pictureElements(project, 0, {&listing, ""});
    EXPECT_TRUE(elements.starts_with("<!-- pair, card 1 -->\n<picture ")) << elements;
}

TEST(PictureSources, AreOnlyForThePictureAndVariantThatWereCut) {
    project::Project project = rowWithPicture();
    pictures::Listing listing;
    listing.pictures = {listed({Format::Jpeg})};
    EXPECT_TRUE(uncutPictures(project, 0, listing).empty());
    EXPECT_EQ(uncutPictures(project, 1, listing).size(), 1U);
    EXPECT_EQ(markup(project, 1, {&listing, ""}).find("srcset"), std::string::npos);
    std::get<project::PicturePart>(project.part({0, 0})).file = "other.jpg";
    EXPECT_EQ(uncutPictures(project, 0, listing).size(), 1U);
    EXPECT_EQ(markup(project, 0, {&listing, ""}).find("srcset"), std::string::npos);
    listing.pictures[0].card = 7;
    EXPECT_EQ(pictureElements(project, 0, {&listing, ""}), "");
}

// Whole pixels do not give each file the ratio of its source. Browsers would show each with its own height.
TEST(PictureSources, KeepTheRatioOfTheSourceWhereFilesDiffer) {
    project::Project project = rowWithPicture();
    auto& picture = std::get<project::PicturePart>(project.part({0, 0}));
    picture.focusX = 0.5;
    project.row().style.picture.ratio = project::Ratio{};
    pictures::Listing listing;
    listing.pictures = {listed({Format::Jpeg})};
    EXPECT_EQ(markup(project, 0, {&listing, ""}).find("style="), std::string::npos);
    picture.height = 1203;
    const std::string kept = "style=\"aspect-ratio: 1600 / 1203\"";
    EXPECT_NE(markup(project, 0, {&listing, ""}).find(kept), std::string::npos);
    // Without cut files the picture is its own source.
    EXPECT_EQ(markup(project, 0).find("style="), std::string::npos);
    // The style attribute would override the ratio of a band.
    project.row().variants[0].bands[0].upTo = 700;
    project.row().variants[0].bands.emplace_back().set.picture.ratio = project::Ratio{3, 2};
    EXPECT_EQ(markup(project, 0, {&listing, ""}).find("style="), std::string::npos);
}

TEST(PictureSources, HaveTheRelativeAddressOfTheirFolder) {
    EXPECT_EQ(folderAddress("/site/cut pictures", "/site"), "cut%20pictures/");
    EXPECT_EQ(folderAddress("/site/media", "/site/pages"), "../media/");
    EXPECT_EQ(folderAddress("/site", "/site"), "");
}

}  // namespace
}  // namespace tenter::emit
