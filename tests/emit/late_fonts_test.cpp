// Fallback fonts for the time until web fonts have loaded. CSS Fonts 5 § 4.
#include "emit/late_fonts.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "emit/sample.h"
#include "emit/stylesheet.h"

namespace tenter::emit {
namespace {

using Names = std::vector<std::string>;

struct Made {
    text::Fonts fonts;
    text::ParagraphStore store{fonts};
    LateFonts late;
    explicit Made(const project::Project& project) {
        fonts.use(project.fonts, TENTER_SOURCE_DIR "/sample-projects");
        late = lateFonts(project, project::everyVariant(project), store);
    }
};

/// Advance of `text` in em, summed from glyph to glyph without kerning.
double advanceOf(const text::Face& face, const std::u32string& text) {
    double sum = 0;
    for (const char32_t character : text) {
        hb_codepoint_t glyph = 0;
        EXPECT_TRUE(hb_font_get_nominal_glyph(face.font(), character, &glyph));
        sum += hb_font_get_glyph_h_advance(face.font(), glyph) / face.scale();
    }
    return sum;
}

TEST(LateFonts, HaveTheWidthOfTheTextsAndTheHeightsOfTheFont) {
    project::Project project = tests::walks();
    project.row().cards = {tests::saying("nnnnnnnn")};
    project.row().style.text.of("body").family = Names{"Karla", "sans-serif"};
    const Made made(project);
    ASSERT_EQ(made.late.fallbacks.size(), 1U);
    const LateFallback& one = made.late.fallbacks.front();
    EXPECT_EQ(one.of, "Karla");
    EXPECT_EQ(one.family, "Karla fallback");
    text::Fonts fonts;
    const double weight = one.face->weight();
    const text::FacePtr karla = fonts.find({"Karla"}, weight, false).front();
    const text::FacePtr local = fonts.find({one.localFamily}, weight, false).front();
    const double ratio = advanceOf(*karla, U"n") / advanceOf(*local, U"n");
    EXPECT_NEAR(one.sizeAdjust, ratio, 1e-4);
    // The overrides are shares of the size that size-adjust gives.
    EXPECT_NEAR(one.ascent * one.sizeAdjust, karla->ascent(), 1e-9);
    EXPECT_NEAR(one.descent * one.sizeAdjust, karla->descent(), 1e-9);
    EXPECT_EQ(made.late.project.row().style.text.find("body")->family,
              (Names{"Karla", "Karla fallback", "sans-serif"}));
}

TEST(LateFonts, MoveFewerLinesInEverySample) {
    double plain = 0;
    double adjusted = 0;
    for (const char* name : {"bird-counts", "ferry-words", "night-sky", "season", "shore-walks"}) {
        SCOPED_TRACE(name);
        const Made made(tests::shipped(name));
        EXPECT_FALSE(made.late.fallbacks.empty());
        for (const LateShift& shift : made.late.shifts) {
            plain += shift.plain;
            adjusted += shift.adjusted;
            EXPECT_LE(shift.adjusted, shift.plain + 0.02);
            EXPECT_LE(shift.adjustedHeight, shift.plainHeight + 0.5);
        }
    }
    EXPECT_GT(plain, 1);
    EXPECT_LT(adjusted, plain / 2);
}

TEST(LateFonts, AreThoseWithAFileIfTheProjectHasFiles) {
    project::Project project = tests::walks();
    project.row().style.text.of("body").family = Names{"Karla", "Cabin", "sans-serif"};
    const Names all = lateFamilies(project);
    EXPECT_NE(std::ranges::find(all, "Karla"), all.end());
    EXPECT_NE(std::ranges::find(all, "Cabin"), all.end());
    EXPECT_EQ(std::ranges::find(all, "sans-serif"), all.end());
    project.fonts = {{"Cabin", "cabin.ttf", 400, 400, project::Slant::Normal, {}}};
    EXPECT_EQ(lateFamilies(project), Names{"Cabin"});
}

// A character that the web font lacks must not be drawn with its fallback.
TEST(LateFonts, AreLimitedToTheCharactersOfTheFontIfItLacksSome) {
    project::Project project = tests::walks();
    project.row().style.text.of("body").family = Names{"Karla", "sans-serif"};
    project.row().cards = {tests::saying("Low tide")};
    EXPECT_TRUE(Made(project).late.fallbacks.front().characters.empty());
    project.row().cards = {tests::saying("Low tide \xE2\x98\x85")};
    const LateFallback limited = Made(project).late.fallbacks.front();
    EXPECT_TRUE(limited.characters.contains(U'L'));
    EXPECT_FALSE(limited.characters.contains(U'\u2605'));
    EXPECT_NE(limited.css(false).find("unicode-range: U+20,"), std::string::npos) << limited.css(false);
}

// A Latin font cannot stand in for an Arabic one.
TEST(LateFonts, HaveTheCharactersOfTheTexts) {
    const Made made(tests::shipped("marsh-ar"));
    ASSERT_FALSE(made.late.fallbacks.empty());
    text::Fonts fonts;
    for (const LateFallback& one : made.late.fallbacks) {
        if (one.local.empty()) continue;
        const text::FacePtr local = fonts.find({one.localFamily}, one.face->weight(), false).front();
        EXPECT_TRUE(local->has(U'\u062C')) << one.of;
    }
    EXPECT_EQ(made.late.fallbacks.size(), static_cast<std::size_t>(std::ranges::count_if(
                                              lateFontSentences(made.late), [](const std::string& says) {
                                                  return says.starts_with("No fallback font");
                                              })));
}

TEST(LateFonts, StandBeforeTheRulesOfTheSheet) {
    const project::Project project = tests::shipped("shore-walks");
    Made made(project);
    StylesheetOptions options;
    options.fontRules = lateFontRules(made.late, true, false);
    const std::string css = stylesheet(made.late.project, options);
    EXPECT_LT(css.find("@font-face"), css.find("\n.walks-trio {"));
    EXPECT_NE(css.find("\"Vollkorn\", \"Vollkorn fallback\""), std::string::npos);
    EXPECT_NE(css.find("  size-adjust: "), std::string::npos);
    EXPECT_EQ(lateFontRules(made.late, false, true).find('\n'), std::string::npos);
}

}  // namespace
}  // namespace tenter::emit
