// Plans and files: what is written, kept, refused and left alone.
#include <sys/resource.h>

#include <algorithm>
#include <csignal>
#include <mutex>
#include <set>

#include "../sweep/sweeping.h"
#include "drawn.h"
#include "pictures/listing.h"

namespace tenter::pictures {
namespace {

namespace fs = std::filesystem;
using test::bytesOf;
using test::samplePictures;

class Cuts : public ::testing::Test {
protected:
    void SetUp() override {
        fs::copy_file(samplePictures / "ferry.jpg", folder_.file("ferry.jpg"));
        fs::copy_file(samplePictures / "dunes.jpg", folder_.file("dunes.jpg"));
    }

    /// A row with these files, one in each card, in slots of 3:2.
    project::Project rowOf(const std::vector<std::string>& files, const std::string& more = "") const {
        std::string cards;
        for (const std::string& file : files)
            cards += (cards.empty() ? "" : ",") + std::string(R"({"parts": [{"picture": ")") + file +
                     R"(", "alt": "A picture")" + more + "}]}";
        project::Problems problems;
        const auto project = project::parse(
            R"({"format": "tenter-project", "version": 1, "name": "cuts", "language": "en",
                "range": {"from": 320, "to": 1600},
                "style": {"picture": {"ratio": "3/2"}}, "cards": [)" +
                cards +
                R"(], "variants": [{"class": "pair", "bands": [{"upTo": 700, "set": {"row": {"columns": 1}}},
                                                                     {"set": {"row": {"columns": 2}}}]},
                                          {"class": "trio", "bands": [{"set": {"row": {"columns": 3}}}]}]})",
            "cuts", {}, problems);
        for (const project::Problem& problem : problems)
            ADD_FAILURE() << problem.line();
        return project.value_or(project::Project{});
    }
    CutPlan plan(const project::Project& project, const CutOptions& options = {}) const {
        return planCuts(project, folder_.path(), test::sweepStore(), text::defaultProfile(), options);
    }
    [[nodiscard]] fs::path into() const { return folder_.file("cut"); }
    CutResult write(const CutPlan& plan, const project::Project& project, const std::stop_token& stop = {},
                    const std::function<void(const CutProgress&)>& progress = {}) const {
        return writeCuts(plan, project, into(), stop, progress);
    }
    std::set<std::string> names() const {
        std::set<std::string> names;
        if (fs::exists(into()))
            for (const auto& entry : fs::directory_iterator(into()))
                names.insert(entry.path().filename().string());
        return names;
    }

    test::TestFolder folder_;
};

std::set<std::string> namesOf(const CutPlan& plan) {
    std::set<std::string> names{listingName};
    for (const CutPicture& picture : plan.pictures)
        for (const CutFile& file : picture.files)
            names.insert(file.name);
    return names;
}

TEST_F(Cuts, AreNeverLargerThanTheSource) {
    const project::Project project = rowOf({"ferry.jpg", "dunes.jpg"});
    const CutPlan all = plan(project);
    ASSERT_EQ(all.pictures.size(), 2U);
    EXPECT_TRUE(all.problems.empty());
    for (const CutPicture& picture : all.pictures) {
        EXPECT_NEAR(picture.crop.width * 1.0 / picture.crop.height, 1.5, 0.01);
        EXPECT_LE(picture.files.size(), 4U);
        for (const CutFile& file : picture.files) {
            EXPECT_LE(file.size.width, picture.crop.width);
            EXPECT_LE(file.size.height, picture.crop.height);
            EXPECT_NEAR(file.size.width / 1.5, file.size.height, 0.51);
        }
    }
    // The slot is 700 px wide where columns stack, so 1400 px are asked, but the source has 900.
    EXPECT_EQ(all.pictures[1].sizes.back().width, 900);
    EXPECT_TRUE(all.pictures[1].isTooSmall);
}

TEST_F(Cuts, AreWrittenAsPlanned) {
    const project::Project project = rowOf({"ferry.jpg", "dunes.jpg"});
    CutOptions options;
    options.formats = {Format::Jpeg, Format::WebP};
    options.candidates = 3;
    const CutPlan all = plan(project, options);
    std::vector<std::size_t> done;
    const CutResult result = write(all, project, {}, [&](const CutProgress& progress) {
        done.push_back(progress.done);
        EXPECT_EQ(progress.total, all.fileCount());
    });
    EXPECT_TRUE(result.isComplete);
    EXPECT_TRUE(result.problems.empty());
    EXPECT_EQ(names(), namesOf(all));
    ASSERT_EQ(result.files.size(), all.fileCount());
    std::vector<std::size_t> wanted(all.fileCount());
    for (std::size_t i = 0; i < wanted.size(); ++i)
        wanted[i] = i + 1;
    EXPECT_EQ(done, wanted);
    std::size_t next = 0;
    for (const CutPicture& picture : all.pictures)
        for (const CutFile& file : picture.files) {
            EXPECT_EQ(result.files[next].name, file.name);
            EXPECT_EQ(result.files[next].bytes, fs::file_size(into() / file.name));
            ++next;
            EXPECT_EQ(readInfo(into() / file.name).value->size, file.size);
        }
}

TEST_F(Cuts, ThatAreUpToDateAreKept) {
    const project::Project project = rowOf({"ferry.jpg", "dunes.jpg"});
    const CutPlan all = plan(project);
    ASSERT_TRUE(write(all, project).isComplete);
    const auto isKept = [](const WrittenFile& file) { return file.isKept; };
    EXPECT_TRUE(std::ranges::all_of(write(all, project).files, isKept));
    EXPECT_EQ(upToDate(all, into()), std::vector<bool>(all.fileCount(), true));

    const std::string gone = all.pictures[0].files[1].name;
    fs::remove(into() / gone);
    test::writeBytes(into() / all.pictures[1].files[0].name, "not whole");
    CutResult again = write(all, project);
    EXPECT_EQ(std::ranges::count_if(again.files, isKept), static_cast<long>(all.fileCount()) - 2);
    EXPECT_TRUE(readInfo(into() / gone).value.has_value());
    EXPECT_TRUE(readInfo(into() / all.pictures[1].files[0].name).value.has_value());

    CutOptions other;
    other.quality = 40;
    EXPECT_EQ(upToDate(plan(project, other), into()), std::vector<bool>(all.fileCount(), false));
    // A source that has changed is cut again, its neighbour is not.
    fs::copy_file(samplePictures / "creek.jpg", folder_.file("ferry.jpg"),
                  fs::copy_options::overwrite_existing);
    again = write(plan(project), project);
    EXPECT_EQ(std::ranges::count_if(again.files, isKept), static_cast<long>(all.pictures[1].files.size()));
}

TEST_F(Cuts, StopAfterAFileAndGoOnLater) {
    const project::Project project = rowOf({"ferry.jpg", "dunes.jpg"});
    const CutPlan all = plan(project);
    std::stop_source stop;
    CutResult result = write(all, project, stop.get_token(), [&](const CutProgress& progress) {
        if (progress.done == 2) stop.request_stop();
    });
    EXPECT_TRUE(result.isStopped);
    EXPECT_FALSE(result.isComplete);
    EXPECT_GE(result.files.size(), 2U);
    EXPECT_LT(result.files.size(), all.fileCount());
    for (const std::string& name : names())
        EXPECT_TRUE(name == listingName || readSource(into() / name).value.has_value()) << name;
    const std::size_t before = result.files.size();
    result = write(all, project);
    EXPECT_TRUE(result.isComplete);
    EXPECT_EQ(std::ranges::count_if(result.files, [](const WrittenFile& file) { return file.isKept; }),
              static_cast<long>(before));
    stop = {};
    stop.request_stop();
    EXPECT_TRUE(
        planCuts(project, folder_.path(), test::sweepStore(), text::defaultProfile(), {}, stop.get_token())
            .isCancelled);
}

TEST_F(Cuts, NeverOverwriteASource) {
    // The folder of the sources has a picture with the name of a cut one.
    const std::string taken = plan(rowOf({"ferry.jpg"})).pictures[0].files[0].name;
    fs::copy_file(samplePictures / "dunes.jpg", folder_.file(taken));
    const std::string before = bytesOf(folder_.file(taken));
    const project::Project project = rowOf({"ferry.jpg", taken});
    const CutPlan all = plan(project);
    fs::create_directory_symlink(folder_.path(), folder_.file("link"));
    fs::create_directory(folder_.file("other"));
    fs::create_symlink(folder_.file(taken), folder_.file("other") / taken);
    fs::create_directory(folder_.file("hard"));
    fs::create_hard_link(folder_.file(taken), folder_.file("hard") / taken);
    for (const fs::path& into :
         {folder_.path(), folder_.file("link"), folder_.file("other"), folder_.file("hard")}) {
        const CutResult result = writeCuts(all, project, into);
        EXPECT_FALSE(result.isComplete) << into;
        EXPECT_TRUE(result.files.empty());
        ASSERT_EQ(result.problems.size(), 1U);
        EXPECT_NE(result.problems[0].what.find("picture of the project"), std::string::npos);
    }
    EXPECT_EQ(bytesOf(folder_.file(taken)), before);
}

TEST_F(Cuts, LeaveOtherFilesAlone) {
    fs::create_directory(into());
    test::writeBytes(into() / listingName, R"({"holiday": 2019})");
    const project::Project project = rowOf({"ferry.jpg"});
    const CutResult result = write(plan(project), project);
    EXPECT_FALSE(result.isComplete);
    ASSERT_EQ(result.problems.size(), 1U);
    EXPECT_EQ(bytesOf(into() / listingName), R"({"holiday": 2019})");
    EXPECT_EQ(names(), (std::set<std::string>{listingName}));
}

TEST_F(Cuts, SayThatAFolderCannotBeMade) {
    const project::Project project = rowOf({"ferry.jpg"});
    const CutResult result = writeCuts(plan(project), project, folder_.file("ferry.jpg") / "cut");
    EXPECT_FALSE(result.isComplete);
    ASSERT_EQ(result.problems.size(), 1U);
    EXPECT_NE(result.problems[0].what.find("folder"), std::string::npos);
}

// A file may grow no further, as on a full disk.
TEST_F(Cuts, LeaveNothingHalfWrittenOnAFullDisk) {
    const project::Project project = rowOf({"ferry.jpg", "dunes.jpg"});
    const CutPlan all = plan(project);
    const auto handler = std::signal(SIGXFSZ, SIG_IGN);
    rlimit before{};
    ASSERT_EQ(getrlimit(RLIMIT_FSIZE, &before), 0);
    const rlimit small{2000, before.rlim_max};
    ASSERT_EQ(setrlimit(RLIMIT_FSIZE, &small), 0);
    const CutResult result = write(all, project);
    setrlimit(RLIMIT_FSIZE, &before);
    std::signal(SIGXFSZ, handler);
    EXPECT_FALSE(result.isComplete);
    ASSERT_FALSE(result.problems.empty());
    EXPECT_EQ(names(), std::set<std::string>{});
    EXPECT_TRUE(write(all, project).isComplete);
}

TEST_F(Cuts, OfUnreadablePicturesAreReportedAndTheOthersWritten) {
    test::writeBytes(folder_.file("cut.jpg"), bytesOf(samplePictures / "creek.jpg").substr(0, 20000));
    test::writeBytes(folder_.file("text.jpg"), "no picture");
    const project::Project project = rowOf({"ferry.jpg", "cut.jpg", "text.jpg", "none.jpg"});
    const CutPlan all = plan(project);
    ASSERT_EQ(all.problems.size(), 2U);
    EXPECT_EQ(all.problems[0].place, "/cards/2/parts/0/picture");
    EXPECT_EQ(all.problems[1].place, "/cards/3/parts/0/picture");
    const CutResult result = write(all, project);
    EXPECT_FALSE(result.isComplete);
    EXPECT_EQ(result.files.size(), all.pictures[0].files.size());
    ASSERT_EQ(result.problems.size(), 1U);
    EXPECT_NE(result.problems[0].what.find("truncated"), std::string::npos);
    const auto listing = listingIn(into());
    ASSERT_TRUE(listing.has_value());
    EXPECT_NE(listing->find("pair", 0, 0), nullptr);
    EXPECT_EQ(listing->find("pair", 1, 0), nullptr) << "a picture without files is listed";
}

TEST_F(Cuts, ShareFilesOfTheSamePart) {
    EXPECT_EQ(plan(rowOf({"ferry.jpg", "ferry.jpg"})).pictures.size(), 1U);
    EXPECT_EQ(plan(rowOf({"ferry.jpg", "ferry.jpg"})).uses.size(), 2U);
    CutOptions both;
    both.variants = {0, 1};
    const CutPlan all = plan(rowOf({"ferry.jpg"}), both);
    EXPECT_EQ(all.pictures.size(), 1U);
    ASSERT_EQ(all.uses.size(), 2U);
    EXPECT_NE(all.uses[0].sizes, all.uses[1].sizes);
}

TEST_F(Cuts, OfDifferentPartsHaveDifferentNames) {
    project::Project project = rowOf({"ferry.jpg", "ferry.jpg"});
    std::get<project::PicturePart>(project.part({1, 0})).focusY = 0;
    fs::create_directory(folder_.file("other"));
    fs::copy_file(samplePictures / "creek.jpg", folder_.file("other") / "Ferry.jpg");
    project.row().cards.push_back(project.row().cards[0]);
    std::get<project::PicturePart>(project.part({2, 0})).file = "other/Ferry.jpg";
    const CutPlan all = plan(project);
    ASSERT_EQ(all.pictures.size(), 3U);
    std::set<std::string> names;
    for (const CutPicture& picture : all.pictures)
        for (const CutFile& file : picture.files) {
            std::string lower = file.name;
            std::ranges::transform(lower, lower.begin(),
                                   [](char c) { return static_cast<char>(std::tolower(c)); });
            EXPECT_TRUE(names.insert(lower).second) << file.name;
        }
}

TEST_F(Cuts, OfTransparentPicturesArePngInPlaceOfJpeg) {
    test::writePng(test::drawn(300, 200,
                               [](int x, int y) {
                                   return test::Pixel{x % 256, y % 256, 9, x % 200};
                               }),
                   folder_.file("clear.png"));
    CutOptions options;
    options.formats = {Format::Jpeg, Format::WebP};
    const project::Project project = rowOf({"clear.png"});
    const CutPlan all = plan(project, options);
    ASSERT_EQ(all.pictures.size(), 1U);
    EXPECT_EQ(all.pictures[0].formats, (std::vector<Format>{Format::Png, Format::WebP}));
    EXPECT_EQ(all.pictures[0].notes.size(), 1U);
    ASSERT_TRUE(write(all, project).isComplete);
    EXPECT_TRUE(readInfo(into() / all.pictures[0].files[0].name).value->hasAlpha);
}

TEST_F(Cuts, AreListedForMarkup) {
    const project::Project project = rowOf({"ferry.jpg"});
    CutOptions options;
    options.formats = {Format::Jpeg, Format::Avif};
    options.candidates = 2;
    const CutPlan all = plan(project, options);
    ASSERT_TRUE(write(all, project).isComplete);
    const auto listing = listingIn(into());
    ASSERT_TRUE(listing.has_value());
    const ListedPicture* picture = listing->find("pair", 0, 0);
    ASSERT_NE(picture, nullptr);
    EXPECT_EQ(picture->source, "ferry.jpg");
    EXPECT_EQ(picture->sizes, all.uses[0].sizes);
    ASSERT_EQ(picture->formats.size(), 2U);
    EXPECT_EQ(picture->formats[0].files.size(), 2U);
    EXPECT_TRUE(fs::exists(into() / picture->fallback));
    EXPECT_EQ(listing->find("trio", 0, 0), nullptr);
    const Listing same = readListing(listingJson(*listing)).value();
    EXPECT_EQ(listingJson(same), listingJson(*listing));
    EXPECT_FALSE(readListing("{}").has_value());
    EXPECT_FALSE(readListing(R"({"format": "tenter-pictures", "version": 1, "files": 3, "pictures": []})")
                     .has_value());
    EXPECT_FALSE(readListing("[").has_value());
}

TEST_F(Cuts, OfTheSamplesAreComplete) {
    test::forEachSample([&](const test::Swept& swept) {
        if (swept.variant != 0 || swept.row.profile().name() != text::defaultProfile().name()) return;
        const CutPlan all = planCuts(swept.project, TENTER_SOURCE_DIR "/sample-projects", test::sweepStore(),
                                     text::defaultProfile(), {});
        EXPECT_TRUE(all.problems.empty()) << swept.name;
        for (const CutPicture& picture : all.pictures) {
            EXPECT_FALSE(picture.files.empty()) << swept.name;
            EXPECT_GE(picture.surplusShare, 0);
            EXPECT_LT(picture.surplusShare, 0.6) << "four files should come closer than this";
        }
    });
}

}  // namespace
}  // namespace tenter::pictures
