// Spec sheets of the samples: what they contain, and that HTML and PDF have it all.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <set>

#include "project/file.h"
#include "sheet/build.h"
#include "sheet/date.h"
#include "sheet/html.h"
#include "sheet/pdf.h"
#include "sheet/pdf_update.h"
#include "sheet/plot_layout.h"
#include "sheet/shelves.h"

namespace tenter::sheet {
namespace {

// 1 795 910 400 s after 1970 is 2026-11-29, by `date -u -d @1795910400`.
TEST(SheetDate, IsTheGivenOneOrThatOfTheEnvironment) {
    EXPECT_EQ(dateFor("2024-02-29", nullptr), "2024-02-29");
    EXPECT_EQ(dateFor("", "1795910400"), "2026-11-29");
    EXPECT_EQ(dateFor("", "0"), "1970-01-01");
    EXPECT_EQ(dateFor("2024-02-29", "0"), "2024-02-29");
    for (const char* wrong : {"2023-02-29", "2024-13-01", "29.2.2024", "2024-2-29", "today", "2024-02-30 "})
        EXPECT_FALSE(dateFor(wrong, nullptr)) << wrong;
    ASSERT_TRUE(dateFor("", nullptr));
    EXPECT_EQ(dateFor("", nullptr)->size(), 10U);
    EXPECT_EQ(dateFor("", "not a number")->size(), 10U);
}

Thumbnail sized(double width, double height) {
    Thumbnail thumbnail;
    thumbnail.layout.width = width;
    thumbnail.layout.pageHeight = height;
    return thumbnail;
}

TEST(Shelves, HaveOneScaleAndNoThumbnailWiderThanThePage) {
    Thumbnails thumbnails;
    for (const double width : {320.0, 640.0, 641.0, 1000.0, 1600.0})
        thumbnails.list.push_back(sized(width, 3000));
    // The widest thumbnail is 400 px wide, the page 400 ÷ widestShare.
    const double page = 400 / widestShare;
    const Shelves shelves = shelvesOf(thumbnails, page, 300, 90, 10);
    EXPECT_DOUBLE_EQ(shelves.scale, 0.75 * 0.25);
    std::size_t next = 0;
    for (const Shelf& shelf : shelves.shelves) {
        double used = -10;
        for (const ShelfItem& item : shelf.items) {
            EXPECT_EQ(item.index, next++);
            EXPECT_DOUBLE_EQ(item.width, thumbnails.list[item.index].layout.width * 0.75 * 0.25);
            EXPECT_GE(item.place, 90);
            EXPECT_EQ(item.height, 300);
            EXPECT_TRUE(item.isCut);
            used += item.place + 10;
        }
        EXPECT_LE(used, page + 0.01);
    }
    EXPECT_EQ(next, thumbnails.list.size());
    EXPECT_EQ(shelves.shelves.size(), 2U);  // 90 + 120 + 120.2 + 187.5, 300 of 606
}

TEST(Shelves, AreAsLargeAsFitsAndShrinkALittleRatherThanCut) {
    Thumbnails thumbnails;
    thumbnails.list.push_back(sized(1600, 800));
    EXPECT_DOUBLE_EQ(shelvesOf(thumbnails, 400 / widestShare, 300, 90, 10).scale, 0.25);
    thumbnails.list.push_back(sized(320, 1500));
    const Shelves shrunk = shelvesOf(thumbnails, 400 / widestShare, 300, 90, 10);
    EXPECT_DOUBLE_EQ(shrunk.scale, 0.2);
    for (const Shelf& shelf : shrunk.shelves)
        for (const ShelfItem& item : shelf.items)
            EXPECT_FALSE(item.isCut);
}

TEST(PlotLayout, KeepsEverythingInItsBoxAndNamesApart) {
    Plot plot{"Size", "px", "", 320, 1920, {}, {980}, {{80, "limit"}}};
    for (const double value : {20.0, 20.1, 20.2, 70.0})
        plot.series.push_back({"Series", {{320, value}, {1920, value + 1}}});
    const PlotLayout laid = layOutPlot(plot, 240, 160, 7);
    for (const PlotLine& line : laid.lines) {
        for (const PlotPoint& point : line.points) {
            EXPECT_GE(point.x, 0);
            EXPECT_LE(point.x, 240);
            EXPECT_GE(point.y, 0);
            EXPECT_LE(point.y, 160);
        }
    }
    std::vector<double> names;
    for (const PlotLabel& label : laid.labels)
        if (label.text == "Series") names.push_back(label.at.y);
    ASSERT_EQ(names.size(), 4U);
    std::ranges::sort(names);
    for (std::size_t i = 1; i < names.size(); ++i)
        EXPECT_GE(names[i] - names[i - 1], 7);
}

// A breakpoint of a size is a gap, not a slope.
TEST(PlotLayout, BreaksALineAtAJump) {
    Plot plot{"Size", "px", "", 320, 1920, {{"S", {{320, 10}, {980, 20}, {980, 12}, {1920, 18}}}}, {}, {}};
    const PlotLayout laid = layOutPlot(plot, 240, 160, 7);
    EXPECT_EQ(std::ranges::count_if(laid.lines, [](const PlotLine& line) { return line.width > 1; }), 2);
}

// ISO 32000-1 § 7.9.2.2, UTF-16BE with a byte order mark; U+1F41A is D83D DC1A.
TEST(PdfString, IsUtf16) {
    EXPECT_EQ(pdfString("A\xC3\xA9"), "<FEFF004100E9>");
    EXPECT_EQ(pdfString("\xF0\x9F\x90\x9A"), "<FEFFD83DDC1A>");
}

TEST(PdfAdditions, AreRefusedIfTheFileHasOtherFigures) {
    EXPECT_FALSE(withAdditions("%PDF-1.5\n1 0 obj\n<< /Type /Catalog >>\nendobj\n", {"en", {"one"}, {}}));
}

class Samples : public ::testing::TestWithParam<const char*> {
protected:
    void SetUp() override {
        project::Problems problems;
        project_ = *project::read(folder_ / (std::string(GetParam()) + ".tenter.json"), problems);
        fonts_.use(project_.fonts, folder_);
    }
    Sheet build() {
        SheetOptions options;
        options.date = "2026-11-29";
        options.profile = &text::defaultProfile();
        return buildSheet(project_, store_, options);
    }
    std::filesystem::path folder_ = TENTER_SOURCE_DIR "/sample-projects";
    project::Project project_;
    text::Fonts fonts_;
    text::ParagraphStore store_{fonts_};
};

TEST_P(Samples, HaveAllPartsOfASheetForEachVariant) {
    const Sheet sheet = build();
    EXPECT_EQ(sheet.title, project_.name);
    const std::size_t variants = project_.row().variants.size();
    std::size_t thumbnails = 0;
    std::multiset<std::string> tables;
    for (const Block& block : sheet.blocks) {
        thumbnails += std::holds_alternative<Thumbnails>(block) ? 1 : 0;
        if (const auto* table = std::get_if<Table>(&block)) {
            tables.insert(table->title);
            for (const std::vector<std::string>& row : table->rows)
                EXPECT_EQ(row.size(), table->columns.size()) << table->title;
            EXPECT_FALSE(table->rows.empty()) << table->title;
        }
    }
    EXPECT_EQ(thumbnails, variants);
    for (const char* title : {"Key widths", "Columns", "Type", "Measure", "Picture slots"})
        EXPECT_EQ(tables.count(title), variants) << title;
    EXPECT_GE(tables.count("Spacing"), variants);
    EXPECT_EQ(tables.count("Fonts"), 1U);
}

TEST_P(Samples, AreOneHtmlFileThatAsksForNothing) {
    const Sheet sheet = build();
    draw::PictureSource pictures(folder_);
    const std::string html = htmlSheet(sheet, pictures, store_);
    EXPECT_TRUE(pictures.missing().empty());
    EXPECT_EQ(html.find("<script"), std::string::npos);
    EXPECT_EQ(html.find("http:"), std::string::npos);
    EXPECT_EQ(html.find("https:"), std::string::npos);
    EXPECT_EQ(html.find("url(h"), std::string::npos);
    for (const char* reference : {"href=\"", "src=\""})
        for (std::size_t at = html.find(reference); at != std::string::npos;
             at = html.find(reference, at + 1)) {
            const std::size_t value = html.find('"', at) + 1;
            EXPECT_TRUE(html.compare(value, 1, "#") == 0 || html.compare(value, 5, "data:") == 0)
                << html.substr(at, 60);
        }
    EXPECT_NE(html.find("do not prove conformance"), std::string::npos);
    EXPECT_NE(html.find("Check the licence of each font"), std::string::npos);
    EXPECT_LT(html.size(), 6U << 20U);
}

TEST_P(Samples, MakeTheSameFileTwice) {
    const Sheet sheet = build();
    draw::PictureSource pictures(folder_);
    EXPECT_EQ(htmlSheet(sheet, pictures, store_), htmlSheet(build(), pictures, store_));
    const std::string pdf = pdfSheet(sheet, a4, pictures, store_);
    ASSERT_TRUE(pdf.starts_with("%PDF-"));
    EXPECT_EQ(pdf, pdfSheet(build(), a4, pictures, store_));
    // Texts of the row are glyphs of fonts: as outlines they would take several megabytes.
    EXPECT_LT(pdf.size(), 2U << 20U);
}

TEST_P(Samples, StopWhenAsked) {
    SheetOptions options;
    options.profile = &text::defaultProfile();
    options.isStopped = [] { return true; };
    EXPECT_TRUE(buildSheet(project_, store_, options).blocks.empty());
    draw::PictureSource pictures(folder_);
    EXPECT_EQ(pdfSheet(build(), a4, pictures, store_, [] { return true; }), "");
}

INSTANTIATE_TEST_SUITE_P(All, Samples,
                         ::testing::Values("shore-walks", "night-sky", "season", "bird-counts", "ferry-words",
                                           "marsh-ar"),
                         [](const auto& each) {
                             std::string name = each.param;
                             std::erase(name, '-');
                             return name;
                         });

}  // namespace
}  // namespace tenter::sheet
