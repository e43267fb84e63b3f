// What a line draws whose breaks divide letters that were shaped together. OpenType: each letter has a
// nominal glyph in `cmap`, which HarfBuzz reads. CSS Text 3 § 5.1: text is shaped as if each line stood
// alone, apart from the forms of letters that join across the break (CSS Text 3 § 5.4).
#include <gtest/gtest.h>
#include <hb.h>

#include "preparing.h"

namespace tenter::test {
namespace {

using text::Paragraph;

/// The glyphs of clusters [first, end) as they are drawn.
std::vector<std::uint32_t> drawn(const Paragraph& paragraph, std::uint32_t first, std::uint32_t end) {
    std::vector<std::uint32_t> ids;
    const std::vector<text::ReshapedCluster> reshaped = paragraph.reshaped(first, end);
    for (std::uint32_t i = first; i < end; ++i) {
        const text::Cluster& cluster = paragraph.clusters()[i];
        const auto own = std::ranges::find(reshaped, i, &text::ReshapedCluster::index);
        if (!cluster.visible) continue;
        if (own != reshaped.end())
            for (const text::Glyph& glyph : own->glyphs)
                ids.push_back(glyph.id);
        else
            for (std::uint32_t g = 0; g < cluster.glyphCount; ++g)
                ids.push_back(paragraph.glyphs()[cluster.firstGlyph + g].id);
    }
    return ids;
}

std::vector<std::uint32_t> nominal(const Paragraph& paragraph, const std::string& ascii) {
    std::vector<std::uint32_t> ids;
    for (const char letter : ascii) {
        hb_codepoint_t id = 0;
        EXPECT_TRUE(
            hb_font_get_nominal_glyph(paragraph.strut()->font(), static_cast<unsigned char>(letter), &id));
        ids.push_back(id);
    }
    return ids;
}

/// The width of a line as its clusters are drawn, CSS px, without its hyphen.
double drawnWidth(const Paragraph& paragraph, const text::Line& line, double size) {
    double ems = paragraph.ems(line.first, line.end);
    for (const text::ReshapedCluster& one : paragraph.reshaped(line.first, line.end))
        ems += one.advance - paragraph.clusters()[one.index].advance;
    return ems * size;
}

TEST(ReshapedLines, DrawEveryLetterOfALigatureThatABreakDivides) {
    // Lato has one glyph for `tf`, also across a soft hyphen.
    const auto paragraph = prepare("Gut\u00ADfeld", styleOf("Lato"));
    const auto lines = linesOf(*paragraph, at(16, 30));
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_NE(drawn(*paragraph, 0, lines[1].end), nominal(*paragraph, "Gutfeld"))
        << "no ligature: choose other letters";
    EXPECT_EQ(drawn(*paragraph, lines[0].first, lines[0].end), nominal(*paragraph, "Gut"));
    EXPECT_EQ(drawn(*paragraph, lines[1].first, lines[1].end), nominal(*paragraph, "feld"));
}

TEST(ReshapedLines, DrawEveryLetterWhereverAWordIsCut) {
    for (const text::BreakProfile* profile : text::profiles()) {
        const auto paragraph = Paragraph::prepare(plain("gutfeld"), styleOf("Lato"), fonts(), *profile);
        for (std::uint32_t first = 0; first < 7; ++first)
            for (std::uint32_t end = first + 1; end <= 7; ++end) {
                const std::string letters = std::string("gutfeld").substr(first, end - first);
                if (letters.find("tf") != std::string::npos) continue;
                EXPECT_EQ(drawn(*paragraph, first, end), nominal(*paragraph, letters))
                    << profile->name() << " " << letters;
            }
    }
}

TEST(ReshapedLines, KeepGlyphsWhereNoBreakDividesThem) {
    const auto paragraph = prepare("gut feld tf", styleOf("Lato"));
    for (const text::Line& line : linesOf(*paragraph, at(16, 30)))
        EXPECT_TRUE(paragraph->reshaped(line.first, line.end).empty());
}

TEST(ReshapedLines, AreAsWideAsTheLinesThatTheyDraw) {
    text::LineQuery query = at(16, 0);
    query.overflowWrap = project::OverflowWrap::Anywhere;
    std::size_t changed = 0;
    for (const char* copy :
         {"Auffassung und Tafeltypografie: AVATAR, Töftöf, fjord", "الملاحظات البحرية والطيور المهاجرة",
          "Waf\u00ADfel\u00ADwerk\u00ADstatt im Hof\u00ADfjord"}) {
        const auto paragraph = prepare(copy, styleOf(copy[0] == 'A' || copy[0] == 'W' ? "Lato" : "Amiri"));
        for (double width = 12; width < 120; width += 3.7) {
            query.available = width;
            for (const text::Line& line : linesOf(*paragraph, query)) {
                // A line of nothing but a soft hyphen draws only its hyphen.
                if (line.hyphen && line.end == line.first + 1) continue;
                changed += paragraph->reshaped(line.first, line.end).empty() ? 0 : 1;
                const double hyphen = line.hyphen ? paragraph->hyphenAdvanceBefore(line.end) * query.size : 0;
                EXPECT_NEAR(drawnWidth(*paragraph, line, query.size) + hyphen, line.width, 0.02)
                    << paragraph->utf8(line.first, line.end);
            }
        }
    }
    EXPECT_GT(changed, 50U);
}

}  // namespace
}  // namespace tenter::test
