#include "text/fonts.h"

#include <gtest/gtest.h>
#include <woff2/encode.h>
#include <zlib.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <random>

#include "preparing.h"
#include "text/sfnt.h"

namespace tenter::text {
namespace {

std::string bytesOf(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

FacePtr face(const std::string& family, double weight = 400, bool italic = false) {
    return test::fonts().find({family}, weight, italic).at(0);
}

std::uint32_t number(const std::string& bytes, std::size_t at, int count) {
    std::uint32_t value = 0;
    for (int i = 0; i < count; ++i)
        value = value << 8 | static_cast<std::uint8_t>(bytes.at(at + i));
    return value;
}

void put(std::string& out, std::uint32_t value, int count) {
    for (int i = count - 1; i >= 0; --i)
        out.push_back(static_cast<char>(value >> (8 * i)));
}

/// A WOFF file by WOFF File Format 1.0 § 2; a table is compressed if that makes it smaller.
std::string asWoff(const std::string& sfnt) {
    const std::uint32_t tables = number(sfnt, 4, 2);
    std::string directory;
    std::string body;
    for (std::uint32_t i = 0; i < tables; ++i) {
        const std::size_t entry = 12 + 16 * i;
        const std::string table = sfnt.substr(number(sfnt, entry + 8, 4), number(sfnt, entry + 12, 4));
        uLongf length = compressBound(table.size());
        std::string packed(length, '\0');
        compress(reinterpret_cast<Bytef*>(packed.data()), &length,
                 reinterpret_cast<const Bytef*>(table.data()), table.size());
        packed.resize(length);
        if (packed.size() >= table.size()) packed = table;
        directory += sfnt.substr(entry, 4);
        put(directory, static_cast<std::uint32_t>(44 + 20 * tables + body.size()), 4);
        put(directory, static_cast<std::uint32_t>(packed.size()), 4);
        put(directory, static_cast<std::uint32_t>(table.size()), 4);
        put(directory, number(sfnt, entry + 4, 4), 4);
        body += packed;
        body.resize((body.size() + 3) / 4 * 4);
    }
    std::string woff = "wOFF" + sfnt.substr(0, 4);
    put(woff, static_cast<std::uint32_t>(44 + directory.size() + body.size()), 4);
    put(woff, tables, 2);
    put(woff, 0, 2);
    put(woff, static_cast<std::uint32_t>(sfnt.size()), 4);
    woff.resize(44);
    return woff + directory + body;
}

std::string asWoff2(const std::string& sfnt) {
    const auto* in = reinterpret_cast<const std::uint8_t*>(sfnt.data());
    std::size_t length = woff2::MaxWOFF2CompressedSize(in, sfnt.size());
    std::string out(length, '\0');
    if (!woff2::ConvertTTFToWOFF2(in, sfnt.size(), reinterpret_cast<std::uint8_t*>(out.data()), &length))
        return {};
    out.resize(length);
    return out;
}

// CSS Fonts 4 § 5.2, step 4: nearest weight, heavier first above 500, lighter first below 400.
TEST(Fonts, UseTheNearestWeightByTheRuleOfCssFonts) {
    EXPECT_EQ(face("Vollkorn", 700)->file().filename(), "Vollkorn-Bold.ttf");
    EXPECT_EQ(face("Vollkorn", 850)->file().filename(), "Vollkorn-Black.ttf");
    EXPECT_EQ(face("Vollkorn", 300)->file().filename(), "Vollkorn-Regular.ttf");
    EXPECT_EQ(face("Vollkorn", 450)->file().filename(), "Vollkorn-Medium.ttf");
    EXPECT_EQ(face("Vollkorn", 400, true)->file().filename(), "Vollkorn-Italic.ttf");
}

TEST(Fonts, NotesTheWeightAndSlantInUse) {
    std::vector<FontNote> notes;
    test::fonts().find({"Vollkorn"}, 250, false, &notes);
    ASSERT_EQ(notes.size(), 1U);
    EXPECT_EQ(notes[0].family, "Vollkorn");
    EXPECT_NE(notes[0].says.find("weight 250"), std::string::npos) << notes[0].says;
    notes.clear();
    test::fonts().find({"Vollkorn"}, 700, false, &notes);
    EXPECT_TRUE(notes.empty());
}

TEST(Fonts, NotesAMissingFamilyAndUsesTheNext) {
    std::vector<FontNote> notes;
    const auto faces = test::fonts().find({"No Such Family", "Lato"}, 400, false, &notes);
    ASSERT_FALSE(faces.empty());
    EXPECT_EQ(faces[0]->family(), "Lato");
    ASSERT_EQ(notes.size(), 1U);
    EXPECT_EQ(notes[0].says, notes[0].family + " was not found");
    // A missing family after one that exists is not noted.
    notes.clear();
    test::fonts().find({"Lato", "No Such Family"}, 400, false, &notes);
    EXPECT_TRUE(notes.empty());
}

// OpenType 1.9, fvar: a weight axis serves every weight in its range.
TEST(Fonts, SetsTheWeightAxisOfAVariableFont) {
    const FacePtr light = face("Inter", 310);
    const FacePtr heavy = face("Inter", 790);
    EXPECT_EQ(light->file(), heavy->file());
    EXPECT_EQ(light->weight(), 310);
    hb_codepoint_t glyph = 0;
    ASSERT_TRUE(hb_font_get_nominal_glyph(light->font(), 'n', &glyph));
    EXPECT_LT(hb_font_get_glyph_h_advance(light->font(), glyph),
              hb_font_get_glyph_h_advance(heavy->font(), glyph));
}

TEST(Fonts, DecodeWoffAndWoff2ToTheSameFont) {
    const std::filesystem::path folder = std::filesystem::path(testing::TempDir()) / "tenter-fonts";
    std::filesystem::create_directories(folder);
    const std::string sfnt = bytesOf(face("Vollkorn")->file());
    std::ofstream(folder / "one.woff", std::ios::binary) << asWoff(sfnt);
    std::ofstream(folder / "two.woff2", std::ios::binary) << asWoff2(sfnt);
    Fonts own;
    own.use({{"One", "one.woff", 400, 400, project::Slant::Normal, {}},
             {"Two", "two.woff2", 400, 400, project::Slant::Normal, {}}},
            folder);
    const std::string copy = "Tide tables, AV waffles";
    const double wanted = test::prepare(copy)->ems(0, 10);
    for (const char* family : {"One", "Two"}) {
        const ParagraphPtr made = Paragraph::prepare(test::plain(copy), test::styleOf(family), own, blink());
        EXPECT_DOUBLE_EQ(made->ems(0, 10), wanted) << family;
        EXPECT_TRUE(made->notes().empty()) << family;
    }
}

TEST(Fonts, SurviveAnyBytesAsAFontFile) {
    const std::string sfnt = bytesOf(face("Karla")->file());
    const std::vector<std::string> whole{sfnt, asWoff(bytesOf(face("Vollkorn")->file()))};
    std::mt19937 random(11);
    const std::filesystem::path folder = std::filesystem::path(testing::TempDir()) / "tenter-hostile";
    std::filesystem::create_directories(folder);
    for (int round = 0; round < 60; ++round) {
        std::string bytes = whole[round % 2].substr(0, random() % whole[round % 2].size());
        for (int i = 0; i < 40 && !bytes.empty(); ++i)
            bytes[random() % std::min<std::size_t>(bytes.size(), 400)] = static_cast<char>(random());
        std::ofstream(folder / "x.woff", std::ios::binary) << bytes;
        Fonts own;
        own.use({{"Broken", "x.woff", 400, 400, project::Slant::Normal, {}}}, folder);
        const ParagraphPtr made =
            Paragraph::prepare(test::plain("Low tide"), test::styleOf("Broken"), own, blink());
        EXPECT_EQ(made->utf8(0, static_cast<std::uint32_t>(made->clusters().size())), "Low tide");
    }
    EXPECT_FALSE(sfntBytes("").has_value());
    EXPECT_FALSE(sfntBytes("not a font at all").has_value());
}

}  // namespace
}  // namespace tenter::text
