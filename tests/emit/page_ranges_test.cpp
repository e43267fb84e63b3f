// A range of the page that is added to a project file reaches layout, wrap points, checks, solved sizes,
// stylesheet and page.
#include <gtest/gtest.h>

#include <cmath>
#include <nlohmann/json.hpp>

#include "checks/checks.h"
#include "checks/key_widths.h"
#include "css_reader.h"
#include "emit/page.h"
#include "emit/stylesheet.h"
#include "layout/layout.h"
#include "project/file.h"
#include "sample.h"
#include "sweep/wraps.h"

namespace tenter::emit {
namespace {

using tests::computed;
using tests::count;
using tests::CssSheet;
using tests::readCss;

text::ParagraphStore& store() {
    static text::Fonts fonts;
    static text::ParagraphStore all(fonts);
    return all;
}

layout::PreparedRow prepared(const project::Project& project) {
    return {project, 0, store(), text::blink()};
}

/// The walks as a file with `page`, JSON text.
project::Project withPage(const std::string& page) {
    project::Json json = project::Json::parse(project::write(tests::walks()));
    json["page"] = project::Json::parse(page);
    project::Problems problems;
    const auto project = project::parse(json.dump(), "walks", {}, problems);
    EXPECT_TRUE(project) << (problems.empty() ? "" : problems[0].line());
    return project.value_or(project::Project());
}

const char* const plain = R"json({"rootSize": 16, "container": {"maxWidth": "1200px"}})json";
const char* const ranged = R"json({"rootSize": 16, "container": {"maxWidth": "1200px"}, "ranges": [
    {"upTo": 767, "rootSize": 20, "container": {"width": "80%", "background": "#222"}},
    {"upTo": 991, "rootSize": "clamp(15px, 5px + 1.25vw, 17px)", "container": {"maxWidth": "720px"}}]})json";

/// The font size in CSS px of `value`, which a stylesheet gives, at `width`.
double pixelsOf(const std::string& value, const project::Page& page, double width) {
    units::LengthBasis basis;
    basis.vw = width;
    basis.rem = page.at(width).rootSize.resolve(16, width);
    const auto term = [&](const std::string& text) {
        return units::Length::parse(text).value_or(units::Length()).resolve(basis);
    };
    if (!value.starts_with("clamp(")) return term(value);
    const std::size_t first = value.find(", ");
    const std::size_t plus = value.find(" + ");
    const std::size_t second = value.rfind(", ");
    const double sum =
        term(value.substr(first + 2, plus - first - 2)) + term(value.substr(plus + 3, second - plus - 3));
    return std::max(term(value.substr(6, first - 6)),
                    std::min(sum, term(value.substr(second + 2, value.size() - second - 3))));
}

TEST(PageRanges, ChangeTheLayoutUpToTheirEndsOnly) {
    const project::Project project = withPage(ranged);
    const layout::PreparedRow row = prepared(project);
    const layout::PreparedRow before = prepared(withPage(plain));
    EXPECT_NEAR(layout::layOut(row, 767).container.width, 0.8 * 767, 1e-9);
    EXPECT_EQ(layout::layOut(row, 767.5).container.width, 720);
    EXPECT_EQ(layout::layOut(row, 991).container.width, 720);
    EXPECT_EQ(layout::layOut(row, 991.5).container.width, 991.5);
    for (const double width : {992.0, 1300.0})
        EXPECT_EQ(layout::layOut(row, width).row, layout::layOut(before, width).row);
    EXPECT_EQ(row.rem(767), 20);
    EXPECT_EQ(row.rem(768), 15);
    EXPECT_NEAR(row.rem(880), 16, 1e-9);
    EXPECT_EQ(row.rem(1000), 16);
    // The band is still the variant's: its breakpoints are 640 px for the pair.
    EXPECT_EQ(row.bandCount(), 2U);
    EXPECT_EQ(layout::layOut(row, 700).band, 1U);
}

TEST(PageRanges, ChangeNoFontSizeInPixels) {
    const project::Project project = withPage(ranged);
    const layout::PreparedRow row = prepared(project);
    const layout::PreparedRow before = prepared(withPage(plain));
    for (double width = 320; width <= 1920; width += 7.3)
        for (std::uint32_t role = 0; role < row.roles().size(); ++role)
            EXPECT_NEAR(row.fontSize(role, width), before.fontSize(role, width), 0.01) << width;
}

// Each number of rem belongs to one root size, so the stylesheet has a query for each range.
TEST(PageRanges, ChangeTheNumbersOfTheStylesheet) {
    const project::Project project = withPage(ranged);
    const layout::PreparedRow row = prepared(project);
    const CssSheet sheet = readCss(stylesheet(project, {.variants = {0}}));
    ASSERT_TRUE(sheet.sound);
    for (const double width : {320.0, 640.0, 641.0, 766.0, 767.0, 768.0, 880.0, 991.0, 992.0, 1700.0}) {
        for (const char* role : {"heading", "body", "button"}) {
            const std::string printed =
                computed(sheet, std::string(".walks-pair .walks-") + role, width).at("font-size");
            const auto index =
                static_cast<std::uint32_t>(std::ranges::find(row.roles(), role) - row.roles().begin());
            EXPECT_NEAR(pixelsOf(printed, project.page, width), row.fontSize(index, width), 1e-9)
                << role << " at " << width << ": " << printed;
            EXPECT_EQ(printed, fontSize(project, 0, width, role));
            // A root size that follows the viewport: no number of rem is right.
            EXPECT_EQ(printed.find("rem") == std::string::npos, width > 767 && width <= 991) << printed;
        }
    }
    EXPECT_EQ(stylesheet(project, {.variants = {0}, .unit = units::Unit::Px}),
              stylesheet(withPage(plain), {.variants = {0}, .unit = units::Unit::Px}));
}

TEST(PageRanges, OfTheContainerAloneLeaveTheStylesheetAsItIs) {
    const project::Project project = withPage(
        R"({"container": {"maxWidth": "1200px"}, "ranges": [{"upTo": 900, "container": {"maxWidth": "500px"}}]})");
    EXPECT_EQ(stylesheet(project, {.variants = {0, 1}}), stylesheet(withPage(plain), {.variants = {0, 1}}));
}

TEST(PageRanges, AreMediaQueriesOfThePage) {
    project::Project project = withPage(ranged);
    project::Problems problems;
    const std::string html = page(project, 0, {}, store(), problems);
    EXPECT_EQ(count(html,
                    "@media (max-width: 991px) {\n  html {\n    font-size: clamp(15px, 5px + 1.25vw, 17px);\n"
                    "  }\n\n  .container {\n    max-width: 720px;\n  }\n}\n\n"
                    "@media (max-width: 767px) {\n  html {\n    font-size: 20px;\n  }\n\n  .container {\n"
                    "    width: 80%;\n    max-width: 1200px;\n    background: #222;\n  }\n}\n"),
              1U);
    project.page.readerSize = 24;
    const std::string larger = page(project, 0, {}, store(), problems);
    EXPECT_EQ(count(larger, "html {\n  font-size: 24px;"), 1U);
    EXPECT_EQ(count(larger, "    font-size: 30px;"), 1U);
    EXPECT_EQ(count(larger, "    font-size: clamp(15px, 5px + 1.25vw, 17px);"), 1U);
}

// Line counts just below and just above every wrap point; a narrower container adds some.
TEST(PageRanges, MoveTheWrapPoints) {
    const project::Project project = withPage(ranged);
    const layout::PreparedRow row = prepared(project);
    const std::vector<sweep::WrapPoint> wraps = sweep::wrapPoints(row, 320, 1920);
    EXPECT_NE(wraps, sweep::wrapPoints(prepared(withPage(plain)), 320, 1920));
    bool atAnEnd = false;
    for (const sweep::WrapPoint& wrap : wraps) {
        const auto linesAt = [&](double width) {
            const layout::Layout laid = layout::layOut(row, width);
            return laid.parts[laid.cards[wrap.place.card].firstPart + wrap.place.part].lineCount;
        };
        EXPECT_EQ(linesAt(wrap.width - 1e-6), wrap.below) << wrap.width;
        EXPECT_EQ(linesAt(wrap.width + 1e-6), wrap.above) << wrap.width;
        atAnEnd = atAnEnd || wrap.width == 767 || wrap.width == 991;
    }
    EXPECT_TRUE(atAnEnd);
}

TEST(PageRanges, AreSeenByTheChecks) {
    project::Project project = withPage(ranged);
    project.row().style.card.background = units::Colour{0, 0, 0, 0};
    project.row().style.text.of("heading").colour = units::Colour{0x22, 0x22, 0x22, 255};
    const auto contrast = [&](const project::Project& one) {
        std::vector<sweep::Interval> widths;
        for (const checks::Finding& finding : checks::check(one, 0, store()))
            if (finding.check == "contrast" && finding.place == project::PartRef{0, 1})
                widths = finding.widths;
        return widths;
    };
    EXPECT_EQ(contrast(project), (std::vector<sweep::Interval>{{project.leastWidth, 767}}));
    project.page.ranges.clear();
    EXPECT_TRUE(contrast(project).empty());
}

TEST(PageRanges, HaveKeyWidths) {
    const project::Project project = withPage(ranged);
    std::vector<double> widths;
    for (const checks::KeyWidth& key : checks::keyWidths(project, 0, {}))
        if (key.why.find("page range") != std::string::npos) widths.push_back(key.width);
    EXPECT_EQ(widths, (std::vector<double>{767, 768, 991, 992}));
}

}  // namespace
}  // namespace tenter::emit
