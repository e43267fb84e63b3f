// The verbs with which a row leaves the program: folder, and the forms of stylesheet.
#include <gtest/gtest.h>

#include <filesystem>

#include "process.h"

namespace tenter::tests {
namespace {

namespace fs = std::filesystem;

const std::string shore = TENTER_SAMPLES "/shore-walks.tenter.json";

TEST(FolderVerb, WritesTheFilesThatItLists) {
    const Folder folder;
    const std::string site = folder.file("site");
    const Finished finished = tenterCli({"folder", shore, "--into", site});
    ASSERT_EQ(finished.code, 0) << finished.err;
    EXPECT_EQ(finished.err, "");
    for (const char* name :
         {"index.html", "row.css", "page.css", "fonts.css", "pictures/low-tide-1200x800.jpg"}) {
        EXPECT_TRUE(fs::exists(fs::path(site) / name)) << name;
        EXPECT_NE(finished.out.find(std::string(name) + "  "), std::string::npos) << finished.out;
    }
    EXPECT_EQ(contentOf(site + "/row.css"), tenterCli({"stylesheet", shore}).out);
    // Again, in another form: the folder is replaced.
    ASSERT_EQ(tenterCli({"folder", shore, "--into", site, "--minified", "--no-fonts"}).code, 0);
    EXPECT_EQ(contentOf(site + "/row.css"), tenterCli({"stylesheet", shore, "--minified"}).out);
    EXPECT_FALSE(fs::exists(fs::path(site) / "fonts"));
    // And with the pictures themselves.
    ASSERT_EQ(tenterCli({"folder", shore, "--into", site, "--whole-pictures"}).code, 0);
    EXPECT_EQ(contentOf(site + "/pictures/low-tide.jpg"), contentOf(TENTER_SAMPLES "/pictures/low-tide.jpg"));
    EXPECT_FALSE(fs::exists(site + "/pictures/low-tide-1200x800.jpg"));
    EXPECT_EQ(contentOf(site + "/index.html").find("srcset"), std::string::npos);
    EXPECT_EQ(folder.names(), std::vector<std::string>{"site"});
}

TEST(FolderVerb, RefusesAFolderThatIsNotItsOwn) {
    const Folder folder;
    folder.write("mine.txt", "mine");
    const Finished finished = tenterCli({"folder", shore, "--into", folder.path().string()});
    EXPECT_EQ(finished.code, 2);
    EXPECT_EQ(finished.out, "");
    EXPECT_EQ(finished.errorLines(), 1U) << finished.err;
    EXPECT_NE(finished.err.find("\"mine.txt\", which Tenter did not write"), std::string::npos)
        << finished.err;
    EXPECT_EQ(folder.names(), std::vector<std::string>{"mine.txt"});
    EXPECT_EQ(tenterCli({"folder", shore}).code, 2);
}

TEST(StylesheetVerb, HasNoLayerForAnImportedRow) {
    const Folder folder;
    folder.write("page.html",
                 "<ul><li><h3>High water</h3><p>Twice a day.</p></li><li><h3>Low water</h3><p>When the "
                 "steps are dry.</p></li></ul>");
    const std::string imported = folder.file("imported.tenter.json");
    ASSERT_EQ(tenterCli({"adopt", shore, folder.file("page.html"), "--out", imported}).code, 0);
    const Finished refused = tenterCli({"stylesheet", imported, "--layer"});
    EXPECT_EQ(refused.code, 2);
    EXPECT_EQ(refused.errorLines(), 1U) << refused.err;
    const Finished own = tenterCli({"stylesheet", imported, "--layer", "--markup", "own"});
    EXPECT_EQ(own.code, 0) << own.err;
    EXPECT_NE(own.out.find("@layer walks {"), std::string::npos);
    const Finished moved = tenterCli({"stylesheet", imported, "--properties"});
    EXPECT_EQ(moved.code, 0) << moved.err;
    EXPECT_NE(moved.out.find("var(--walks-heading-font-size)"), std::string::npos) << moved.out;
}

TEST(StylesheetVerb, ReportsHowMuchLessLinesMove) {
    const Finished finished = tenterCli({"stylesheet", shore, "--late-fonts"});
    ASSERT_EQ(finished.code, 0) << finished.err;
    EXPECT_EQ(finished.errorLines(), 1U) << finished.err;
    EXPECT_NE(finished.err.find("with the fallback fonts, at "), std::string::npos) << finished.err;
    EXPECT_NE(finished.out.find("  size-adjust: "), std::string::npos);
    EXPECT_NE(finished.out.find("\"Vollkorn\", \"Vollkorn fallback\""), std::string::npos);
}

}  // namespace
}  // namespace tenter::tests
