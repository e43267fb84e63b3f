// The page folder: real markup, only files of its own, and only fonts that allow it.
#include "emit/page_folder.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <fstream>
#include <regex>
#include <set>

#include "emit/sample.h"
#include "project/file.h"
#include "text/embedding.h"

namespace tenter::emit {
namespace {

namespace fs = std::filesystem;

const fs::path samples = TENTER_SOURCE_DIR "/sample-projects";

PageFolder folderOf(const project::Project& project, const fs::path& at, PageFolderOptions options = {}) {
    text::Fonts fonts;
    fonts.use(project.fonts, at);
    text::ParagraphStore store(fonts);
    project::Problems problems;
    options.sheet.unit = project.unit;
    auto folder = pageFolder(project, at, options, store, problems);
    EXPECT_TRUE(folder.has_value());
    EXPECT_TRUE(problems.empty()) << problems.front().line();
    return folder.value_or(PageFolder{});
}

const project::FolderFile* find(const PageFolder& folder, const std::string& name) {
    for (const project::FolderFile& file : folder.files)
        if (file.name == name) return &file;
    return nullptr;
}

std::string contentOf(const PageFolder& folder, const std::string& name) {
    const project::FolderFile* file = find(folder, name);
    EXPECT_NE(file, nullptr) << name;
    return file == nullptr ? "" : file->content;
}

/// Every address that HTML or CSS of the folder requests.
std::vector<std::string> requests(const PageFolder& folder) {
    static const std::regex address(R"re((?:src|href)="([^"#]*)"|url\("([^"]*)"\))re");
    std::vector<std::string> found;
    for (const project::FolderFile& file : folder.files) {
        const bool css = file.name.ends_with(".css");
        if (!css && !file.name.ends_with(".html")) continue;
        for (std::sregex_iterator at(file.content.begin(), file.content.end(), address), end; at != end; ++at)
            if (css || (*at)[0].str().starts_with("src") || (*at)[1].str().ends_with(".css"))
                found.push_back((*at)[1].str() + (*at)[2].str());
    }
    return found;
}

TEST(PageFolder, OfEverySampleRequestsOnlyItsOwnFiles) {
    for (const char* name :
         {"bird-counts", "ferry-words", "marsh-ar", "night-sky", "season", "shore-walks"}) {
        SCOPED_TRACE(name);
        const project::Project project = tests::shipped(name);
        const PageFolder folder = folderOf(project, samples);
        const std::vector<std::string> all = requests(folder);
        EXPECT_GE(all.size(), 4U);
        for (const std::string& address : all)
            EXPECT_NE(find(folder, address), nullptr) << address;
        for (const project::FolderFile& file : folder.files)
            EXPECT_GT(file.size(), 0U) << file.name;
    }
}

TEST(PageFolder, HasLanguageHeadingLevelsAndAlternativeText) {
    const project::Project project = tests::shipped("shore-walks");
    const std::string page = contentOf(folderOf(project, samples), "index.html");
    EXPECT_NE(page.find("<html lang=\"en\">"), std::string::npos);
    EXPECT_NE(page.find("<h1 class=\"unseen\">Shore walks</h1>"), std::string::npos);
    EXPECT_NE(page.find("<h2 class=\"unseen\">"), std::string::npos);
    EXPECT_EQ(tests::count(page, "<h3 class=\"walks-heading\">"), project.row().cards.size());
    EXPECT_EQ(tests::count(page, "<img "), tests::count(page, " alt=\""));
    EXPECT_NE(page.find("alt=\"A sandy path between tufts of marram grass\""), std::string::npos);
    EXPECT_EQ(page.find("<script"), std::string::npos);
    EXPECT_EQ(page.find("style>"), std::string::npos);
    const std::string arabic = contentOf(folderOf(tests::shipped("marsh-ar"), samples), "index.html");
    EXPECT_NE(arabic.find("<html lang=\"ar\" dir=\"rtl\">"), std::string::npos);
}

TEST(PageFolder, HasTheStylesheetThatIsPasted) {
    const project::Project project = tests::shipped("shore-walks");
    StylesheetOptions options;
    options.unit = project.unit;
    EXPECT_EQ(contentOf(folderOf(project, samples), "row.css"), stylesheet(project, options));
}

TEST(PageFolder, CopiesAPictureOnceAndKeepsNamesApart) {
    project::Project project = tests::walks();
    std::string name = (fs::temp_directory_path() / "tenter-pictures-XXXXXX").string();
    ASSERT_NE(mkdtemp(name.data()), nullptr);
    const fs::path at = name;
    for (const char* file : {"a/dune one.png", "b/Dune One.png"}) {
        fs::create_directories((at / file).parent_path());
        std::ofstream(at / file, std::ios::binary) << "\x89PNG\r\n\x1A\n";
    }
    std::get<project::PicturePart>(project.row().cards[0].parts[0]).file = "a/dune one.png";
    std::get<project::PicturePart>(project.row().cards[1].parts[0]).file = "b/Dune One.png";
    project.row().cards.push_back(project.row().cards[0]);
    const PageFolder folder = folderOf(project, at);
    EXPECT_NE(find(folder, "pictures/dune one.png"), nullptr);
    EXPECT_NE(find(folder, "pictures/Dune One-2.png"), nullptr);
    const std::string page = contentOf(folder, "index.html");
    EXPECT_EQ(tests::count(page, "src=\"pictures/dune%20one.png\""), 2U);
    EXPECT_EQ(tests::count(page, "src=\"pictures/Dune%20One-2.png\""), 1U);
    fs::remove_all(at);
}

/// A folder that is removed with its content.
class OwnFolder {
public:
    OwnFolder() {
        std::string name = (fs::temp_directory_path() / "tenter-folder-XXXXXX").string();
        path_ = mkdtemp(name.data());
    }
    ~OwnFolder() { fs::remove_all(path_); }
    OwnFolder(const OwnFolder&) = delete;
    OwnFolder& operator=(const OwnFolder&) = delete;
    [[nodiscard]] fs::path file(const std::string& name) const { return path_ / name; }

private:
    fs::path path_;
};

/// A page folder with cut pictures, and what it was made from.
struct CutFolder {
    explicit CutFolder(const project::Project& project, const fs::path& at)
        : cuts(project, at, 0, store, text::defaultProfile()) {
        project::Problems problems;
        isWritten = cuts.write(site.file("site"), problems);
        EXPECT_TRUE(problems.empty()) << problems.front().line();
        PageFolderOptions options;
        options.cuts = &cuts;
        const auto made = pageFolder(project, at, options, store, problems);
        EXPECT_TRUE(made.has_value());
        if (made) folder = *made;
        EXPECT_TRUE(project::replaceFolder(site.file("site"), folder.files, problems));
        EXPECT_TRUE(problems.empty()) << problems.front().line();
    }

    OwnFolder site;
    text::Fonts fonts;
    text::ParagraphStore store{fonts};
    FolderCuts cuts;
    bool isWritten = false;
    PageFolder folder;
};

TEST(PageFolder, HasPicturesCutToTheirSlots) {
    const project::Project project = tests::shipped("season");
    const CutFolder made(project, samples);
    ASSERT_TRUE(made.isWritten);
    const std::string page = contentOf(made.folder, "index.html");
    EXPECT_EQ(tests::count(page, "<img "), project.row().cards.size());
    EXPECT_EQ(tests::count(page, " srcset=\"pictures/"), project.row().cards.size());
    EXPECT_EQ(tests::count(page, " sizes=\"(max-width: "), project.row().cards.size());
    static const std::regex candidate(R"re((pictures/[^ "]*) (\d+)w)re");
    std::set<std::string> offered;
    for (std::sregex_iterator at(page.begin(), page.end(), candidate), end; at != end; ++at) {
        offered.insert((*at)[1].str());
        // No picture of the sample is wider; the widest slot has 491.6 px.
        EXPECT_LE(std::stoi((*at)[2].str()), 1200);
        EXPECT_TRUE(fs::exists(made.site.file("site/" + (*at)[1].str()))) << (*at)[1].str();
    }
    // Every picture of the folder is offered, and none is there whole.
    for (const project::FolderFile& file : made.folder.files)
        EXPECT_TRUE(!file.name.starts_with("pictures/") || offered.contains(file.name)) << file.name;
    EXPECT_FALSE(fs::exists(made.site.file("site/pictures/dunes.jpg")));
    EXPECT_GE(offered.size(), 3 * project.row().cards.size());
}

// Only what can be cut is cut: a vector drawing is shipped as it is, without a word.
TEST(PageFolder, KeepsVectorDrawings) {
    const OwnFolder at;
    std::ofstream(at.file("own.svg")) << "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 3 2\"/>";
    project::Project project = tests::shipped("shore-walks");
    std::get<project::PicturePart>(project.row().cards[0].parts[0]).file = at.file("own.svg").string();
    const CutFolder made(project, samples);
    EXPECT_NE(find(made.folder, "pictures/own.svg"), nullptr);
    EXPECT_EQ(tests::count(contentOf(made.folder, "index.html"), " srcset="), project.row().cards.size() - 1);
}

TEST(PageFolder, LeavesNothingBehindIfPicturesCannotBeCut) {
    const OwnFolder at;
    fs::copy_file(samples / "pictures/dunes.jpg", at.file("torn.jpg"));
    fs::resize_file(at.file("torn.jpg"), 40000);
    project::Project project = tests::shipped("shore-walks");
    std::get<project::PicturePart>(project.row().cards[0].parts[0]).file = at.file("torn.jpg").string();
    text::Fonts fonts;
    text::ParagraphStore store(fonts);
    project::Problems problems;
    {
        FolderCuts cuts(project, samples, 0, store, text::defaultProfile());
        EXPECT_FALSE(cuts.write(at.file("site"), problems));
    }
    ASSERT_EQ(problems.size(), 1U);
    EXPECT_NE(problems[0].line().find("truncated"), std::string::npos) << problems[0].line();
    EXPECT_EQ(std::distance(fs::directory_iterator(at.file(".")), fs::directory_iterator()), 1);
}

TEST(PageFolder, ShowsAnEmptyPictureForAMissingOneAndReportsIt) {
    project::Project project = tests::walks();
    std::get<project::PicturePart>(project.row().cards[0].parts[0]).file = "none.png";
    text::Fonts fonts;
    text::ParagraphStore store(fonts);
    project::Problems problems;
    const auto folder = pageFolder(project, "/nowhere", {}, store, problems);
    ASSERT_TRUE(folder.has_value());
    ASSERT_FALSE(problems.empty());
    EXPECT_EQ(problems[0].place, "/cards/0/parts/0/picture");
    EXPECT_NE(contentOf(*folder, "index.html").find("src=\"data:image/svg+xml"), std::string::npos);
}

TEST(PageFolder, LeavesOutFontsWhenAsked) {
    PageFolderOptions options;
    options.fonts = false;
    const PageFolder folder = folderOf(tests::shipped("shore-walks"), samples, options);
    EXPECT_EQ(find(folder, "fonts.css"), nullptr);
    for (const project::FolderFile& file : folder.files)
        EXPECT_FALSE(file.name.starts_with("fonts/")) << file.name;
    ASSERT_FALSE(folder.fonts.empty());
    for (const ShippedFont& font : folder.fonts)
        EXPECT_TRUE(font.file.empty());
    EXPECT_NE(folderList(folder).find("Without the font Vollkorn: it is left out, as asked."),
              std::string::npos)
        << folderList(folder);
}

std::uint32_t at32(const std::string& bytes, std::size_t offset) {
    std::uint32_t value = 0;
    for (std::size_t i = 0; i < 4; ++i)
        value = value << 8U | static_cast<unsigned char>(bytes[offset + i]);
    return value;
}

/// A font file with another fsType. OpenType 1.9, table directory and OS/2.
std::string withPermission(std::string font, unsigned type) {
    const auto tables = static_cast<unsigned char>(font[5]) + static_cast<unsigned char>(font[4]) * 256U;
    for (std::size_t i = 0; i < tables; ++i) {
        const std::size_t entry = 12 + 16 * i;
        if (font.compare(entry, 4, "OS/2") != 0) continue;
        const std::size_t offset = at32(font, entry + 8) + 8;
        font[offset] = static_cast<char>(type >> 8U);
        font[offset + 1] = static_cast<char>(type & 0xFFU);
    }
    return font;
}

TEST(PageFolder, IncludesOnlyFontsThatAllowIt) {
    std::string name = (fs::temp_directory_path() / "tenter-fonts-XXXXXX").string();
    ASSERT_NE(mkdtemp(name.data()), nullptr);
    const fs::path at = name;
    text::Fonts system;
    const std::string bytes = system.find({"Karla"}, 400, false).front()->bytes();
    const auto permission = [&](unsigned type) {
        std::ofstream(at / "own.ttf", std::ios::binary) << withPermission(bytes, type);
        text::Fonts fonts;
        fonts.use({{"Own", "own.ttf", 400, 400, project::Slant::Normal, {}}}, at);
        return text::embeddingOf(*fonts.find({"Own"}, 400, false).front());
    };
    EXPECT_EQ(permission(0), text::Embedding::Installable);
    EXPECT_EQ(permission(0x0100), text::Embedding::Installable);  // no subsets: whole files are shipped
    EXPECT_EQ(permission(2), text::Embedding::Restricted);
    EXPECT_EQ(permission(4), text::Embedding::PreviewAndPrint);
    EXPECT_EQ(permission(8), text::Embedding::Editable);
    EXPECT_EQ(permission(2 | 8), text::Embedding::Editable);
    EXPECT_EQ(permission(0x0200), text::Embedding::BitmapsOnly);

    project::Project project = tests::walks();
    project.fonts = {{"Own", "own.ttf", 400, 400, project::Slant::Normal, {}}};
    project.row().cards = {tests::saying("Low tide")};
    project.row().style.text.of("body").family = {"Own"};
    permission(2);
    const PageFolder without = folderOf(project, at);
    EXPECT_EQ(find(without, "fonts.css"), nullptr);
    EXPECT_NE(folderList(without).find("Without the font Own: it must not be embedded."), std::string::npos);
    permission(0);
    const PageFolder with = folderOf(project, at);
    EXPECT_NE(find(with, "fonts/own-400.ttf"), nullptr);
    EXPECT_NE(contentOf(with, "fonts.css").find("url(\"fonts/own-400.ttf\") format(\"truetype\")"),
              std::string::npos);
    fs::remove_all(at);
}

}  // namespace
}  // namespace tenter::emit
