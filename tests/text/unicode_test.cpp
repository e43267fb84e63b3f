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

}  // namespace
}  // namespace tenter::text
