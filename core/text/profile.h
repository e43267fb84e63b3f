// Break profiles: the rules in which browser engines differ. One file each under profiles/; a further one is
// one more file and one line in `profile()`.
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace tenter::units {
struct Linear;  // linear.h
}

namespace tenter::text {

class Face;       // fonts.h
class Paragraph;  // paragraph.h
template <class Number>
struct LineQueryOf;  // lines.h
using LineQuery = LineQueryOf<double>;

/// Break opportunities between UTF-16 code units: entry i is true if a line may break before unit i.
using BreakMap = std::vector<bool>;

/// Code units [begin, begin + length) of a text, and what case mapping puts there.
struct CaseEdit {
    std::uint32_t begin = 0;
    std::uint32_t length = 0;
    std::u16string by;
};
using CaseEdits = std::vector<CaseEdit>;

/// How far a box on a line reaches above and below the baseline, leading included. CSS px.
struct LineExtent {
    double above = 0;
    double below = 0;
};

/// CSS px by which type that follows the viewport is drawn smaller than its computed size, taken over all
/// widths: the mean of what engines' grids of sizes cut off, 0.0128 in Chromium (to 1/100 px, then to 1/64
/// px) and 0.0083 in Firefox (to 1/60 px). Lines are broken by the size less this, so that the engines'
/// differ from them to both sides alike and wrap points keep a closed form; one figure for both, so that it
/// makes no difference between them.
inline constexpr double fluidTruncation = 0.0105;

class BreakProfile {
public:
    virtual ~BreakProfile() = default;
    [[nodiscard]] virtual std::string_view name() const = 0;
    /// Whose browsers break so, as people call them: `Chromium’s family`, `Firefox`. UTF-8.
    [[nodiscard]] virtual std::string_view title() const = 0;
    /// Its like at `ratio` device px to a CSS px.
    [[nodiscard]] virtual std::unique_ptr<BreakProfile> withRatio(double ratio) const = 0;
    /// Where lines may break in `text` (white space already collapsed). CSS Text 3 § 5.1.
    [[nodiscard]] virtual BreakMap breaks(std::u16string_view text, const std::string& language) const = 0;
    /// True if a line may break before unit `i` where, and only where, the word it is in alone exceeds its
    /// line.
    [[nodiscard]] virtual bool breaksOverflowingWordBefore(std::u16string_view text, std::size_t i) const = 0;
    /// Case mapping. CSS Text 3 § 2.1.
    [[nodiscard]] virtual CaseEdits uppercase(std::u16string_view text,
                                              const std::string& language) const = 0;
    [[nodiscard]] virtual CaseEdits capitalize(std::u16string_view text,
                                               const std::string& language) const = 0;
    /// True if a line that breaks without a space is shaped anew to its break, so kerning across it is lost.
    [[nodiscard]] virtual bool reshapesAtBreaks() const = 0;
    /// True if a face that lacks a space of some width (U+2000 to U+200A and their like) makes it of its own
    /// space, as HarfBuzz does, rather than leave it to the next face.
    [[nodiscard]] virtual bool makesSpaces() const = 0;
    /// False for a script that is not kerned unless `font-kerning` says `normal`; `script` is an ISO 15924
    /// tag of four letters. CSS Fonts 4 § 6.3 leaves `auto` to the engine.
    [[nodiscard]] virtual bool kerns(std::string_view script) const = 0;
    /// False for a character that is shaped apart from its neighbours, so that nothing is kerned across it.
    [[nodiscard]] virtual bool shapesAcross(char16_t unit) const = 0;
    /// True if letter spacing follows a soft hyphen's drawn hyphen.
    [[nodiscard]] virtual bool spacesHyphen() const = 0;
    /// True if a line feed between two Chinese or Japanese characters is dropped. CSS Text 3 § 4.1.3.
    [[nodiscard]] virtual bool dropsLineFeedBetweenIdeographs() const = 0;
    /// True if a classic scrollbar that the root always shows is taken out of vw.
    [[nodiscard]] virtual bool vwExcludesSteadyScrollbar() const = 0;
    /// CSS px on the grid engines stack boxes by, so that what is laid out does not drift from them down a
    /// long page. Widths stay real numbers: wrap points are exact.
    [[nodiscard]] virtual double snapped(double length) const = 0;
    /// A line's height in CSS px for a number times a font size in CSS px, and for a length, on that grid.
    [[nodiscard]] virtual double lineHeight(double size, double number) const = 0;
    [[nodiscard]] virtual double lineHeight(double length) const = 0;
    /// CSS px that the part of a font size which follows the viewport is cut down to a multiple of where
    /// boxes are stacked; 0 for none.
    [[nodiscard]] virtual double fluidStep() const = 0;
    /// What of a font size, and of a glyph's advance or a spacing at that size, is left on the engine's
    /// grids: what a box that shrinks to its label is as wide as. CSS px.
    [[nodiscard]] virtual double drawnSize(double size) const = 0;
    [[nodiscard]] virtual double drawnAdvance(double advance) const = 0;
    /// Where a box of `lineHeight` whose strut is `face` at `size` (both CSS px) stands on its line: half the
    /// leading on each side, in the engine's rounding. CSS Inline 3 § 5.2.
    [[nodiscard]] virtual LineExtent extent(const Face& face, double size, double lineHeight) const = 0;
    /// True for text that the engine breaks or draws by means of its own that are not to be had: what is
    /// computed for it may differ from what the engine does.
    [[nodiscard]] virtual bool usesEngineData(std::u16string_view text) const = 0;
    /// Where lines end under `text-wrap: balance`: indices into `paragraph.opportunities()`, one for each
    /// line; empty if the text is to be broken greedily. CSS Text 4 § 5.2 leaves the rule to the engine.
    [[nodiscard]] virtual std::vector<std::uint32_t> balanced(const Paragraph& paragraph,
                                                              const LineQuery& query) const = 0;
    /// The same along a stretch of widths on which greedy breaking keeps making `greedy` lines, none of them
    /// too wide: how many lines there are under `balance`. `until` is lowered to where that may change.
    [[nodiscard]] virtual std::uint32_t balancedLines(const Paragraph& paragraph,
                                                      const LineQueryOf<units::Linear>& query,
                                                      std::uint32_t greedy, double& until) const = 0;
};

/// `blink` or `gecko`; null for any other name.
const BreakProfile* profile(std::string_view name);
/// The same where a CSS px is `ratio` device px, above 0: engines round the metrics of faces, and some all of
/// what they stack, to device px. CSS Values 4 § 6.2. Kept until the program ends.
const BreakProfile& atRatio(const BreakProfile& profile, double ratio);
const BreakProfile& blink();
const BreakProfile& gecko();
/// All there are, in the order they are told.
const std::vector<const BreakProfile*>& profiles();

}  // namespace tenter::text
