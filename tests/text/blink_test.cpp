// Chromium's break rules. Measured in Chromium 156 on 2026-11-25 unless a clause is named.
#include <gtest/gtest.h>

#include "text/profile.h"
#include "text/unicode.h"

namespace tenter::text {
namespace {

/// `text` with a middle dot at each break opportunity.
std::string broken(const std::string& text, const std::string& language = "en") {
    const std::u16string units = toUtf16(text);
    const BreakMap breaks = blink().breaks(units, language);
    std::u16string out;
    for (std::size_t i = 0; i < units.size(); ++i) {
        if (breaks[i]) out += u'·';
        out += units[i];
    }
    return toUtf8(out);
}

TEST(Blink, AlwaysBreaksAfterASpace) {
    EXPECT_EQ(broken("tide ) and ( sand"), "tide ·) ·and ·( ·sand");
    EXPECT_EQ(broken("so : and / or !"), "so ·: ·and ·/ ·or ·!");
}

TEST(Blink, NeverBreaksAfterASlashButAfterAHyphenAndAQuestionMark) {
    EXPECT_EQ(broken("sand/mud"), "sand/mud");
    EXPECT_EQ(broken("low-tide"), "low-·tide");
    EXPECT_EQ(broken("when?soon"), "when?·soon");
}

TEST(Blink, BreaksBetweenHyphenAndDigitOnlyAfterALetterOrDigit) {
    EXPECT_EQ(broken("under-12s"), "under-·12s");
    EXPECT_EQ(broken("at -12 degrees"), "at ·-12 ·degrees");
}

// UAX #14, classes B2, GL, WJ, ZW, and numbers with units (LB25).
TEST(Blink, FollowsUnicodeForDashesNoBreakSpacesAndJoiners) {
    EXPECT_EQ(broken("a\u2014b"), "a·\u2014·b");
    EXPECT_EQ(broken("6\u00A0am"), "6\u00A0am");
    EXPECT_EQ(broken("a\u2060b"), "a\u2060b");
    EXPECT_EQ(broken("a\u200Bb"), "a\u200B·b");
    EXPECT_EQ(broken("Wat\u00ADten"), "Wat\u00AD·ten");
}

// CSS Text 3 § 5.3, `line-break: auto` as `normal`: small kana may start a line (UAX #14, class CJ as ID).
TEST(Blink, BreaksJapaneseAsNormal) {
    EXPECT_EQ(broken("キャンプ。", "ja"), "キ·ャ·ン·プ。");
}

TEST(Blink, HasItsName) {
    EXPECT_EQ(profile("blink"), &blink());
    EXPECT_EQ(profile("no such engine"), nullptr);
}

}  // namespace
}  // namespace tenter::text
