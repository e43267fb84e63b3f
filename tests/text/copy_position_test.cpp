// The map between a paragraph's text and the copy it was made from.
#include <gtest/gtest.h>

#include "preparing.h"
#include "text/unicode.h"

namespace tenter::text {
namespace {

using project::Run;

ParagraphPtr made(const project::Copy& copy, project::LetterCase letterCase = project::LetterCase::None) {
    ShapingStyle style = test::styleOf("Vollkorn");
    style.letterCase = letterCase;
    return Paragraph::prepare(copy, style, test::fonts(), blink());
}

/// Each unit's place as `run.unit`, with a blank between.
std::string sourcesOf(const Paragraph& paragraph) {
    std::string text;
    for (std::uint32_t unit = 0; unit <= paragraph.text().size(); ++unit) {
        const CopyPosition at = paragraph.sourceOf(unit);
        text += (text.empty() ? "" : " ") + std::to_string(at.run) + "." + std::to_string(at.unit);
    }
    return text;
}

TEST(CopyPosition, FollowsRunsAndForcedBreaks) {
    const ParagraphPtr paragraph =
        made({{Run::Kind::Plain, "At", ""}, {Run::Kind::Break, "", ""}, {Run::Kind::Strong, "ebb", ""}});
    EXPECT_EQ(sourcesOf(*paragraph), "0.0 0.1 1.0 2.0 2.1 2.2 2.3");
}

// White space collapses as CSS Text 3 § 4.1 says; its one space stands for its first character.
TEST(CopyPosition, SkipsWhiteSpaceThatCollapses) {
    const ParagraphPtr paragraph = made({{Run::Kind::Plain, "  a \n b ", ""}, {Run::Kind::Link, " c ", "/"}});
    EXPECT_EQ(toUtf8(paragraph->text()), "a b c");
    EXPECT_EQ(sourcesOf(*paragraph), "0.2 0.3 0.6 0.7 1.1 1.3");
    EXPECT_EQ(paragraph->unitAt({0, 0}), 0);  // before the first letter
    EXPECT_EQ(paragraph->unitAt({0, 4}), 2);  // within the collapsed white space
    EXPECT_EQ(paragraph->unitAt({1, 0}), 4);  // a space that the one before it swallows
    EXPECT_EQ(paragraph->unitAt({1, 2}), 5);  // at the end
    EXPECT_EQ(paragraph->unitAt({9, 9}), 5);
}

// Unicode 15, SpecialCasing.txt: ß becomes SS, two units for one.
TEST(CopyPosition, GivesLettersOfAMappedCaseThePlaceOfTheirLetter) {
    const ParagraphPtr paragraph = made({{Run::Kind::Plain, "Fluß an", ""}}, project::LetterCase::Uppercase);
    EXPECT_EQ(toUtf8(paragraph->text()), "FLUSS AN");
    EXPECT_EQ(sourcesOf(*paragraph), "0.0 0.1 0.2 0.3 0.3 0.4 0.5 0.6 0.7");
    EXPECT_EQ(paragraph->unitAt({0, 3}), 3);
    EXPECT_EQ(paragraph->unitAt({0, 4}), 5);
}

TEST(CopyPosition, CountsUnitsOfUtf16) {
    const ParagraphPtr paragraph = made({{Run::Kind::Plain, "\U0001F30A b", ""}});
    EXPECT_EQ(sourcesOf(*paragraph), "0.0 0.1 0.2 0.3 0.4");
}

TEST(CopyPosition, HoldsForEmptyCopy) {
    EXPECT_EQ(sourcesOf(*made({})), "0.0");
    EXPECT_EQ(sourcesOf(*made({{Run::Kind::Plain, "  ", ""}})), "0.2");
    EXPECT_EQ(made({})->unitAt({0, 0}), 0);
}

// For every place of a long text: from the copy to the text and back leads to the same place, or past
// white space that is not shown.
TEST(CopyPosition, LeadsThereAndBack) {
    const project::Copy copy{{Run::Kind::Plain, "Follow  the  ebb ", ""},
                             {Run::Kind::Emphasis, "to the\nsandbar", ""},
                             {Run::Kind::Plain, ", ﬁrst light.", ""}};
    const ParagraphPtr paragraph = made(copy, project::LetterCase::Uppercase);
    for (std::uint32_t run = 0; run < copy.size(); ++run)
        for (std::uint32_t unit = 0; unit < toUtf16(copy[run].text).size(); ++unit)
            EXPECT_GE(paragraph->sourceOf(paragraph->unitAt({run, unit})), (CopyPosition{run, unit}));
    for (std::uint32_t unit = 0; unit < paragraph->text().size(); ++unit)
        EXPECT_LE(paragraph->unitAt(paragraph->sourceOf(unit)), unit);
}

}  // namespace
}  // namespace tenter::text
