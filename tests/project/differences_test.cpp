// What differs between two projects, and the sentences about it. The words are those of the window.
#include "project/differences/difference.h"

#include <gtest/gtest.h>

#include "project/file.h"

namespace tenter::project {
namespace {

Project sample() {
    Problems problems;
    auto read = project::read(TENTER_SOURCE_DIR "/sample-projects/shore-walks.tenter.json", problems);
    EXPECT_TRUE(read.has_value());
    return read.value_or(Project{});
}

std::vector<Difference> differencesOf(const Project& before, const Project& after) {
    return differences(before, after,
                       [](std::string_view check) { return "title of " + std::string(check); });
}

std::vector<std::string> sentences(const Project& before, const Project& after) {
    std::vector<std::string> out;
    for (const Difference& difference : differencesOf(before, after))
        out.push_back(difference.says);
    return out;
}

using Sentences = std::vector<std::string>;

/// The value at a place of a project's file; null if there is none.
Json at(const Project& project, const std::string& place) {
    Problems problems;
    const Json file = *parseJson(write(project), "", problems);
    const Json::json_pointer pointer(place);
    return file.contains(pointer) ? file[pointer] : Json();
}

TEST(Differences, ThereAreNoneBetweenAProjectAndItselfOrItsCopy) {
    const Project project = sample();
    EXPECT_TRUE(differencesOf(project, project).empty());
    // Written anew, with other keys in another order.
    Project bare = project;
    bare.fileKeys = bare.rangeFileKeys = {};
    for (Card& card : bare.row().cards)
        card.fileKeys = {};
    EXPECT_TRUE(differencesOf(project, bare).empty());
}

TEST(Differences, OfSettingsNameThePanelAndTheScope) {
    const Project before = sample();
    Project after = before;
    after.row().style.row.columnGap = Length::px(30);
    after.row().variants[0].set.row.level = Level::Subgrid;
    after.row().variants[0].bands[1].set.card.padding.top = Length::em(2);
    after.row().style.text.of("button").align.reset();
    EXPECT_EQ(sentences(before, after),
              (Sentences{"Row › Column gap changes from 1.75rem to 30\u00A0px in all variants.",
                         "Text › Text align of Button is no longer set in all variants; it was Centre.",
                         "Row › Align parts is now set to On in the variant “Home page”; before, it was "
                         "inherited.",
                         "Spacing › Padding top of Card is now set to 2em in the band 591–930\u00A0px (2 "
                         "columns) of the variant “Home page”; before, it was inherited."}));
}

TEST(Differences, OfSizesGiveBothEndsOfTheRamp) {
    const Project before = sample();
    Project after = before;
    after.row().style.text.of("heading").size = *Ramp::between({360, 20}, {590, 26.5});
    after.row().style.text.of("body").size = Ramp::flat(17);
    EXPECT_EQ(sentences(before, after),
              (Sentences{"Text › Font size of Heading changes from 21\u00A0px at 360\u00A0px, 27\u00A0px at "
                         "590\u00A0px to 20\u00A0px at 360\u00A0px, 26.5\u00A0px at 590\u00A0px in all "
                         "variants.",
                         "Text › Font size of Body changes from 16\u00A0px at 360\u00A0px, 17.5\u00A0px at "
                         "590\u00A0px to 17\u00A0px in all variants."}));
}

TEST(Differences, OfTextsQuoteThem) {
    const Project before = sample();
    Project after = before;
    std::get<TextPart>(after.row().cards[1].parts[1]).copy = {{Run::Kind::Plain, "Dune mornings", ""}};
    std::get<TextPart>(after.row().cards[1].parts[2]).copy[1].kind = Run::Kind::Strong;
    std::get<PicturePart>(after.row().cards[0].parts[0]).alt = "";
    const Sentences found = sentences(before, after);
    EXPECT_EQ(
        found,
        (Sentences{"The alternative text of the picture of card 1 changes from “Long pools of still water "
                   "left on the sand at sunrise” to nothing.",
                   "The text of the heading of card 2 changes from “Dune mornings for under-12s and "
                   "whoever brings them” to “Dune mornings”.",
                   "Emphasis, links or line breaks in the text of the body of card 2 change."}));
}

TEST(Differences, RecogniseCardsThatMove) {
    const Project before = sample();
    Project after = before;
    std::rotate(after.row().cards.begin(), after.row().cards.begin() + 1, after.row().cards.end());
    std::get<TextPart>(after.row().cards.back().parts[1]).copy = {{Run::Kind::Plain, "Low tide", ""}};
    const std::vector<Difference> found = differencesOf(before, after);
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(found[0].kind, Difference::Kind::Moved);
    const std::string last = std::to_string(after.row().cards.size());
    EXPECT_EQ(found[0].says, "Card 1 (“The low-tide walk”) is now card " + last + ".");
    EXPECT_EQ(found[1].says,
              "The text of the heading of card " + last + " changes from “The low-tide walk” to “Low tide”.");
}

TEST(Differences, OfCardsAndPartsThatAreNewOrRemoved) {
    const Project before = sample();
    Project after = before;
    after.row().cards.erase(after.row().cards.begin() + 2);
    after.row().cards[0].parts.erase(after.row().cards[0].parts.begin());
    after.row().cards[1].parts.push_back(TextPart{"price", {{Run::Kind::Plain, "Free", ""}}, "", "", {}});
    EXPECT_EQ(sentences(before, after),
              (Sentences{"Card 3 (“Up the creek at dusk”) is removed.", "The picture of card 1 is removed.",
                         "Card 2 has a new price."}));
}

TEST(Differences, OfVariantsAndBands) {
    const Project before = sample();
    Project after = before;
    after.row().variants[0].bands[0].upTo = 600;
    std::swap(after.row().variants[1], after.row().variants[2]);
    after.row().variants.push_back(after.row().variants[0]);
    after.row().variants.back().className = "walks-more";
    after.row().variants.back().name = "Five";
    const Sentences found = sentences(before, after);
    ASSERT_EQ(found.size(), 3U);
    EXPECT_EQ(found[0], "The variant “Five” is new.");
    EXPECT_EQ(found[1], "The breakpoint at 590\u00A0px of the variant “Home page” moves to 600\u00A0px.");
    EXPECT_TRUE(found[2].find("is now variant") != std::string::npos) << found[2];
}

TEST(Differences, OfTheProjectThePageWishesAndChecks) {
    const Project before = sample();
    Project after = before;
    after.name = "Shore";
    after.rightToLeft = true;
    after.unit = units::Unit::Px;
    after.mostWidth = 1700;
    after.page.container.maxWidth = Length::px(1200);
    after.checking.silenced.push_back({"holes", "a fifth walk is added in May", {}});
    after.checking.limits.spareLines = 6;
    after.row().wishes = before.row().wishes.value_or(Wishes{});
    after.row().wishes->aim = Aim::Largest;
    const Sentences found = sentences(before, after);
    const auto contains = [&](const std::string& sentence) {
        return std::ranges::find(found, sentence) != found.end();
    };
    for (const char* sentence :
         {"Project › Name changes from “Shore walks” to “Shore”.",
          "Project › Writing direction changes from “ltr” to “rtl”.",
          "Project › Size unit changes from “rem” to “px”.",
          "Page › Largest viewport changes from 1880 to 1700.",
          "Page › Maximum width changes from none to 1200\u00A0px.",
          "The check “title of holes” is now silenced; the reason is “a fifth walk is added in May”.",
          "The limit spareLines of the checks changes from 4 to 6."})
        EXPECT_TRUE(contains(sentence)) << sentence << "\n" << ::testing::PrintToString(found);
}

// Every place leads to the value that the difference gives.
TEST(Differences, HavePointersIntoBothFiles) {
    const Project before = sample();
    Project after = before;
    after.row().style.card.radius = Length::px(4);
    after.row().variants[1].bands[0].set.row.rowGap = Length::rem(3);
    after.row().cards.erase(after.row().cards.begin());
    std::get<TextPart>(after.row().cards[0].parts[1]).copy = {{Run::Kind::Plain, "Dunes", ""}};
    const std::vector<Difference> found = differencesOf(before, after);
    EXPECT_EQ(found.size(), 4U);
    for (const Difference& difference : found) {
        if (!difference.before.is_null()) {
            EXPECT_EQ(at(before, difference.oldPlace), difference.before);
        }
        if (!difference.after.is_null()) {
            EXPECT_EQ(at(after, difference.newPlace), difference.after);
        }
    }
}

}  // namespace
}  // namespace tenter::project
