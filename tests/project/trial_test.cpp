// What a row is tried with. That longer copy is laid out as any other is checked in tests/layout.
#include "project/trial.h"

#include <gtest/gtest.h>

namespace tenter::project {
namespace {

TextPart text(const std::string& role, Copy copy) {
    TextPart part;
    part.role = role;
    part.copy = std::move(copy);
    return part;
}

Run plain(const std::string& words) {
    return {Run::Kind::Plain, words, {}};
}

/// Two cards: a picture, a short and a long heading, a body.
Project small() {
    Project project;
    project.row().cards = {
        {{PicturePart{}, text("heading", {plain("Low")}), text("body", {plain("At noon.")})}, {}},
        {{PicturePart{}, text("heading", {plain("High water")}), text("body", {plain("At six.")})}, {}}};
    return project;
}

std::string wordsOf(const Project& project, std::size_t card, std::size_t part) {
    return plainText(std::get<TextPart>(project.row().cards[card].parts[part]).copy);
}

TEST(Trial, LengthensEachTextByItsOwnWords) {
    const Project longer = tried(small(), {Trial::Kind::LongerCopy, 0.3});
    EXPECT_EQ(wordsOf(longer, 1, 1), "High water High");
    EXPECT_EQ(wordsOf(longer, 0, 2), "At noon. At");
    // A text of one word, as one without spaces is, goes on by its own start; in characters, not bytes.
    EXPECT_EQ(wordsOf(longer, 0, 1), "LowL");
    Project japanese = small();
    std::get<TextPart>(japanese.row().cards[0].parts[1]).copy = {plain("潮の満ち引き表")};
    EXPECT_EQ(wordsOf(tried(japanese, {Trial::Kind::LongerCopy, 0.3}), 0, 1), "潮の満ち引き表潮の満");
}

TEST(Trial, GoesOnPlainlyAfterALink) {
    Project project = small();
    std::get<TextPart>(project.row().cards[0].parts[2]).copy = {plain("See "),
                                                                {Run::Kind::Link, "the tides", "#tides"}};
    const Copy copy =
        std::get<TextPart>(tried(project, {Trial::Kind::LongerCopy, 0.5}).row().cards[0].parts[2]).copy;
    ASSERT_EQ(copy.size(), 3U);
    EXPECT_EQ(copy[2].kind, Run::Kind::Plain);
    EXPECT_EQ(copy[2].text, " See the");
}

// WCAG 2.2 SC 2.5.3: a name contains the label as it is seen.
TEST(Trial, KeepsLabelsInNames) {
    Project project = small();
    auto& button = std::get<TextPart>(project.row().cards[0].parts[2]);
    button.name = "At noon. on the steps";
    const Project longer = tried(project, {Trial::Kind::LongerCopy, 0.3});
    EXPECT_EQ(std::get<TextPart>(longer.row().cards[0].parts[2]).name, "At noon. At on the steps");
}

TEST(Trial, PutsTheLongestOrShortestTitleEverywhere) {
    const Project longest = tried(small(), {Trial::Kind::LongestTitles});
    const Project shortest = tried(small(), {Trial::Kind::ShortestTitles});
    for (std::size_t card = 0; card < 2; ++card) {
        EXPECT_EQ(wordsOf(longest, card, 1), "High water");
        EXPECT_EQ(wordsOf(shortest, card, 1), "Low");
    }
    EXPECT_EQ(wordsOf(longest, 0, 2), "At noon.");
}

TEST(Trial, RemovesPicturesAndChangesTheNumberOfCards) {
    for (const Card& card : tried(small(), {Trial::Kind::NoPictures}).row().cards) {
        ASSERT_EQ(card.parts.size(), 2U);
        EXPECT_TRUE(std::holds_alternative<TextPart>(card.parts[0]));
    }
    const Project more = tried(small(), {Trial::Kind::CardMore});
    ASSERT_EQ(more.row().cards.size(), 3U);
    EXPECT_EQ(more.row().cards[2], more.row().cards[0]);
    Project less = tried(small(), {Trial::Kind::CardLess});
    EXPECT_EQ(less.row().cards.size(), 1U);
    less = tried(less, {Trial::Kind::CardLess});
    EXPECT_EQ(less.row().cards.size(), 1U);
}

TEST(Trial, KnowsWhichTestsChangeIndices) {
    for (const Trial::Kind kind : trialKinds()) {
        const Project before = small();
        const Project after = tried(before, {kind});
        bool same = before.row().cards.size() == after.row().cards.size();
        for (std::size_t c = 0; same && c < before.row().cards.size(); ++c)
            same = before.row().cards[c].parts.size() == after.row().cards[c].parts.size();
        EXPECT_EQ(changesParts({kind}), !same) << static_cast<int>(kind);
    }
}

TEST(Trial, IsReadFromWords) {
    EXPECT_EQ(trialOf("longer=25%"), (Trial{Trial::Kind::LongerCopy, 0.25}));
    EXPECT_EQ(trialOf("longer"), (Trial{Trial::Kind::LongerCopy, usualLonger}));
    EXPECT_EQ(trialOf("card-less")->kind, Trial::Kind::CardLess);
    for (const char* wrong : {"", "longer=", "longer=25", "longer=0%", "longer=-5%", "longer=301%",
                              "longer=nan%", "longer=25%%", "card-more=2%", "cards"})
        EXPECT_FALSE(trialOf(wrong).has_value()) << wrong;
}

TEST(Trial, SurvivesEmptyProjectsAndCopy) {
    for (const Trial::Kind kind : trialKinds()) {
        EXPECT_TRUE(tried(Project{}, {kind}).row().cards.empty());
        Project bare = small();
        for (Card& card : bare.row().cards)
            for (Part& part : card.parts)
                if (auto* words = std::get_if<TextPart>(&part)) words->copy.clear();
        EXPECT_FALSE(tried(bare, {kind}).row().cards.empty());
    }
}

}  // namespace
}  // namespace tenter::project
