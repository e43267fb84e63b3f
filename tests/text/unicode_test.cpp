// ICU's answers compared with the Unicode data files.
#include "text/unicode.h"

#include <gtest/gtest.h>

namespace tenter::text {
namespace {

// Unicode 15, LineBreak.txt: class SA holds these scripts; Tibetan, Han and Hangul have classes of their own.
TEST(BreaksByDictionary, IsTrueOfTheScriptsOfClassSa) {
    for (const char16_t* text : {u"น้ำลง", u"ນ້ຳ", u"ទឹក", u"ရေ", u"low tide: น้ำลง"})
        EXPECT_TRUE(breaksByDictionary(text)) << toUtf8(text);
    for (const char16_t* text : {u"", u"low tide", u"潮が引く", u"썰물", u"ཆུ", u"الجزر", u"\U0001F30A"})
        EXPECT_FALSE(breaksByDictionary(text)) << toUtf8(text);
    // Tai Tham is one of these scripts; an unpaired surrogate belongs to no script.
    EXPECT_TRUE(breaksByDictionary(u"\u1A20"));
    EXPECT_FALSE(breaksByDictionary(std::u16string(1, char16_t(0xD83C))));
}

// Measured in Chromium 156: with SARA AM but not its parts in the `unicode-range` of a face, another face
// draws the whole word.
TEST(Unicode, FindsTheCharactersThatShapingLooksUp) {
    EXPECT_EQ(charactersShaped(u"น้ำ"), (std::set<char32_t>{0xE19, 0xE32, 0xE33, 0xE49, 0xE4D}));
    EXPECT_EQ(charactersShaped(u"ຳ"), (std::set<char32_t>{0xEB2, 0xEB3, 0xECD}));
    EXPECT_EQ(charactersShaped(u"é"), (std::set<char32_t>{U'e', 0xE9, 0x301}));
    EXPECT_EQ(charactersShaped(u"e\u0301"), (std::set<char32_t>{U'e', 0xE9, 0x301}));
    EXPECT_EQ(charactersShaped(u"\U0001F30A"), (std::set<char32_t>{0x1F30A}));
    // Noto Sans Hebrew has a hyphen, but no no-break hyphen.
    EXPECT_EQ(charactersShaped(u"\u2011"), (std::set<char32_t>{U'-', 0x2010, 0x2011}));
    EXPECT_EQ(charactersShaped(u"\u2010"), (std::set<char32_t>{U'-', 0x2010}));
}

}  // namespace
}  // namespace tenter::text
