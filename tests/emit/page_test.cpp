#include "emit/page.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

#include "css_reader.h"
#include "emit/data_address.h"
#include "emit/page_fonts.h"
#include "sample.h"

namespace tenter::emit {
namespace {

using tests::count;

namespace fs = std::filesystem;

/// A folder of the test's own, removed at its end.
class Folder {
public:
    Folder() {
        std::string name = (fs::temp_directory_path() / "tenter-page-XXXXXX").string();
        path_ = mkdtemp(name.data()) == nullptr ? "" : name;
    }
    ~Folder() {
        std::error_code error;
        fs::remove_all(path_, error);
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    void write(const std::string& name, const std::string& content) const {
        fs::create_directories((path_ / name).parent_path());
        std::ofstream(path_ / name, std::ios::binary) << content;
    }
    [[nodiscard]] const fs::path& path() const { return path_; }

private:
    fs::path path_;
};

std::string pageOf(const project::Project& project, const fs::path& folder, project::Problems& problems) {
    text::Fonts fonts;
    fonts.use(project.fonts, folder);
    text::ParagraphStore store(fonts);
    return page(project, 0, folder, store, problems);
}

std::string between(const std::string& text, const std::string& from, const std::string& to) {
    const std::size_t start = text.find(from) + from.size();
    return text.substr(start, text.find(to, start) - start);
}

// RFC 4648 § 10, test vectors.
TEST(Base64, AgreesWithItsSpecificationsVectors) {
    const std::pair<const char*, const char*> vectors[] = {{"", ""},
                                                           {"f", "Zg=="},
                                                           {"fo", "Zm8="},
                                                           {"foo", "Zm9v"},
                                                           {"foob", "Zm9vYg=="},
                                                           {"fooba", "Zm9vYmE="},
                                                           {"foobar", "Zm9vYmFy"}};
    for (const auto& [plain, encoded] : vectors)
        EXPECT_EQ(base64(plain), encoded);
}

// MIME Sniffing § 6.1, image type pattern matching; AVIF 1.1 § 6 for its brands.
TEST(PictureType, IsKnownByContent) {
    EXPECT_EQ(pictureType("\x89PNG\r\n\x1A\n...."), "image/png");
    EXPECT_EQ(pictureType("\xFF\xD8\xFF\xE0"), "image/jpeg");
    EXPECT_EQ(pictureType("GIF89a"), "image/gif");
    EXPECT_EQ(pictureType("RIFF....WEBPVP8 "), "image/webp");
    EXPECT_EQ(pictureType(std::string("\0\0\0\x1C", 4) + "ftypavif"), "image/avif");
    EXPECT_EQ(pictureType("<?xml version=\"1.0\"?>\n<!-- shore -->\n<svg xmlns=\"x\"/>"), "image/svg+xml");
    EXPECT_EQ(pictureType("<!doctype html><script>"), std::nullopt);
    EXPECT_EQ(pictureType(""), std::nullopt);
}

// CSS Fonts 4 § 4.5 and CSS Syntax 3 § 7.1.
TEST(UnicodeRange, JoinsNeighbours) {
    EXPECT_EQ(unicodeRange({U'A', U'B', U'C', U'é', char32_t{0x1F30A}}), "U+41-43, U+E9, U+1F30A");
}

// HTML § 13.1: what a document starts with, and that nothing on it is fetched or run.
TEST(Page, NeedsNothingBesideItself) {
    const Folder folder;
    folder.write("pictures/shore.png", "\x89PNG\r\n\x1A\n not decoded here");
    project::Problems problems;
    const std::string html = pageOf(tests::walks(), folder.path(), problems);
    EXPECT_TRUE(problems.empty());
    EXPECT_EQ(html.rfind("<!doctype html>\n<html lang=\"en\">", 0), 0U);
    EXPECT_EQ(count(html, "<script"), 0U);
    EXPECT_EQ(count(html, "<link"), 0U);
    EXPECT_EQ(count(html, "http://") + count(html, "https://"), 0U);
    EXPECT_EQ(count(html, "url("), count(html, "url(\"data:"));
    EXPECT_EQ(count(html, "src=\"data:image/png;base64,iVBORw0KGgog"), 2U);
}

TEST(Page, MarksCardsAndPartsWithTheirIndices) {
    const Folder folder;
    project::Problems problems;
    const std::string html = pageOf(tests::walks(), folder.path(), problems);
    EXPECT_EQ(count(html, " data-tenter-row>"), 1U);
    EXPECT_EQ(count(html, "data-tenter-card="), 2U);
    EXPECT_EQ(count(html, "data-tenter-part=\"1.3\""), 1U);
}

TEST(Page, ShowsAnEmptyPictureForAMissingFileAndReportsIt) {
    const Folder folder;
    project::Problems problems;
    const std::string html = pageOf(tests::walks(), folder.path(), problems);
    ASSERT_EQ(problems.size(), 2U);
    EXPECT_EQ(problems.front().place, "/cards/0/parts/0/picture");
    EXPECT_EQ(count(html, emptyPicture(1200, 800)), 2U);
}

TEST(Page, RefusesAFileThatIsNotAPicture) {
    const Folder folder;
    folder.write("pictures/shore.png", "<!doctype html><script>alert(1)</script>");
    project::Problems problems;
    pageOf(tests::walks(), folder.path(), problems);
    ASSERT_EQ(problems.size(), 2U);
    EXPECT_NE(problems.front().what.find("is not a PNG"), std::string::npos);
}

// CSS Fonts 4 § 4: the browser is to lay out with the files the measurement used, generic families too.
TEST(Page, DeclaresEveryFontItNames) {
    const Folder folder;
    project::Problems problems;
    const std::string html = pageOf(tests::walks(), folder.path(), problems);
    const tests::CssSheet sheet = tests::readCss(between(html, "<style>\n", "</style>"));
    ASSERT_TRUE(sheet.sound);
    std::string declared;
    for (const tests::CssRule& rule : sheet.rules)
        if (rule.selectors.front() == "@font-face") declared += rule.declarations.front().second;
    EXPECT_EQ(count(declared, "\"Vollkorn\""), 1U);
    const std::string body = tests::computed(sheet, ".walks-pair .walks-body", 800).at("font-family");
    EXPECT_EQ(body, "\"Tenter sans-serif\", sans-serif");
    EXPECT_GE(count(declared, "\"Tenter sans-serif\""), 1U);
    EXPECT_EQ(tests::computed(sheet, ".walks-pair .walks-heading", 800).at("font-family"),
              "\"Vollkorn\", serif");
}

// CSS Fonts 4 § 4.5: a face with a unicode-range draws no other characters.
TEST(Page, GivesMissingCharactersAFontForThemAlone) {
    const Folder folder;
    project::Project project = tests::walks();
    project.row().cards = {tests::saying("Tide \xE6\xBD\xAE")};  // the ideograph for tide, U+6F6E
    project.row().style.text.of("body").family = std::vector<std::string>{"Vollkorn", "serif"};
    project::Problems problems;
    const std::string html = pageOf(project, folder.path(), problems);
    EXPECT_EQ(count(html, "  unicode-range: U+6F6E;\n"), 1U);
    EXPECT_EQ(count(html, "font-family: \"Vollkorn\", \"Tenter fallback "), 1U);
    // Out of a collection comes a single font: CSS Fonts 4 § 4.3 reads only the first of one.
    EXPECT_EQ(count(html, "base64,dHRjZg"), 0U);
}

// Reading the page again must find the whole list. After the families that draw the texts, and before generic
// families, those others draw nothing.
TEST(Page, KeepsFamiliesThatDrawNoneOfItsTexts) {
    const Folder folder;
    project::Project project = tests::walks();
    project.row().cards = {tests::saying("\u05E9\u05DC\u05D5\u05DD")};
    project.row().style.text.of("body").family =
        std::vector<std::string>{"Karla", "Noto Sans Hebrew", "Lato", "serif"};
    project::Problems problems;
    const std::string html = pageOf(project, folder.path(), problems);
    const tests::CssSheet sheet = tests::readCss(between(html, "<style>\n", "</style>"));
    EXPECT_EQ(tests::computed(sheet, ".walks-pair .walks-body", 800).at("font-family"),
              "\"Tenter family Noto Sans Hebrew\", \"Karla\", \"Lato\", serif");
}

// CSS Fonts 4 § 5.2: of a family, the face nearest in style is used. The bold face of EB Garamond lacks the
// letter that its italic face draws; without a rule for the bold face, browsers draw bold text with the
// italic one.
TEST(Page, KeepsTextOfOneStyleFromTheFaceOfAnother) {
    using Kind = project::Run::Kind;
    const Folder folder;
    project::Project project = tests::walks();
    project::Card card = tests::saying("");
    std::get<project::TextPart>(card.parts.front()).copy = {{Kind::Plain, "m\u1ED9t ", ""},
                                                            {Kind::Emphasis, "m\u1ED9t", ""}};
    const std::string role = std::get<project::TextPart>(card.parts.front()).role;
    project.row().cards = {card};
    project.row().style.text.of(role).family = std::vector<std::string>{"Karla", "EB Garamond"};
    project.row().style.text.of(role).weight = 700;
    project::Problems problems;
    const std::string html = pageOf(project, folder.path(), problems);
    EXPECT_EQ(count(html, "  font-family: \"Tenter family EB Garamond\";\n"), 2U);
    EXPECT_EQ(count(html, "  font-weight: 700;\n  font-style: normal;\n  unicode-range: U+0;\n"), 1U);
}

TEST(Page, ScalesTheThemesRootByTheReadersPreference) {
    const Folder folder;
    project::Project project = tests::walks();
    project.page.rootSize = 10;
    project.page.readerSize = 24;
    project.page.scrollbar.always = true;
    project::Problems problems;
    const std::string html = pageOf(project, folder.path(), problems);
    EXPECT_EQ(count(html, "html {\n  font-size: 15px;\n  overflow-y: scroll;\n}"), 1U);
}

TEST(Page, KeepsItsOwnClassApartFromAVariants) {
    const Folder folder;
    project::Project project = tests::walks();
    project.row().variants[0].className = "container";
    project::Problems problems;
    EXPECT_EQ(count(pageOf(project, folder.path(), problems), "<div class=\"container-\">"), 1U);
}

// HTML § 13.2.5.2 to 13.2.5.4: a style element ends at its end tag, wherever it stands.
TEST(Page, EscapesHostileNames) {
    const Folder folder;
    std::mt19937 random(3);
    for (int i = 0; i < 5; ++i) {
        project::Project project = tests::randomProject(random);
        project.name = "</title><script>alert(1)</script>";
        project::Problems problems;
        const std::string html = pageOf(project, folder.path(), problems);
        EXPECT_EQ(count(html, "<script"), 0U);
        EXPECT_EQ(count(html, "</style>"), 1U);
        EXPECT_EQ(count(html, "</title>"), 1U);
        EXPECT_EQ(html.find('\0'), std::string::npos);
    }
}

}  // namespace
}  // namespace tenter::emit
