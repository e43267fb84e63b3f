// The rules of Firefox (Gecko), measured in Firefox 153 on 2026-11-25.
#include <unicode/locid.h>
#include <unicode/uchar.h>
#include <unicode/unistr.h>

#include <cmath>

#include "text/balance.h"
#include "text/fonts.h"
#include "text/profile.h"
#include "text/unicode.h"
#include "units/rounding.h"

namespace tenter::text {
namespace {

constexpr std::u16string_view opening = u"([{";
constexpr std::u16string_view closing = u")]}";
constexpr std::u16string_view signs = u"$%+\\";

bool isIn(std::u16string_view set, char16_t unit) {
    return set.find(unit) != std::u16string_view::npos;
}
/// True for a character before which a line may break after a hyphen, even if the hyphen starts its word.
bool mayFollowHyphen(char16_t unit) {
    return isIn(u"#&*<=>@^_`~", unit) || isAsciiLetter(unit);
}

/// True if the next letter or digit after `character` starts a word for `text-transform: capitalize`.
bool endsCapitalizedWord(char32_t character) {
    if (character == U'\'' || character == U'\u2019' || character == U'\u00B7') return false;
    switch (u_charType(static_cast<UChar32>(character))) {
        case U_SPACE_SEPARATOR:
        case U_CONTROL_CHAR:  // a forced break
        case U_DASH_PUNCTUATION:
        case U_OTHER_PUNCTUATION:
        case U_INITIAL_PUNCTUATION:
        case U_FINAL_PUNCTUATION:
            return true;
        default:
            return false;
    }
}

/// Rounds to Firefox's app unit, 1/60 px.
double round60(double length) {
    return units::wholeNearest(length * 60) / 60;
}

/// Keeps a length that is a whole number of app units from being truncated to one less, because of the
/// rounding of doubles.
constexpr double appUnitNoise = 1e-6;

class Gecko final : public BreakProfile {
public:
    explicit Gecko(double ratio = 1) : ratio_(ratio) {}
    [[nodiscard]] std::unique_ptr<BreakProfile> withRatio(double ratio) const override {
        return std::make_unique<Gecko>(ratio);
    }
    [[nodiscard]] std::string_view name() const override { return "gecko"; }
    [[nodiscard]] std::string_view title() const override { return "Firefox"; }
    [[nodiscard]] std::string_view browsers() const override { return "Firefox"; }
    // The viewport term of a font size is truncated to 1/60 px (measured).
    [[nodiscard]] double sizeTolerance() const override { return 0.02; }

    /// Firefox ignores the language here: quotation marks do not break in Chinese or Japanese either.
    [[nodiscard]] BreakMap breaks(std::u16string_view text, const std::string&) const override {
        BreakMap map = icuLineBreaks(text, "en", LineStrictness::Strict);
        for (std::size_t i = 1; i < text.size(); ++i)
            map[i] = breaksBefore(text, i, map[i]);
        if (!map.empty()) map[0] = false;
        return map;
    }

    /// After a hyphen between a letter or digit and a digit, Firefox breaks only if the word overflows its
    /// line.
    [[nodiscard]] bool breaksOverflowingWordBefore(std::u16string_view text, std::size_t i) const override {
        return i > 1 && i < text.size() && text[i - 1] == u'-' && isAsciiDigit(text[i]) &&
               isAsciiAlphanumeric(text[i - 2]);
    }

    [[nodiscard]] bool needsTwoBefore(std::u16string_view, std::size_t) const override { return false; }
    [[nodiscard]] bool reservesHyphen() const override { return false; }

    [[nodiscard]] CaseEdits uppercase(std::u16string_view text, const std::string& language) const override {
        return icuUppercase(text, language);
    }

    [[nodiscard]] CaseEdits capitalize(std::u16string_view text, const std::string& language) const override {
        // Firefox maps the first letter of each word fully (ß, ŉ, ﬁ) and by language (İ in Turkish, IJ in
        // Dutch).
        CaseEdits edits;
        // A word starts after a space or punctuation, except after brackets, apostrophes, a middle dot and a
        // low line: "tide=high" and "ab(c" are one word each (measured in Firefox 153).
        bool starts = true;
        for (std::size_t i = 0; i < text.size(); ++i) {
            const char32_t character = codePointAt(text, i);
            const bool isWord = u_isalnum(static_cast<UChar32>(character)) != 0;
            if (!isWord) starts = starts || endsCapitalizedWord(character);
            const bool first = starts && isWord;
            if (isWord) starts = false;
            if (!first || u_isalpha(static_cast<UChar32>(character)) == 0) continue;
            std::size_t length = unitsOf(character);
            const bool dutch = language.starts_with("nl") && i + 1 < text.size() && isIn(u"iI", text[i]) &&
                               isIn(u"jJ", text[i + 1]);
            if (dutch) length = 2;
            icu::UnicodeString title(text.data() + i, static_cast<int>(length));
            if (dutch)
                title = icu::UnicodeString(u"IJ");
            else
                title.toTitle(nullptr, icu::Locale(language.c_str()), U_TITLECASE_NO_LOWERCASE);
            const std::u16string by(title.getBuffer(), static_cast<std::size_t>(title.length()));
            if (by != text.substr(i, length))
                edits.push_back({static_cast<std::uint32_t>(i), static_cast<std::uint32_t>(length), by});
        }
        return edits;
    }

    [[nodiscard]] bool reshapesAtBreaks() const override { return false; }
    [[nodiscard]] bool makesSpaces() const override { return false; }
    [[nodiscard]] bool composes() const override { return false; }
    /// Measured in Firefox 153 with Noto Rashi Hebrew, which has neither hyphen.
    [[nodiscard]] bool drawsHyphenMinus() const override { return true; }
    [[nodiscard]] bool kerns(std::string_view script) const override {
        return script != "Hani" && script != "Hira" && script != "Kana";
    }
    /// Measured in Firefox 153: a full stop of Noto Naskh Arabic has the advance of its Latin form in
    /// `11:00.`.
    [[nodiscard]] hb_script_t scriptOfCommon() const override { return HB_SCRIPT_LATIN; }
    /// Measured in Firefox 153: `11:00.` is shaped as Latin text at the end of a Hebrew sentence, too.
    [[nodiscard]] bool resolvesScriptsByPiece() const override { return true; }
    [[nodiscard]] bool breaksAtLineStart(std::u16string_view, std::size_t) const override { return false; }
    /// Measured in Firefox 153 with Lato after Noto Sans Hebrew: `r` and `a` of `er` soft hyphen `ate` are
    /// kerned, and the hyphen is drawn in the first family.
    [[nodiscard]] bool shapesSoftHyphens() const override { return false; }
    /// Measured in Firefox 153 in five families: `A` and `V` are not kerned across a no-break space, a
    /// zero-width space, a word joiner or U+FEFF; across joiners and a soft hyphen they are.
    [[nodiscard]] bool shapesAcross(char16_t unit) const override {
        return !isIn(u"\u00A0\u200B\u2060\uFEFF", unit);
    }
    [[nodiscard]] bool spacesGraphemes() const override { return true; }
    /// The script of the character decides: there is spacing after an Arabic comma and after a European digit
    /// in Arabic text. Measured in Firefox 153.
    [[nodiscard]] bool spacesAfter(char32_t character, hb_script_t) const override {
        return !isCursive(hb_unicode_script(hb_unicode_funcs_get_default(), character));
    }
    /// Measured in Firefox 153: the min-content width of "kk" with 20 px letter spacing is that of "k"
    /// without.
    [[nodiscard]] bool spacesMinContent() const override { return false; }
    [[nodiscard]] bool spacesHyphen() const override { return true; }
    [[nodiscard]] bool dropsLineFeedBetweenIdeographs() const override { return true; }
    /// Measured in Firefox 153: with a row gap of 36 px, `min-height: 48px` makes a track of 84 px, and of 66
    /// px in the first and the last level.
    [[nodiscard]] bool addsGapToMinHeight() const override { return true; }
    [[nodiscard]] double halfOfGap(double gap) const override { return gap / 2; }
    [[nodiscard]] bool vwExcludesSteadyScrollbar() const override { return false; }

    [[nodiscard]] double snapped(double length) const override { return round60(length); }
    /// Firefox truncates lengths in vw to app units when it computes them, and percentages when it resolves
    /// them, negative ones towards zero. Measured in Firefox 153: a line height of 3.16vw is 10.1 px high at
    /// 320 px, 12 lines 121.2 px. The number before `vw` is a float: 3.84 is 3.8399999, so that at 500 px a
    /// line of 3.84vw is one app unit lower than 19.2 px.
    [[nodiscard]] double snapped(double length, const units::Length& declared) const override {
        if (declared.unit() == units::Unit::Vw && declared.value() != 0) {
            const double viewport = units::wholeNearest(length / declared.value() * 100 * 60);
            return std::trunc(static_cast<float>(declared.value()) * viewport / 100) / 60;
        }
        if (declared.unit() == units::Unit::Percent)
            return std::copysign(units::wholeBelow(std::abs(length) * 60 + appUnitNoise) / 60, length);
        return round60(length);
    }
    [[nodiscard]] double columnWidth(double room, int columns, int /*column*/) const override {
        return round60(room / columns);
    }
    [[nodiscard]] double lineHeight(double size, double number) const override {
        return round60(size * number);
    }
    [[nodiscard]] double lineHeight(double length, const units::Length& declared) const override {
        return snapped(length, declared);
    }
    /// Measured in Firefox 153: text of 10 px in Thai is drawn at 13 px and, with a line height of 1.5, 19.5
    /// px high; 10em are 100 px. Not in 15 other languages.
    [[nodiscard]] double leastSize(const std::string& language) const override {
        return language == "th" || language.starts_with("th-") ? 13 : 0;
    }
    /// Half an app unit, because Firefox first rounds the width to app units. Measured in Firefox 153: 1.993
    /// px becomes 2 px.
    [[nodiscard]] double ratio() const override { return ratio_; }
    [[nodiscard]] double borderAllowance() const override { return 0.5 / 60; }
    [[nodiscard]] double fluidStep() const override { return 1.0 / 60; }
    /// FreeType scales TrueType faces in steps of 1/64 device px, other faces at any size. Measured in
    /// Firefox 153 in two faces of each kind, at 158 sizes.
    [[nodiscard]] double drawnSize(double size, const Face* face) const override {
        return face != nullptr && face->isPostScript() ? round60(size) : stepped(size);
    }
    [[nodiscard]] double drawnAdvance(double advance) const override { return round60(advance); }
    [[nodiscard]] double drawnInline(double width) const override { return width; }
    [[nodiscard]] double meanTruncation() const override { return fluidStep() / 2; }
    [[nodiscard]] double fitAllowance() const override { return 0; }
    [[nodiscard]] LineExtent extent(const Face& face, double size, double lineHeight) const override {
        // FreeType stores the scale from font units to 1/64 px in steps of 1/65 536, and rounds metrics to
        // 1/64 px before it rounds them up to px.
        const double perUnit =
            units::wholeNearest(stepped(size) * ratio_ * 64 * 65536 / face.unitsPerEm()) / 65536;
        const auto whole = [&](double em) {
            const double metric = em * face.unitsPerEm() * perUnit;
            return (face.roundsUp() ? std::ceil(units::wholeNearest(metric) / 64)
                                    : units::wholeNearest(metric / 64)) /
                   ratio_;
        };
        const double over = whole(face.ascent());
        const double under = whole(face.descent());
        const double above = over + (lineHeight - over - under) / 2;
        return {above, lineHeight - above};
    }

    /// Firefox has its own dictionary for scripts without spaces, and its own emoji font.
    [[nodiscard]] bool usesEngineData(std::u16string_view text) const override {
        return breaksByDictionary(text) || holdsEmoji(text);
    }

    [[nodiscard]] std::vector<std::uint32_t> balanced(const Paragraph& paragraph,
                                                      const LineQuery& query) const override {
        return balancedByInset(paragraph, query, *this, 10);
    }
    [[nodiscard]] std::uint32_t balancedLines(const Paragraph& /*paragraph*/,
                                              const LinearLineQuery& /*query*/, std::uint32_t greedy,
                                              double& /*until*/) const override {
        return greedy;  // the rule keeps the greedy number of lines
    }

private:
    /// A font size in steps of FreeType, in CSS px.
    [[nodiscard]] double stepped(double size) const {
        return units::wholeNearest(round60(size) * ratio_ * 64) / 64 / ratio_;
    }
    static bool breaksBefore(std::u16string_view text, std::size_t i, bool icu) {
        const char16_t before = text[i - 1];
        const char16_t after = text[i];
        if (after == u' ') return false;
        if (before == u' ') return true;
        const bool startsWord = i == 1 || text[i - 2] == u' ';
        if (before == u'/' && isAsciiDigit(after)) return startsWord;
        // After a Hebrew letter, there is a break after these hyphens (not after a maqaf) only before another
        // Hebrew letter.
        if ((before == u'-' || before == u'\u2010') && i > 1 && isHebrewLetter(text[i - 2]))
            return isHebrewLetter(after);
        if (before == u'-' && mayFollowHyphen(after)) return true;
        if (isIn(signs, before) && isIn(opening, after)) return false;
        if (isIn(closing, before) && isIn(signs, after)) return false;
        return icu;
    }

    double ratio_;  ///< device px in a CSS px; app units are 1/60 CSS px
};

}  // namespace

const BreakProfile& gecko() {
    static const Gecko profile;
    return profile;
}

}  // namespace tenter::text
