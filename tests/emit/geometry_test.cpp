#include "emit/geometry.h"
#include "checks/finding.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <nlohmann/json.hpp>

#include "emit/report.h"
#include "pictures/uploads.h"
#include "sample.h"

namespace tenter::emit {
namespace {

using Json = nlohmann::json;

std::string geometry(const project::Project& project, const std::vector<double>& widths) {
    text::Fonts fonts;
    text::ParagraphStore store(fonts);
    const layout::PreparedRow row(project, 1, store, text::blink());
    std::string out;
    writeGeometry(row, {"a \"b\".tenter.json", "walks-trio", "blink"}, widths,
                  [&](const std::string& p) { out += p; });
    return out;
}

// RFC 8259; the keys are those of the command line's description.
TEST(Geometry, IsJsonOfTheRowsBoxesAndLines) {
    const Json json = Json::parse(geometry(tests::walks(), {320, 859.25, 1600}));
    EXPECT_EQ(json["format"], "tenter-geometry");
    EXPECT_EQ(json["version"], 1);
    EXPECT_EQ(json["project"], "a \"b\".tenter.json");
    EXPECT_EQ(json["engine"], "blink");
    ASSERT_EQ(json["layouts"].size(), 3U);
    const Json& layout = json["layouts"][1];
    EXPECT_EQ(layout["width"], 859.25);
    EXPECT_EQ(layout["band"], 1);
    const Json& parts = layout["cards"][1]["parts"];
    ASSERT_EQ(parts.size(), 4U);
    EXPECT_EQ(parts[0]["kind"], "picture");
    EXPECT_EQ(parts[0].size(), 2U);
    EXPECT_EQ(parts[1]["kind"], "heading");
    for (const char* key : {"fontSize", "lineHeight", "available", "measure", "slack"})
        EXPECT_TRUE(parts[1][key].is_number()) << key;
    EXPECT_EQ(parts[3]["lines"][0]["text"], "Book");
    ASSERT_EQ(parts[1]["fonts"].size(), 1U);
    const Json& font = json["fonts"].at(parts[1]["fonts"][0].get<std::size_t>());
    EXPECT_TRUE(std::filesystem::exists(font["file"].get<std::string>()));
    EXPECT_FALSE(font["name"].get<std::string>().empty());
}

// IEEE 754: the shortest decimal that reads back is the same double.
TEST(Geometry, LosesNoDigits) {
    const project::Project project = tests::walks();
    const Json json = Json::parse(geometry(project, {1001.1}));
    text::Fonts fonts;
    text::ParagraphStore store(fonts);
    const layout::PreparedRow row(project, 1, store, text::blink());
    const layout::Layout laid = layout::layOutDrawn(row, 1001.1);
    const Json& card = json["layouts"][0]["cards"][0];
    EXPECT_EQ(card["box"]["width"].get<double>(), laid.cards[0].box.width);
    EXPECT_EQ(card["parts"][1]["fontSize"].get<double>(), laid.parts[1].fontSize);
    EXPECT_EQ(card["parts"][2]["lines"][0]["width"].get<double>(),
              laid.lines[laid.parts[2].firstLine].line.width);
}

TEST(Geometry, StaysJsonWhateverTheCopy) {
    std::mt19937 random(11);
    for (int i = 0; i < 8; ++i)
        EXPECT_TRUE(Json::accept(geometry(tests::randomProject(random), {400, 1200})));
}

TEST(Report, HasALineForEachEdgeOfABand) {
    text::Fonts fonts;
    text::ParagraphStore store(fonts);
    const std::string report = emit::report(tests::walks(), store, text::blink());
    EXPECT_NE(report.find("\n.walks-pair\n"), std::string::npos) << report;
    EXPECT_NE(report.find("\nFindings: "), std::string::npos) << report;
    EXPECT_NE(report.find("Room for text: "), std::string::npos) << report;
    const auto uploads = pictures::uploadsOf(tests::walks(), store, text::blink());
    ASSERT_FALSE(uploads.empty());
    EXPECT_NE(report.find(" " + pictures::sizeLabel(uploads[0].size) + "  "), std::string::npos) << report;
    EXPECT_NE(report.find(checks::caution), std::string::npos) << report;
    for (const char* width : {"  320  ", "  640  ", "  641  ", "  980.5  ", "  981  ", "  1920  "})
        EXPECT_NE(report.find(width), std::string::npos) << width << report;
}

}  // namespace
}  // namespace tenter::emit
