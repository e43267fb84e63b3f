// What differs between a project and a stylesheet that was changed where it is live.
#include "start/sheet_comparison.h"

#include <gtest/gtest.h>

#include "emit/stylesheet.h"
#include "project/cascade.h"
#include "project/file.h"
#include "project/validate.h"
#include "text/fonts.h"

namespace tenter::start {
namespace {

class SheetComparing : public ::testing::Test {
protected:
    void SetUp() override { open("shore-walks"); }
    void open(const std::string& name) {
        project::Problems problems;
        auto read = project::read(TENTER_SOURCE_DIR "/sample-projects/" + name + ".tenter.json", problems);
        ASSERT_TRUE(read.has_value());
        project_ = std::move(*read);
    }
    [[nodiscard]] std::string sheet(const emit::SheetForm& form = {}) const {
        return emit::stylesheet(project_, {project::everyVariant(project_), project_.unit, form, {}});
    }
    void compare(const std::string& css) {
        project::Problems problems;
        auto found = compareWithSheet(project_, css, "live.css", store_, problems);
        ASSERT_TRUE(found.has_value()) << (problems.empty() ? "" : problems.front().what);
        found_ = std::move(*found);
    }
    [[nodiscard]] const SheetDifference* difference(const std::string& path) const {
        const auto found = std::ranges::find(found_.differences, path, &SheetDifference::path);
        return found == found_.differences.end() ? nullptr : &*found;
    }
    void takeAll() { takeDifferences(project_, found_, std::vector<bool>(found_.differences.size(), true)); }
    static std::string replaced(std::string text, const std::string& from, const std::string& to) {
        std::size_t count = 0;
        for (std::size_t at = text.find(from); at != std::string::npos;
             at = text.find(from, at + to.size())) {
            text.replace(at, from.size(), to);
            ++count;
        }
        EXPECT_GT(count, 0U) << from;
        return text;
    }

    text::Fonts fonts_;
    text::ParagraphStore store_{fonts_};
    project::Project project_;
    SheetComparison found_;
};

TEST_F(SheetComparing, FindsNothingInItsOwnSheetOfAnyForm) {
    for (const char* name : {"bird-counts", "ferry-words", "night-sky", "season", "shore-walks"})
        for (const emit::SheetForm& form :
             {emit::SheetForm{}, emit::SheetForm{true, false, true, false},
              emit::SheetForm{false, true, true, false}, emit::SheetForm{false, false, false, true}}) {
            open(name);
            compare(sheet(form));
            EXPECT_TRUE(found_.differences.empty())
                << name << ": " << found_.differences.front().name << " " << found_.differences.front().after;
        }
}

TEST_F(SheetComparing, FindsAChangedColourInEveryBandAndTakesIt) {
    const std::string colour =
        project::resolve(project_, project_.row().variants[0], 0).card.background->css();
    compare(replaced(sheet(), "background: " + colour, "background: #fed"));
    ASSERT_FALSE(found_.differences.empty());
    const SheetDifference* card = difference("card/background");
    ASSERT_NE(card, nullptr);
    EXPECT_TRUE(card->everyBand);
    EXPECT_EQ(card->value, "#fed");
    takeAll();
    EXPECT_TRUE(project::validate(project_).empty());
    for (const project::Variant& variant : project_.row().variants)
        for (std::size_t band = 0; band < variant.bands.size(); ++band)
            EXPECT_EQ(project::resolve(project_, variant, band).card.background->css(), "#fed");
    compare(sheet());
    EXPECT_TRUE(found_.differences.empty());
}

TEST_F(SheetComparing, TakesOnlyWhatIsChosen) {
    project::Project live = project_;
    live.row().style.card.radius = units::Length::px(17);
    live.row().style.row.rowGap = units::Length::px(77);
    for (project::Variant& variant : live.row().variants) {
        variant.set.card.radius.reset();
        variant.set.row.rowGap.reset();
        for (project::Band& band : variant.bands) {
            band.set.card.radius.reset();
            band.set.row.rowGap.reset();
        }
    }
    compare(emit::stylesheet(live, {project::everyVariant(live), live.unit, {}, {}}));
    ASSERT_NE(difference("card/radius"), nullptr);
    ASSERT_NE(difference("row/rowGap"), nullptr);
    const project::Settings before = project::resolve(project_, project_.row().variants[0], 0);
    std::vector<bool> chosen;
    for (const SheetDifference& one : found_.differences)
        chosen.push_back(one.path == "card/radius");
    takeDifferences(project_, found_, chosen);
    const project::Settings after = project::resolve(project_, project_.row().variants[0], 0);
    EXPECT_EQ(after.card.radius->css(), "17px");
    EXPECT_EQ(after.row.rowGap, before.row.rowGap);
}

TEST_F(SheetComparing, FindsAMovedBreakpointAndASizeInOneBand) {
    project::Project live = project_;
    project::Variant& variant = live.row().variants[0];
    ASSERT_GT(variant.bands.size(), 1U);
    variant.bands[0].upTo = *variant.bands[0].upTo + 13;
    variant.bands[0].set.text.of("heading").size = units::Ramp::flat(19.5);
    const double moved = *variant.bands[0].upTo;
    compare(emit::stylesheet(live, {project::everyVariant(live), live.unit, {}, {}}));
    const SheetDifference* ends = difference("");
    ASSERT_NE(ends, nullptr);
    EXPECT_EQ(ends->name, "Breakpoints");
    const SheetDifference* size = difference("text/heading/size");
    ASSERT_NE(size, nullptr);
    EXPECT_EQ(size->bands, (std::vector<std::size_t>{0}));
    EXPECT_FALSE(size->everyBand);
    takeAll();
    EXPECT_TRUE(project::validate(project_).empty());
    EXPECT_EQ(project_.row().variants[0].bands[0].upTo, moved);
    const project::Settings narrow = project::resolve(project_, project_.row().variants[0], 0);
    EXPECT_DOUBLE_EQ(narrow.text.find("heading")->size->sizeAt(400), 19.5);
    compare(emit::stylesheet(live, {project::everyVariant(live), live.unit, {}, {}}));
    EXPECT_TRUE(found_.differences.empty());
}

TEST_F(SheetComparing, ComparesTheFirstVariantWithASheetOfOtherOrigin) {
    compare(
        ".deck { display: grid; grid-template-columns: repeat(2, 1fr); gap: 41px } .deck article { padding: "
        "9px; "
        "background: #abc } .deck h3 { font-size: 33px }");
    EXPECT_NE(difference("row/columnGap"), nullptr);
    EXPECT_NE(difference("card/background"), nullptr);
    EXPECT_FALSE(found_.report.empty());
    takeAll();
    EXPECT_TRUE(project::validate(project_).empty());
    const project::Settings wide =
        project::resolve(project_, project_.row().variants[0], project_.row().variants[0].bands.size() - 1);
    EXPECT_EQ(wide.row.columnGap->css(), "41px");
    EXPECT_DOUBLE_EQ(wide.text.find("heading")->size->sizeAt(1000), 33);
}

TEST_F(SheetComparing, RefusesASheetWithoutARow) {
    project::Problems problems;
    EXPECT_FALSE(compareWithSheet(project_, "body { color: red }", "live.css", store_, problems).has_value());
    EXPECT_EQ(problems.size(), 1U);
}

TEST_F(SheetComparing, WritesSentencesAndJson) {
    compare(sheet());
    EXPECT_EQ(differencesList(found_), "The stylesheet has the values of the project.\n");
    project_.row().style.card.radius = units::Length::px(1);
    SheetDifference one;
    one.name = "Row › Column gap";
    one.where = "320–560 px";
    one.path = "row/columnGap";
    one.before = "24 px";
    one.after = "32 px";
    one.value = "32px";
    found_.differences = {one};
    EXPECT_EQ(differencesList(found_),
              "Row › Column gap (320–560 px) is 24 px in the project and 32 px in the stylesheet.\n1 "
              "difference.\n");
    project::Problems problems;
    const auto json = project::parseJson(differencesJson(found_), "", problems);
    ASSERT_TRUE(json.has_value());
    EXPECT_EQ((*json)[0]["setting"], "row/columnGap");
    EXPECT_EQ((*json)[0]["value"], "32px");
    EXPECT_EQ((*json)[0]["number"], 1);
}

}  // namespace
}  // namespace tenter::start
