// The rules of Chromium (Blink), measured in Chromium 156 on 2026-11-25 without hinting.
#include <unicode/uchar.h>

#include <cmath>

#include "text/balance.h"
#include "text/fonts.h"
#include "text/profile.h"
#include "text/profiles/blink_ascii.h"
#include "text/unicode.h"
#include "units/rounding.h"

namespace tenter::text {
namespace {

/// True for a character whose breaks Chromium takes from UAX #14, not from its table of ASCII pairs.
bool isBeyondTable(char16_t unit) {
    return unit > u'~' && unit != noBreakSpace;
}

bool isBeyondPair(char16_t before, char16_t after) {
    return isBeyondTable(before) || isBeyondTable(after);
}

/// Hyphens that Unicode 16 distinguishes from dashes: classes HY and HH of UAX #14.
bool isHyphen(char16_t unit) {
    return unit == u'-' || unit == u'\u058A' || unit == u'\u05BE' || unit == u'\u2010' || unit == u'\u2012' ||
           unit == u'\u2013';
}

/// True for the classes AL and HL of UAX #14.
bool isLetter(char16_t unit) {
    const int kind = u_getIntPropertyValue(unit, UCHAR_LINE_BREAK);
    return kind == U_LB_ALPHABETIC || kind == U_LB_HEBREW_LETTER;
}

/// Paragraphs with more lines are broken greedily.
constexpr std::uint32_t mostBalanced = 6;

class Blink final : public BreakProfile {
public:
    explicit Blink(double ratio = 1) : ratio_(ratio) {}
    [[nodiscard]] std::unique_ptr<BreakProfile> withRatio(double ratio) const override {
        return std::make_unique<Blink>(ratio);
    }
    [[nodiscard]] std::string_view name() const override { return "blink"; }
    [[nodiscard]] std::string_view title() const override { return "Chromium"; }
    [[nodiscard]] std::string_view browsers() const override { return "Chromium, Chrome, Edge, Opera"; }
    [[nodiscard]] double sizeTolerance() const override { return 0.01; }

    [[nodiscard]] BreakMap breaks(std::u16string_view text, const std::string& language) const override {
        BreakMap map = icuLineBreaks(text, language, LineStrictness::Normal);
        for (std::size_t i = 1; i < text.size(); ++i)
            map[i] = breaksBefore(text, i, map[i]);
        if (!map.empty()) map[0] = false;
        return map;
    }

    [[nodiscard]] bool breaksOverflowingWordBefore(std::u16string_view, std::size_t) const override {
        return false;
    }

    /// Measured in Chromium 156: `under-12s`, cut before the hyphen, goes on with `-1`, and `एक-एक` with
    /// `-ए`: the hyphen then starts the text that Chromium looks at, as in rule LB20a of UAX #14.
    [[nodiscard]] bool needsTwoBefore(std::u16string_view text, std::size_t i) const override {
        if (text[i - 1] == u'-' && isAsciiDigit(text[i])) return true;
        return isHyphen(text[i - 1]) && isBeyondPair(text[i - 1], text[i]) && isLetter(text[i]);
    }
    /// Measured in Chromium 156 with Lato at 15 px, in which the hyphen is 5.58 px wide: in 24.1 px `aa-i`
    /// fits, but not with a hyphen, so that `aa-` (20.5 px) is no longer kept together.
    [[nodiscard]] bool reservesHyphen() const override { return true; }

    [[nodiscard]] CaseEdits uppercase(std::u16string_view text, const std::string& language) const override {
        return icuUppercase(text, language);
    }

    [[nodiscard]] CaseEdits capitalize(std::u16string_view text, const std::string&) const override {
        // Chromium ignores the language here.
        CaseEdits edits;
        const BreakMap words = capitalizedWords(text, "");
        for (std::size_t i = 0; i < text.size(); ++i) {
            if (!words[i]) continue;
            const char32_t character = codePointAt(text, i);
            const auto title = static_cast<char32_t>(u_totitle(static_cast<UChar32>(character)));
            if (title == character) continue;
            std::u16string by;
            if (title > 0xFFFF) {
                by.push_back(static_cast<char16_t>(0xD7C0 + (title >> 10)));
                by.push_back(static_cast<char16_t>(0xDC00 + (title & 0x3FF)));
            } else {
                by.push_back(static_cast<char16_t>(title));
            }
            edits.push_back(
                {static_cast<std::uint32_t>(i), static_cast<std::uint32_t>(unitsOf(character)), by});
        }
        return edits;
    }

    [[nodiscard]] bool reshapesAtBreaks() const override { return true; }
    [[nodiscard]] bool makesSpaces() const override { return true; }
    /// Measured in Chromium 156 with Karla, which lacks "ế" and has "ê" and the acute accent.
    [[nodiscard]] bool composes() const override { return true; }
    [[nodiscard]] bool drawsHyphenMinus() const override { return false; }
    [[nodiscard]] bool kerns(std::string_view) const override { return true; }
    [[nodiscard]] hb_script_t scriptOfCommon() const override { return HB_SCRIPT_COMMON; }
    [[nodiscard]] bool resolvesScriptsByPiece() const override { return false; }
    /// Measured in Chromium 156: in a column of 14 px, `־6:30` after a line `ב` breaks after the maqaf, which
    /// rule LB21a of UAX #14 keeps together with the digits after a Hebrew letter.
    [[nodiscard]] bool breaksAtLineStart(std::u16string_view text, std::size_t i) const override {
        if (i < 2 || !isHebrewLetter(text[i - 2])) return false;
        const int kind = u_getIntPropertyValue(text[i - 1], UCHAR_LINE_BREAK);
        if (kind != U_LB_HYPHEN && kind != U_LB_BREAK_AFTER) return false;
        // What stands later does not decide; the rest of a long text would take long.
        const std::u16string_view line = text.substr(i - 1, 16);
        return breaksBefore(line, 1, icuLineBreaks(line, "", LineStrictness::Normal)[1]);
    }
    /// Measured in Chromium 156 with Lato after Noto Sans Hebrew: `r` and `a` of `er` soft hyphen `ate` are
    /// not kerned; with Lato alone they are.
    [[nodiscard]] bool shapesSoftHyphens() const override { return true; }
    [[nodiscard]] bool shapesAcross(char16_t) const override { return true; }
    [[nodiscard]] bool spacesGraphemes() const override { return false; }
    /// The script of the run decides, and for a character of several scripts all of them: no spacing after an
    /// Arabic comma or after a digit in Arabic text, but after every space. Measured in Chromium 156.
    [[nodiscard]] bool spacesAfter(char32_t character, hb_script_t script) const override {
        if (character == U' ' || character == noBreakSpace) return true;
        return !isCursive(script) && !mayBeCursive(character);
    }
    [[nodiscard]] bool spacesMinContent() const override { return true; }
    [[nodiscard]] bool spacesHyphen() const override { return false; }
    [[nodiscard]] bool dropsLineFeedBetweenIdeographs() const override { return false; }
    [[nodiscard]] bool addsGapToMinHeight() const override { return false; }
    /// Measured in Chromium 156: with a gap of 15.234375 px (975/64), parts of 20 px stand 20.015625 px
    /// apart.
    [[nodiscard]] double halfOfGap(double gap) const override { return truncated64(gap / 2); }
    [[nodiscard]] bool vwExcludesSteadyScrollbar() const override { return true; }

    [[nodiscard]] double snapped(double length) const override { return truncated64(length); }
    [[nodiscard]] double snapped(double length, const units::Length&) const override {
        return truncated64(length);
    }
    /// A column is rounded down and leaves its remainder to the next. Chromium computes the share as a float:
    /// of six columns of 83.135417 px, the third does not get the 1/64 px that three remainders add up to.
    /// Measured in Chromium 156 in 1513 layouts.
    [[nodiscard]] double columnWidth(double room, int columns, int column) const override {
        const double share = static_cast<float>(room * ratio_ / columns);
        double width = 0;
        double rest = 0;
        for (int i = 0; i <= column; ++i) {
            width = units::wholeBelow((share + rest) * 64) / 64;
            rest += share - width;
        }
        return width / ratio_;
    }
    [[nodiscard]] double lineHeight(double size, double number) const override {
        return truncated64(round64(size) * number);
    }
    [[nodiscard]] double lineHeight(double length, const units::Length&) const override {
        return round64(length);
    }
    [[nodiscard]] double ratio() const override { return ratio_; }
    [[nodiscard]] double leastSize(const std::string&) const override { return 0; }
    [[nodiscard]] double borderAllowance() const override { return 0; }
    [[nodiscard]] double fluidStep() const override { return 0; }
    /// The size is a float before it is rounded down to 1/100 px. Measured in Chromium 156: 16.72 px is
    /// drawn at 16.703125 px, as 16.71 px is.
    [[nodiscard]] double drawnSize(double size, const Face*) const override {
        return units::wholeBelow(hundredths(size) * 64) / 64 / ratio_;
    }
    [[nodiscard]] double drawnAdvance(double advance) const override { return advance; }
    [[nodiscard]] double drawnInline(double width) const override {
        return -units::wholeBelow(-width * ratio_ * 64) / 64 / ratio_;
    }
    /// Half of 1/100 px, and 12/1600 px, the mean remainder of hundredths divided by 1/64.
    [[nodiscard]] double meanTruncation() const override { return 0.0125 / ratio_; }
    /// A line, rounded up to 1/64 px, fits in the available width, rounded down, plus 1/64 px. Paddings and
    /// gaps are rounded down, too, so boxes are 0.007 px wider than computed on average (measured in
    /// Chromium 156 in 60 random rows), which cancels the rounding of the line.
    [[nodiscard]] double fitAllowance() const override { return 1.0 / 64 / ratio_; }
    /// Metrics are those of the size rounded down to 0.01 px. Measured in Chromium 156 with EB Garamond 08
    /// (ascent 726 of 1000): at 15.841445 px the ascent is 11 px, although 0.726 · 15.841445 is 11.5009.
    [[nodiscard]] LineExtent extent(const Face& face, double size, double lineHeight) const override {
        const double drawn = hundredths(size);
        const double over = units::wholeNearest(face.ascent() * drawn);
        const double under = units::wholeNearest(face.descent() * drawn);
        const double above = (over + units::wholeBelow((lineHeight * ratio_ - over - under) / 2)) / ratio_;
        return {above, lineHeight - above};
    }

    [[nodiscard]] bool usesEngineData(std::u16string_view) const override { return false; }

    [[nodiscard]] std::vector<std::uint32_t> balanced(const Paragraph& paragraph,
                                                      const LineQuery& query) const override {
        return balancedByPenalty(paragraph, query, *this, mostBalanced);
    }
    [[nodiscard]] std::uint32_t balancedLines(const Paragraph& paragraph, const LinearLineQuery& query,
                                              std::uint32_t greedy, double& until) const override {
        return linesByPenalty(paragraph, query, greedy, mostBalanced, until);
    }

private:
    /// A font size in device px, rounded down to 1/100.
    [[nodiscard]] double hundredths(double size) const {
        return units::wholeBelow(static_cast<float>(size * ratio_) * 100.0F) / 100.0;
    }
    /// Chromium's layout unit is 1/64 device px; it computes in floats before it rounds to the unit.
    /// Towards zero: −1.96 px is −125/64 px.
    [[nodiscard]] double truncated64(double length) const {
        const float number = static_cast<float>(length * ratio_) * 64.0F;
        return (number < 0 ? -units::wholeBelow(-number) : units::wholeBelow(number)) / 64.0 / ratio_;
    }
    [[nodiscard]] double round64(double length) const {
        return units::wholeNearest(static_cast<float>(length * ratio_) * 64.0) / 64 / ratio_;
    }
    static bool breaksBefore(std::u16string_view text, std::size_t i, bool icu) {
        const char16_t before = text[i - 1];
        const char16_t after = text[i];
        if (after == u' ') return false;
        if (before == u' ') return true;
        if (before == u'-' && isAsciiDigit(after)) return i > 1 && isAsciiAlphanumeric(text[i - 2]);
        // Rules LB20a and LB21a of UAX #14 in Unicode 16; ICU 72 has older versions of them.
        const bool startsWord = i == 1 || text[i - 2] == u' ';
        if (isHyphen(before) && startsWord && isBeyondPair(before, after) && isLetter(after)) return false;
        if (isHyphen(before) && i > 1 && isHebrewLetter(text[i - 2]) && isHebrewLetter(after)) return true;
        if (isBeyondPair(before, after)) return icu;
        return blinkBreaksBetween(before, after);
    }

    double ratio_;  ///< device px in a CSS px
};

}  // namespace

const BreakProfile& blink() {
    static const Blink profile;
    return profile;
}

}  // namespace tenter::text
