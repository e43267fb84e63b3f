// The reference is `layOut`, which tests/engines compares with browsers.
#include "sweep/wraps.h"

#include <hb.h>

#include <algorithm>

#include "sweeping.h"

namespace tenter::sweep {
namespace {

using test::Swept;

/// Each part's wrap points, in the order of a layout's parts.
std::vector<std::vector<WrapPoint>> byPart(const std::vector<WrapPoint>& wraps, const layout::Layout& laid) {
    std::vector<std::vector<WrapPoint>> all(laid.parts.size());
    for (const WrapPoint& wrap : wraps)
        all[test::indexOf(laid, wrap.place.card, wrap.place.part)].push_back(wrap);
    return all;
}

/// The line count at `width` by the wrap points: that of the last one before it, or else of the next one.
std::uint32_t countBy(const std::vector<WrapPoint>& wraps, double width, std::uint32_t ifNone) {
    if (wraps.empty()) return ifNone;
    std::uint32_t count = wraps.front().below;
    for (const WrapPoint& wrap : wraps)
        if (wrap.width < width) count = wrap.above;
    return count;
}

/// Widths closer to a wrap point than this are not compared, because doubles are rounded. CSS px.
bool isNear(const std::vector<WrapPoint>& wraps, double width) {
    return std::any_of(wraps.begin(), wraps.end(),
                       [&](const WrapPoint& wrap) { return std::abs(wrap.width - width) < 1e-6; });
}

void expectCountsAt(const Swept& swept, const std::vector<std::vector<WrapPoint>>& wraps,
                    const std::vector<std::uint32_t>& alone, double width) {
    const auto counts = test::countsAt(swept.row, width);
    for (std::size_t part = 0; part < counts.size(); ++part) {
        if (isNear(wraps[part], width)) continue;
        ASSERT_EQ(counts[part], countBy(wraps[part], width, alone[part]))
            << swept.name << ", part " << part << " at " << testing::PrintToString(width);
    }
}

void expectCountsBetween(const Swept& swept) {
    const double least = swept.project.leastWidth;
    const double most = swept.project.mostWidth;
    const auto wraps = byPart(wrapPoints(swept.row, least, most), layout::layOut(swept.row, least));
    const auto alone = test::countsAt(swept.row, least);
    std::mt19937 random(17);
    for (int i = 0; i < 1000; ++i)
        expectCountsAt(swept, wraps, alone, test::somewhere(least, most, random));
}

/// Compares on both sides of each wrap point, at 0.001 px or half the distance to the next one of the part.
void expectCountsBeside(const Swept& swept) {
    const double least = swept.project.leastWidth;
    const double most = swept.project.mostWidth;
    const layout::Layout laid = layout::layOut(swept.row, least);
    const auto wraps = byPart(wrapPoints(swept.row, least, most), laid);
    for (std::size_t part = 0; part < wraps.size(); ++part) {
        for (std::size_t i = 0; i < wraps[part].size(); ++i) {
            const WrapPoint& wrap = wraps[part][i];
            const double before = i > 0 ? wraps[part][i - 1].width : least;
            const double after = i + 1 < wraps[part].size() ? wraps[part][i + 1].width : most;
            const double below = wrap.width - std::min(0.001, (wrap.width - before) / 2);
            const double above = wrap.width + std::min(0.001, (after - wrap.width) / 2);
            EXPECT_NE(wrap.below, wrap.above) << swept.name;
            if (wrap.width - below > 1e-6) {
                EXPECT_EQ(test::countsAt(swept.row, below)[part], wrap.below)
                    << swept.name << ", part " << part << " below " << testing::PrintToString(wrap.width);
            }
            if (above - wrap.width > 1e-6) {
                EXPECT_EQ(test::countsAt(swept.row, above)[part], wrap.above)
                    << swept.name << ", part " << part << " above " << testing::PrintToString(wrap.width);
            }
        }
    }
}

TEST(WrapPoints, HaveConstantCountsBetweenThem) {
    test::forEachSample(expectCountsBetween);
    test::forEachRandomProject(expectCountsBetween);
}

TEST(WrapPoints, HaveTheirCountsOnBothSides) {
    test::forEachSample(expectCountsBeside);
    test::forEachRandomProject(expectCountsBeside);
}

// Some ranges at every 1/64 px.
TEST(WrapPoints, AgreeWithADenseScan) {
    test::forEachSample([](const Swept& swept) {
        const double least = swept.project.leastWidth;
        const auto wraps =
            byPart(wrapPoints(swept.row, least, swept.project.mostWidth), layout::layOut(swept.row, least));
        const auto alone = test::countsAt(swept.row, least);
        for (const double from : {least, least + 380, least + 655})
            for (int i = 0; i < 20 * 64; ++i)
                expectCountsAt(swept, wraps, alone, from + i / 64.0);
    });
}

TEST(WrapPoints, AreSortedByWidthThenCardThenPart) {
    test::forEachSample([](const Swept& swept) {
        const auto wraps = wrapPoints(swept.row, swept.project.leastWidth, swept.project.mostWidth);
        EXPECT_FALSE(wraps.empty()) << swept.name;
        auto sorted = wraps;
        sortWraps(sorted);
        EXPECT_EQ(wraps, sorted);
        for (const WrapPoint& wrap : wraps) {
            EXPECT_GT(wrap.width, swept.project.leastWidth);
            EXPECT_LT(wrap.width, swept.project.mostWidth);
        }
    });
}

/// One paragraph as wide as the viewport, with the font size `ramp` (JSON).
project::Project paragraph(const std::string& copy, const std::string& ramp) {
    auto project = test::projectOf(test::styleOf(R"({"columns": 1, "width": "100%"})", test::plainCard),
                                   "[{}]", R"([{"parts": [{"role": "body", "copy": ")" + copy + R"("}]}])");
    project::Problems problems;
    EXPECT_TRUE(
        project::setSetting(project.row().style, "text/body/size", project::Json::parse(ramp), problems));
    return project;
}

/// The sum of the advances that HarfBuzz gives for a text, in em, from the font file.
double advanceOf(const std::string& text, const std::string& family) {
    text::Fonts fonts;
    const text::FacePtr face = fonts.find({family}, 400, false).front();
    hb_blob_t* blob = hb_blob_create_from_file(face->file().c_str());
    hb_face_t* opened = hb_face_create(blob, 0);
    hb_font_t* font = hb_font_create(opened);
    hb_buffer_t* buffer = hb_buffer_create();
    hb_buffer_add_utf8(buffer, text.c_str(), -1, 0, -1);
    hb_buffer_guess_segment_properties(buffer);
    hb_shape(font, buffer, nullptr, 0);
    unsigned count = 0;
    const hb_glyph_position_t* positions = hb_buffer_get_glyph_positions(buffer, &count);
    double sum = 0;
    for (unsigned i = 0; i < count; ++i)
        sum += positions[i].x_advance;
    sum /= hb_face_get_upem(opened);
    hb_buffer_destroy(buffer);
    hb_font_destroy(font);
    hb_face_destroy(opened);
    hb_blob_destroy(blob);
    return sum;
}

// Computed by hand: from 16 px at 400 to 24 px at 800 the size is 0.5rem + 2vw = 8 + 0.02 W, minus the
// average rounding d of engines. Text of e em fills the viewport where W = e (8 − d + 0.02 W), so at W = (8 −
// d) e / (1 − 0.02 e).
TEST(WrapPoints, AreWhereTheSumOfAdvancesFits) {
    const std::string copy = "The ferry leaves the quay an hour before low water on most days";
    const double ems = advanceOf(copy, "Vollkorn");
    // Chromium also lets a line exceed its width by 1/64 px.
    const double expected = ((8 - text::blink().meanTruncation()) * ems - 1.0 / 64) / (1 - 0.02 * ems);
    ASSERT_GT(expected, 400);
    ASSERT_LT(expected, 800);
    auto project = paragraph(copy, "[[400, 16], [800, 24]]");
    project.row().style.text.of("body").family = std::vector<std::string>{"Vollkorn"};
    const auto wraps = wrapPoints(test::prepareRow(project), 320, 1920);
    ASSERT_FALSE(wraps.empty());
    const WrapPoint& last = wraps.back();
    EXPECT_NEAR(last.width, expected, 1e-4);
    EXPECT_EQ(last.below, 2U);
    EXPECT_EQ(last.above, 1U);
}

// Text that grows four times while its column doubles: counts rise with the width, and fall again past the
// end of the ramp.
TEST(WrapPoints, FollowTypeThatGrowsFasterThanItsColumn) {
    const auto project =
        paragraph("Low water comes fifty minutes later every day of the week", "[[500, 10], [1000, 40]]");
    const auto wraps = wrapPoints(test::prepareRow(project), 320, 1920);
    int rises = 0;
    int falls = 0;
    for (const WrapPoint& wrap : wraps) {
        const bool inRamp = wrap.width > 500 && wrap.width < 1000;
        EXPECT_EQ(inRamp, wrap.above > wrap.below) << wrap.width;
        (wrap.above > wrap.below ? rises : falls) += 1;
    }
    EXPECT_GT(rises, 0);
    EXPECT_GT(falls, 0);
}

// Media Queries 4 § 4.1: a breakpoint belongs to the band below it.
TEST(WrapPoints, HaveTheCountsOfBothBandsAtABreakpoint) {
    const auto project = test::projectOf(
        test::styleOf(R"({"columnGap": "0"})", test::plainCard),
        R"([{"upTo": 600, "set": {"row": {"columns": 1}}}, {"set": {"row": {"columns": 4}}}])",
        R"([{"parts": [{"role": "body", "copy": "Bring a torch and boots that may get wet."}]}])");
    const auto row = test::prepareRow(project);
    const auto wraps = wrapPoints(row, 500, 700);
    const auto at =
        std::find_if(wraps.begin(), wraps.end(), [](const WrapPoint& w) { return w.width == 600; });
    ASSERT_NE(at, wraps.end());
    EXPECT_EQ(at->below, test::countsAt(row, 600)[0]);
    EXPECT_EQ(at->above, test::countsAt(row, 600.0001)[0]);
    EXPECT_LT(at->below, at->above);
}

// Words broken by `overflow-wrap`, and labels that shrink to fit, in a column narrower than their words.
TEST(WrapPoints, FollowWordsThatBreak) {
    for (const char* wrap : {"break-word", "anywhere"}) {
        auto project = test::projectOf(
            test::styleOf(R"({"columnGap": "0", "columns": 6})", test::plainCard), "[{}]",
            R"([{"parts": [{"role": "body", "copy": "Wattwanderwegeverzeichnis, tide-7-tables"},
                           {"role": "button", "copy": "Gezeitentafelbestellung", "link": "#b"}]}])",
            R"("range": {"from": 200, "to": 900}, )");
        project::Problems problems;
        for (const char* role : {"body", "button"})
            ASSERT_TRUE(project::setSetting(project.row().style,
                                            "text/" + std::string(role) + "/overflowWrap", wrap, problems));
        test::forEachRow("cut words", project, [](const Swept& swept) {
            EXPECT_GT(wrapPoints(swept.row, 200, 900).size(), 4U);
            expectCountsBetween(swept);
            expectCountsBeside(swept);
        });
    }
}

// Balanced text, also in columns so narrow that one more line costs less than a short last word, and with
// soft hyphens, which cost half a line each.
TEST(WrapPoints, FollowBalancedHeadings) {
    auto project = test::projectOf(
        test::styleOf(R"({"columnGap": "0", "columns": 12})", test::plainCard), "[{}]",
        R"([{"parts": [{"role": "heading", "copy": "Walk the drowned road to the old beacon by six"}]},
            {"parts": [{"role": "heading", "copy": "Ge\u00adzei\u00adten\u00adta\u00adbelle am Hafen und im Watt"}]},
            {"parts": [{"role": "heading", "copy": "A tide-table a day: sea-fog, mud-flats, low-water walks"}]}])",
        R"("range": {"from": 600, "to": 3000}, )");
    project::Problems problems;
    ASSERT_TRUE(project::setSetting(project.row().style, "text/heading/wrap", "balance", problems));
    for (const char* size : {"6", "14", "[[600, 8], [2500, 30]]"}) {
        ASSERT_TRUE(project::setSetting(project.row().style, "text/heading/size", project::Json::parse(size),
                                        problems));
        test::forEachRow("balanced", project, [](const Swept& swept) {
            expectCountsBetween(swept);
            expectCountsBeside(swept);
        });
    }
}

// Chromium's balancing compares all ways to break. It can find one with fewer lines than greedy breaking,
// which ends a line early where the text before a soft hyphen fits, but not with the hyphen.
TEST(WrapPoints, FollowABalancedHeadingThatNeedsFewerLinesThanGreedy) {
    const std::string copy = R"([{"parts": [{"role": "heading", "copy":
        "sea or mudflat-i\u00adnhabitants"}]}])";
    auto project = test::projectOf(test::styleOf(R"({"columns": 1})", test::plainCard), "[{}]", copy,
                                   R"("range": {"from": 200, "to": 400}, )");
    project::Problems problems;
    ASSERT_TRUE(project::setSetting(project.row().style, "text/heading/size", 29.9, problems));
    const auto greedy = test::prepareRow(project);
    ASSERT_TRUE(project::setSetting(project.row().style, "text/heading/wrap", "balance", problems));
    const auto balanced = test::prepareRow(project);
    bool fewer = false;
    for (double width = 200; width < 400; width += 0.25)
        fewer = fewer || test::countsAt(balanced, width)[0] < test::countsAt(greedy, width)[0];
    EXPECT_TRUE(fewer);
    expectCountsBetween({"balanced", project, balanced});
    expectCountsBeside({"balanced", project, balanced});
}

/// Slack closer to the limit than this is not compared.
constexpr double hairOfSlack = 1e-9;

void expectTightFits(const Swept& swept) {
    const Sweep all = sweep(swept.row, swept.project.leastWidth, swept.project.mostWidth);
    std::mt19937 random(23);
    for (int i = 0; i < 1000; ++i) {
        const double width = test::somewhere(all.least, all.most, random);
        const layout::Layout laid = layout::layOut(swept.row, width);
        std::vector<bool> tight(laid.parts.size(), false);
        for (const TightFit& fit : all.tight)
            if (fit.widths.from <= width && width <= fit.widths.to)
                tight[test::indexOf(laid, fit.place.card, fit.place.part)] = true;
        for (std::size_t part = 0; part < laid.parts.size(); ++part) {
            const double slack = laid.parts[part].slack;
            if (std::abs(slack - text::tightSlack) < hairOfSlack) continue;
            ASSERT_EQ(tight[part], slack < text::tightSlack)
                << swept.name << ", part " << part << " at " << testing::PrintToString(width);
        }
    }
}

TEST(TightFits, AreWhereSlackIsBelowTheLimit) {
    test::forEachSample(expectTightFits);
    test::forEachRandomProject(expectTightFits);
}

}  // namespace
}  // namespace tenter::sweep
