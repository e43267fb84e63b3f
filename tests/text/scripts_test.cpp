#include "text/scripts.h"

#include <gtest/gtest.h>

#include "preparing.h"

namespace tenter::text {
namespace {

// UAX #24 § 5.2. Measured in Chromium 156: with letter spacing, `)` after Latin letters in Arabic text has
// none.
TEST(Scripts, ClosingBracketHasTheScriptOfItsOpeningBracket) {
    const std::u16string text = u"\u0628 (ab] c) 1";
    const auto scripts = scriptsOf(text);
    ASSERT_EQ(scripts.size(), text.size());
    EXPECT_EQ(scripts[text.find(u'(')], HB_SCRIPT_ARABIC);
    EXPECT_EQ(scripts[text.find(u'a')], HB_SCRIPT_LATIN);
    EXPECT_EQ(scripts[text.find(u']')], HB_SCRIPT_LATIN);
    EXPECT_EQ(scripts[text.find(u')')], HB_SCRIPT_ARABIC);
    EXPECT_EQ(scripts.back(), HB_SCRIPT_ARABIC);
}

// UAX #24 § 5.1.
TEST(Scripts, TextAtTheStartHasTheScriptOfTheFirstCharacterThatHasOne) {
    EXPECT_EQ(scriptsOf(u"1 (\u0627)").front(), HB_SCRIPT_ARABIC);
    EXPECT_EQ(scriptsOf(u"1 (\u0627)").back(), HB_SCRIPT_ARABIC);
    EXPECT_EQ(scriptsOf(u"11:00.").front(), HB_SCRIPT_COMMON);
}

// Measured in Firefox 153 with Noto Naskh Arabic, whose full stop is wider in Latin text.
TEST(Scripts, FirefoxShapesDigitsAloneAsLatin) {
    const auto width = [](const std::string& copy, const BreakProfile& profile) {
        const ParagraphPtr paragraph =
            Paragraph::prepare({{project::Run::Kind::Plain, copy, ""}}, test::styleOf("Noto Naskh Arabic"),
                               test::fonts(), profile);
        return 17.5 * paragraph->ems(0, static_cast<std::uint32_t>(paragraph->clusters().size()));
    };
    EXPECT_NEAR(width("11:00.", gecko()), 48.35, 0.1);
    EXPECT_NEAR(width("11:00.", blink()), 47.25, 0.1);
    EXPECT_NEAR(width("עד 11:00.", gecko()) - width("עד 11:00.", blink()), 1.085, 0.05);
}

// Measured in Firefox 153: text without any script of its own, in a piece of one direction and style, is
// shaped in the script of its language if the text has characters beyond Latin-1. In Amiri at 100 px, the
// last full stop of `أبدًا.` from left to right is 31.7 px wide in Arabic and 20.2 px in English; in Vollkorn
// `—7.7,/7` is kerned in English and, as Han and Kana, not kerned in Japanese.
TEST(Scripts, FirefoxShapesAPieceWithoutAScriptInThatOfTheLanguage) {
    const auto width = [](const std::string& copy, const std::string& family, const std::string& language) {
        ShapingStyle style = test::styleOf(family);
        style.language = language;
        const ParagraphPtr paragraph = Paragraph::prepare(test::plain(copy), style, test::fonts(), gecko());
        return 100 * paragraph->ems(0, static_cast<std::uint32_t>(paragraph->clusters().size()));
    };
    EXPECT_NEAR(width("أبدًا.", "Amiri", "ar"), 141.9, 0.1);
    EXPECT_NEAR(width("أبدًا.", "Amiri", "en"), 130.4, 0.1);
    EXPECT_NEAR(width(".", "Amiri", "ar"), 20.2, 0.1);
    EXPECT_NEAR(width("—7.7,/7", "Vollkorn", "en"), 312.9, 0.1);
    EXPECT_NEAR(width("—7.7,/7", "Vollkorn", "ja"), 333.9, 0.1);
    EXPECT_NEAR(width("7.7,/7", "Vollkorn", "ja"), 210.5, 0.1);
}

}  // namespace
}  // namespace tenter::text
