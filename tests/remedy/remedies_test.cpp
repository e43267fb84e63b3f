// Remedies do what they say, for every finding of samples and of rows that have each finding.
#include <filesystem>
#include <map>

#include "../checks/rows.h"
#include "checks/registry.h"
#include "units/contrast.h"
#include "verifying.h"

namespace tenter::remedy {
namespace {

using namespace test;  // NOLINT(google-build-using-namespace)

std::vector<Remedy> remediesOf(const project::Project& project, const std::string& check,
                               const Options& options = {}) {
    const Finding finding = findingOf(project, check);
    EXPECT_EQ(finding.check, check);
    return remediesFor(project, 0, finding, checkStore(), options);
}

/// The first remedy whose label starts with `start`; null if there is none.
const Remedy* labelled(const std::vector<Remedy>& remedies, const std::string& start) {
    const auto found =
        std::ranges::find_if(remedies, [&](const Remedy& one) { return one.label.starts_with(start); });
    return found == remedies.end() ? nullptr : &*found;
}

project::Project unevenRow() {
    return rows::neighbours(card("Low tide and the long way round by the sea wall", "Out and back."),
                            card("Dunes", "Out and back."));
}

/// The rows of `rowsByCheck`, and those that a remedy can help where none can help them.
std::multimap<std::string, project::Project> remediableRows() {
    auto all = rows::rowsByCheck();
    const std::string heading = "The long way round the saltmarsh at dusk";
    all.emplace("heading-lines", rows::wishing(headed(heading), "heading", 1));
    const auto linked = [](const std::string& title, const std::string& to) {
        return R"({"parts": [{"role": "heading", "copy": ")" + title +
               R"("}, {"role": "button", "copy": "Book a walk", "link": ")" + to + R"("}]})";
    };
    all.emplace("link-purpose", quiet("[" + linked("Low tide", "#a") + "," + linked("Dunes", "#b") + "]"));
    return all;
}

TEST(Remedies, DoWhatTheySayForEveryCheck) {
    std::map<std::string, std::size_t> counts;
    for (const auto& [check, project] : remediableRows()) {
        SCOPED_TRACE(check);
        expectTrueRemedies(project, checkStore());
        for (const Finding& finding : findingsOf(project))
            counts[finding.check] += remediesFor(project, 0, finding, checkStore()).size();
    }
    // What only its author can write, or what is not in the project.
    const std::set<std::string> without{"alternative", "heading-levels", "late-font",
                                        "link-name",   "theme-gap",      "theme-obstacle"};
    for (const std::string_view name : checks::checkNames())
        EXPECT_EQ(counts[std::string(name)] == 0, without.contains(std::string(name))) << name;
}

TEST(Remedies, DoWhatTheySayForEverySample) {
    const std::filesystem::path folder = std::filesystem::path(TENTER_SOURCE_DIR) / "sample-projects";
    std::size_t projects = 0;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        if (!entry.path().string().ends_with(project::fileEnding)) continue;
        SCOPED_TRACE(entry.path().filename());
        project::Problems problems;
        const auto project = project::read(entry.path(), problems, checks::isCheckName);
        ASSERT_TRUE(project.has_value());
        text::Fonts fonts;
        fonts.use(project->fonts, folder);
        text::ParagraphStore store(fonts);
        EXPECT_GT(expectTrueRemedies(*project, store), 0U);
        ++projects;
    }
    EXPECT_GT(projects, 4U);
}

TEST(Remedies, AlignThePartsOfTheBandThatNeedsIt) {
    const std::vector<Remedy> remedies = remediesOf(unevenRow(), "out-of-line");
    const Remedy* aligned = labelled(remedies, "Align parts of neighbouring cards");
    ASSERT_NE(aligned, nullptr);
    EXPECT_EQ(aligned->where, "in the band 601–1920\u00A0px (2 columns)");
    EXPECT_EQ(aligned->project.row().variants[0].bands[1].set.row.level, project::Level::Subgrid);
    EXPECT_FALSE(aligned->project.row().variants[0].bands[0].set.row.level);
    EXPECT_FALSE(aligned->project.row().style.row.level == project::Level::Subgrid);
    EXPECT_TRUE(aligned->removes);
    EXPECT_GT(aligned->move.distance, 0);
}

// Parts cannot be aligned while the last line of cards is centred, so that is neither offered nor advised.
TEST(Remedies, AreNeverWhatTheProjectCannotHold) {
    project::Project project = unevenRow();
    set(project, "row/lastLine", R"("center")");
    for (const Remedy& remedy : remediesOf(project, "out-of-line"))
        EXPECT_NE(remedy.label, "Align parts of neighbouring cards");
    EXPECT_TRUE(findingOf(unevenRow(), "out-of-line").statement.fix.starts_with("Align the parts"));
    EXPECT_EQ(findingOf(project, "out-of-line").statement.fix,
              "Reserve space for as many lines (Text › Minimum lines), or shorten the heading");
}

TEST(Remedies, UseAColourWithEnoughContrastInTheLayerThatSetsIt) {
    const project::Project project = rows::withStyle(quiet(), "text/body/colour", R"("#777777")");
    const std::vector<Remedy> remedies = remediesOf(project, "contrast");
    const Remedy* colour = labelled(remedies, "Use #");
    ASSERT_NE(colour, nullptr);
    const units::Colour ink = *colour->project.row().style.text.find("body")->colour;
    EXPECT_EQ(colour->label, "Use " + ink.css() + " for body text");
    const units::Colour white{255, 255, 255, 255};
    EXPECT_GE(units::contrast(ink, white), 4.5);
    EXPECT_LT(units::contrast(ink, white), 4.7);
    EXPECT_TRUE(colour->project.row().variants == project.row().variants);
    EXPECT_EQ(colour->move.distance, 0);
    EXPECT_EQ(effectOf(*colour, "widths"), "No box moves.");
}

TEST(Remedies, SayWhatStays) {
    Remedy remedy;
    remedy.removes = false;
    remedy.share = 0.31;
    remedy.shareAfter = 0.04;
    remedy.move = {24.2, 931};
    remedy.lost.resize(1);
    remedy.lost[0].finding.check = "measure";
    remedy.gained.resize(2);
    remedy.gained[0].finding.check = "tight-fit";
    remedy.gained[1].finding.check = "last-word";
    remedy.gained[1].variant = 1;
    EXPECT_EQ(effectOf(remedy, "visits"),
              "From 31\u00A0% to 4\u00A0% of visits. Removes 1 other finding: “Measure”. Adds 2 notes in 2 "
              "variants: "
              "“Last word” and “Tight fit”. Boxes move by up to 24\u00A0px, at 931\u00A0px.");
}

TEST(Remedies, HaveTheFewestSideEffectsFirst) {
    for (const auto& [check, project] : rows::rowsByCheck())
        for (const Finding& finding : findingsOf(project)) {
            const std::vector<Remedy> all = remediesFor(project, 0, finding, checkStore());
            const auto effects = [](const Remedy& one) {
                return std::tuple(!one.removes, one.gained.size() + one.grown.size(), one.move.distance);
            };
            EXPECT_TRUE(std::ranges::is_sorted(all, {}, effects)) << finding.says;
        }
}

TEST(Remedies, AreNoneOnceTheWorkIsCancelled) {
    std::stop_source stop;
    stop.request_stop();
    Options options;
    options.cancellation = stop.get_token();
    EXPECT_TRUE(remediesOf(unevenRow(), "out-of-line", options).empty());
}

// Under a text test the findings are those of other text; what is changed is the project.
TEST(Remedies, OfATextTestChangeTheProjectWithoutIt) {
    project::Project project = unevenRow();
    Options options;
    options.trial = project::Trial{project::Trial::Kind::LongerCopy, 0.5};
    checks::Options checking;
    checking.untried = std::make_shared<const project::Project>(project);
    const project::Project shown = project::tried(project, *options.trial);
    const Finding finding = findingOf(shown, "out-of-line", std::nullopt, checking);
    const std::vector<Remedy> remedies = remediesFor(project, 0, finding, checkStore(), options);
    ASSERT_FALSE(remedies.empty());
    for (const Remedy& remedy : remedies)
        EXPECT_TRUE(remedy.project.row().cards == project.row().cards) << remedy.label;
}

}  // namespace
}  // namespace tenter::remedy
