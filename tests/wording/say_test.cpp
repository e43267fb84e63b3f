#include "wording/say.h"

#include <gtest/gtest.h>

#include <thread>

#include "project/wording.h"
#include "speaking.h"
#include "units/quantities.h"
#include "wording/sentence.h"

namespace tenter::wording {
namespace {

using test::Speaking;

std::optional<std::string_view> reversed(std::string_view source, std::size_t count) {
    if (source == "%1 before %2") return "%2 nach %1";
    if (source == "%n line of %1") return count == 1 ? "%1: eine Zeile" : "%1: %n Zeilen";
    if (source == "empty") return "";
    return std::nullopt;
}

TEST(Say, IsEnglishByDefault) {
    EXPECT_FALSE(isTranslating());
    EXPECT_EQ(say("A plain sentence."), "A plain sentence.");
    EXPECT_EQ(say("%1 before %2", {"one", "two"}), "one before two");
}

TEST(Say, PutsEachValueWhereTheTranslationHasIt) {
    const Speaking speaking(reversed);
    EXPECT_TRUE(isTranslating());
    EXPECT_EQ(say("%1 before %2", {"one", "two"}), "two nach one");
}

TEST(Say, NeverReadsAValueAsPlaceholders) {
    EXPECT_EQ(say("%1 before %2", {"%2", "%1%n"}), "%2 before %1%n");
    EXPECT_EQ(sayCount("%n line of %1", "%n lines of %1", 2, {"%n"}), "2 lines of %n");
}

TEST(Say, UsesAValueAsOftenAsItIsNamed) {
    EXPECT_EQ(say("%1 and %1", {"a"}), "a and a");
}

TEST(Say, LeavesWhatIsNoPlaceholder) {
    EXPECT_EQ(say("100\u00A0%"), "100\u00A0%");
    EXPECT_EQ(say("%1%, %0, %x, %n, %%2", {"5", "6"}), "5%, %0, %x, %n, %6");
    EXPECT_EQ(say("%1 of %2", {"1"}), "1 of %2");
}

TEST(Say, TakesTheFormOfTheCount) {
    EXPECT_EQ(sayCount("%n line of %1", "%n lines of %1", 1, {"text"}), "1 line of text");
    EXPECT_EQ(sayCount("%n line of %1", "%n lines of %1", 0, {"text"}), "0 lines of text");
    const Speaking speaking(reversed);
    EXPECT_EQ(sayCount("%n line of %1", "%n lines of %1", 1, {"text"}), "text: eine Zeile");
    EXPECT_EQ(sayCount("%n line of %1", "%n lines of %1", 3, {"text"}), "text: 3 Zeilen");
}

TEST(Say, StaysEnglishWithoutATranslation) {
    const Speaking speaking(reversed);
    EXPECT_EQ(say("unknown %1", {"one"}), "unknown one");
    EXPECT_EQ(sayCount("%n card", "%n cards", 2), "2 cards");
    EXPECT_EQ(say("empty"), "");
}

TEST(Sentence, IsWordedInTheLanguageInUseWhenItIsShown) {
    const Sentence sentence =
        Sentence::of("%1 before %2", {"one", Sentence::of("%1 before %2", {"%1", "b"})});
    EXPECT_EQ(sentence.worded(), "one before %1 before b");
    const Speaking speaking(reversed);
    EXPECT_EQ(sentence.worded(), "b nach %1 nach one");
    EXPECT_EQ(Sentence("%1 before %2").worded(), "%1 before %2");
}

TEST(Sentence, IsNeverLongerThanItsLimit) {
    std::string marks;
    for (int i = 0; i < 1000; ++i)
        marks += "%1";
    Sentence sentence("ä");
    for (int depth = 0; depth < 6; ++depth)
        sentence = Sentence::of(marks, {sentence});
    EXPECT_LE(sentence.worded().size(), Sentence::longest + 3);
    EXPECT_TRUE(sentence.worded().ends_with("ä…"));
}

TEST(Language, IsGermanByItsCode) {
    ASSERT_TRUE(useLanguage("de"));
    EXPECT_EQ(sayCount("%n line", "%n lines", 1), "1 Zeile");
    EXPECT_EQ(sayCount("%n line", "%n lines", 4), "4 Zeilen");
    EXPECT_EQ(project::listed({"a", "b", "c"}), "a, b und c");
    ASSERT_TRUE(useLanguage("en"));
    EXPECT_EQ(sayCount("%n line", "%n lines", 4), "4 lines");
}

TEST(Language, IsUnchangedByACodeWithoutACatalogue) {
    const Speaking speaking("de");
    EXPECT_FALSE(useLanguage("xx"));
    EXPECT_EQ(project::listed({"a", "b"}), "a und b");
    for (const std::string_view code : languages())
        EXPECT_TRUE(useLanguage(code)) << code;
}

TEST(Language, SetsTheDecimalSign) {
    const Speaking speaking("de");
    EXPECT_EQ(units::px(20.25), "20,25\u00A0px");
    EXPECT_EQ(units::fromPxToPx(-0.5, 20), "von \u22120,5 bis 20\u00A0px");
    EXPECT_EQ(units::percent(0.001), "unter 1\u00A0%");
    EXPECT_EQ(units::figure(1320), "1320");
}

TEST(Language, IsEnglishWhereOutputMustBe) {
    const Speaking speaking("de");
    {
        const InEnglish english;
        EXPECT_EQ(units::px(20.25), "20.25\u00A0px");
        { const InEnglish again; }
        EXPECT_EQ(project::listed({"a", "b"}), "a and b");
        std::string elsewhere;
        std::thread([&] { elsewhere = project::listed({"a", "b"}); }).join();
        EXPECT_EQ(elsewhere, "a und b") << "another thread keeps its language";
    }
    EXPECT_EQ(units::px(20.25), "20,25\u00A0px");
}

}  // namespace
}  // namespace tenter::wording
