// What a browser measures of a page corrects what its CSS says.
#include "markup/page_measure.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "parsing.h"

namespace tenter::markup {
namespace {

ThemePage wholePage() {
    ThemePage page;
    page.ranges.push_back({std::numeric_limits<double>::infinity(), {16, 0}, {}});
    page.breakpoints = {599.98};
    return page;
}

/// 20 px on each side; from 600 px a width of 560 px and a root size of 18 px.
std::vector<MeasuredPage> measured() {
    std::vector<MeasuredPage> out;
    for (double width = 320; width <= 1000; ++width) {
        const bool wide = width >= 600;
        const double content = wide ? 560 : width - 40;
        // Browsers round lengths to 1/64 px.
        out.push_back({width, std::floor((width - content) / 2 * 64) / 64, content, wide ? 18.0 : 16.0});
    }
    return out;
}

TEST(Measure, ReadsWhatAPagePosts) {
    const auto read = readMeasured("320 8 304 16\n321 8 305 16.5");
    ASSERT_TRUE(read.has_value());
    EXPECT_EQ(read->size(), 2U);
    EXPECT_EQ((*read)[1].rootSize, 16.5);
    EXPECT_FALSE(readMeasured("").has_value());
    EXPECT_FALSE(readMeasured("320 8 304").has_value());
    EXPECT_FALSE(readMeasured("320 8 304 16\n320 8 304 16").has_value());
    EXPECT_FALSE(readMeasured("<html>").has_value());
}

TEST(Measure, WinsOverTheCssAndSaysWhere) {
    ThemePage page = wholePage();
    EXPECT_TRUE(correct(page, measured()));
    ASSERT_EQ(page.ranges.size(), 2U);
    EXPECT_EQ(page.ranges[0].upTo, 599.98);
    EXPECT_EQ(page.ranges[0].container.padding.left, units::Length::px(20));
    EXPECT_EQ(page.ranges[1].container.width, units::Length::px(560));
    EXPECT_EQ(page.ranges[1].rootSize, (css::Line{18, 0}));
    ASSERT_EQ(page.cautions.size(), 3U);
    EXPECT_EQ(
        page.cautions[0].worded(),
        "The browser's width of the container differs from the theme's CSS as Tenter reads it, from 320 to "
        "1000\u00A0px: at 320\u00A0px it is 280\u00A0px, not 320\u00A0px. Tenter imported what was "
        "measured.");
    EXPECT_FALSE(correct(page, measured()));
}

TEST(Measure, AsksAPageWithoutScriptsAndNetwork) {
    const Tree page = treeOf("<body><main class=\"a b\"><div class=row>Low</div></main></body>");
    const std::string html =
        measuringPage(page, find(page, "row"), {{"i { color: red } /* </style> */", "", {}, {}}}, 320, 400);
    EXPECT_NE(html.find("sandbox=\"allow-same-origin\""), std::string::npos);
    EXPECT_NE(html.find("default-src 'none'"), std::string::npos);
    EXPECT_NE(html.find("<main class=&quot;a b&quot; data-tenter-container"), std::string::npos);
    EXPECT_EQ(html.find("</style> */"), std::string::npos);
}

}  // namespace
}  // namespace tenter::markup
