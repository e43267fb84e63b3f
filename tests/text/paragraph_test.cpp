#include "text/paragraph.h"

#include <ft2build.h>
#include <gtest/gtest.h>
#include FT_FREETYPE_H

#include <random>

#include "preparing.h"

namespace tenter::text {
namespace {

using project::Run;

std::string textOf(const Paragraph& paragraph) {
    return paragraph.utf8(0, static_cast<std::uint32_t>(paragraph.clusters().size()));
}

ParagraphPtr prepareRuns(const project::Copy& copy, const ShapingStyle& style = test::styleOf("Vollkorn")) {
    return Paragraph::prepare(copy, style, test::fonts(), blink());
}

// CSS Text 3 § 4.1.1: white space collapses to one space, also across elements, and is removed at both ends
// of a line.
TEST(Paragraph, CollapsesWhiteSpaceAcrossRunsAndBesideForcedBreaks) {
    EXPECT_EQ(textOf(*test::prepare("  Low \t tide\n at  \r\n six ")), "Low tide at six");
    const ParagraphPtr runs = prepareRuns({{Run::Kind::Plain, "Bring ", ""},
                                           {Run::Kind::Strong, " boots ", ""},
                                           {Run::Kind::Plain, " and tea ", ""},
                                           {Run::Kind::Break, "", ""},
                                           {Run::Kind::Plain, " for two", ""}});
    EXPECT_EQ(textOf(*runs), "Bring boots and tea\nfor two");
    EXPECT_TRUE(test::prepare(" \n\t ")->empty());
}

// UAX #29 § 3: a base with its marks, and an emoji sequence with joiners, is one grapheme cluster.
TEST(Paragraph, CountsGraphemeClustersNotCodeUnits) {
    const ParagraphPtr paragraph = test::prepare("e\u0301a 👩\u200D🚀");
    EXPECT_EQ(paragraph->graphemes(0, static_cast<std::uint32_t>(paragraph->clusters().size())), 4U);
}

// FreeType reads the advance widths of OpenType's hmtx table independently of HarfBuzz.
TEST(Paragraph, HasTheAdvancesFreeTypeReads) {
    FT_Library library = nullptr;
    ASSERT_EQ(FT_Init_FreeType(&library), 0);
    for (const char* family : {"Vollkorn", "Karla", "Lato", "EB Garamond", "Amiri"}) {
        const FacePtr face = test::fonts().find({family}, 400, false).at(0);
        FT_Face other = nullptr;
        ASSERT_EQ(FT_New_Face(library, face->file().c_str(), static_cast<FT_Long>(face->index()), &other), 0);
        for (const char letter : {'a', 'M', 'i', 'g', '0', '&'}) {
            ASSERT_EQ(FT_Load_Char(other, static_cast<FT_ULong>(letter), FT_LOAD_NO_SCALE), 0);
            const double wanted =
                static_cast<double>(other->glyph->metrics.horiAdvance) / other->units_per_EM;
            const ParagraphPtr made = test::prepare(std::string(1, letter), test::styleOf(family));
            EXPECT_NEAR(made->ems(0, 1), wanted, 1e-9) << family << ' ' << letter;
        }
        FT_Done_Face(other);
    }
    FT_Done_FreeType(library);
}

// OpenType 1.9, GPOS `kern`; CSS Fonts 4 § 6.3: kerning is on by default, at any size in these engines.
TEST(Paragraph, Kerns) {
    const double together = test::prepare("AV")->ems(0, 2);
    const double apart = test::prepare("A")->ems(0, 1) + test::prepare("V")->ems(0, 1);
    EXPECT_LT(together, apart - 0.01);
}

// CSS Text 3 § 8.2: with letter spacing that is not zero, optional ligatures are off.
TEST(Paragraph, JoinsLettersOnlyWhereLigaturesAreOn) {
    ShapingStyle style = test::styleOf("EB Garamond");
    const std::size_t joined = test::prepare("fishing", style)->glyphs().size();
    style.ligatures = false;
    EXPECT_EQ(test::prepare("fishing", style)->glyphs().size(), 7U);
    EXPECT_LT(joined, 7U);
}

TEST(Paragraph, DrawsMissingCharactersFromAnotherFamilyAndNotesIt) {
    const ParagraphPtr paragraph = test::prepare("Low tide прилив", test::styleOf("Cabin"));
    ASSERT_EQ(paragraph->notes().size(), 1U);
    EXPECT_TRUE(paragraph->notes().front().says.starts_with(paragraph->notes().front().family +
                                                            " has no Cyrillic characters; "))
        << paragraph->notes().front().says;
    for (const Glyph& glyph : paragraph->glyphs())
        EXPECT_NE(glyph.id, 0U);
}

TEST(Paragraph, NotesNothingIfAnotherFamilyOfItsListDrawsThem) {
    ShapingStyle style = test::styleOf("Cabin");
    style.family = {"Cabin", "Noto Sans"};
    const ParagraphPtr named = test::prepare("Low tide прилив", style);
    EXPECT_TRUE(named->notes().empty()) << named->notes().front().says;
    const ParagraphPtr signs = test::prepare("tide \u2708", style);
    ASSERT_EQ(signs->notes().size(), 1U);
    EXPECT_TRUE(signs->notes().front().says.starts_with(signs->notes().front().family + " has no “\u2708”; "))
        << signs->notes().front().says;
}

// WHATWG Encoding § 4.1 and HTML § 13.2.3.5: bytes that are not UTF-8, and NUL, become U+FFFD.
TEST(Paragraph, ReplacesBytesThatAreNotUtf8) {
    EXPECT_EQ(textOf(*test::prepare("a\xFF"
                                    "b")),
              "a\uFFFDb");
    EXPECT_EQ(textOf(*test::prepare(std::string("a\0b", 3))), "a\uFFFDb");
    EXPECT_NE(textOf(*test::prepare("a\xED\xA0\x80"
                                    "b"))
                  .find("\uFFFD"),
              std::string::npos);
}

TEST(Paragraph, SurvivesAnyBytesAsCopy) {
    std::mt19937 random(7);
    for (int round = 0; round < 300; ++round) {
        std::string bytes;
        for (std::size_t length = random() % 60; length > 0; --length)
            bytes.push_back(static_cast<char>(random()));
        ShapingStyle style = test::styleOf("Lato");
        style.rightToLeft = round % 2 == 0;
        style.letterCase = static_cast<project::LetterCase>(round % 3);
        const ParagraphPtr paragraph = test::prepare(bytes, style);
        for (const double width : {0.0, 3.0, 80.0}) {
            text::LineQuery query = test::at(12, width);
            query.overflowWrap = project::OverflowWrap::Anywhere;
            std::uint32_t next = 0;
            for (const Line& line : test::linesOf(*paragraph, query)) {
                EXPECT_EQ(line.first, next);
                EXPECT_GT(line.next, line.first);
                next = line.next;
            }
            EXPECT_EQ(next, paragraph->clusters().size());
        }
    }
}

// UAX #9, rules L1 and L2: a number in Hebrew text runs left to right inside text that runs right to left.
TEST(Paragraph, GivesEveryClusterItsBidirectionalLevel) {
    ShapingStyle style = test::styleOf("Noto Sans Hebrew");
    style.rightToLeft = true;
    const ParagraphPtr paragraph = test::prepare("גאות 18:30", style);
    EXPECT_EQ(paragraph->clusters().front().level, 1);
    EXPECT_EQ(paragraph->clusters().back().level, 2);
}

// Unicode SpecialCasing.txt: ß becomes SS; in Turkish i becomes İ. CSS Text 3 § 2.1.1.
TEST(Paragraph, MapsCaseByLanguage) {
    ShapingStyle style = test::styleOf("Lato");
    style.letterCase = project::LetterCase::Uppercase;
    EXPECT_EQ(textOf(*test::prepare("Straße am Watt", style)), "STRASSE AM WATT");
    style.language = "tr";
    EXPECT_EQ(textOf(*test::prepare("kıyı gezisi", style)), "KIYI GEZİSİ");
    style.language = "en";
    style.letterCase = project::LetterCase::Capitalize;
    EXPECT_EQ(textOf(*test::prepare("shore walks at low tide", style)), "Shore Walks At Low Tide");
}

}  // namespace
}  // namespace tenter::text
