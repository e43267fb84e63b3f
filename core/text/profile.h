// Break profiles: the rules in which browser engines differ. There is one file for each under profiles/. A
// new profile is one more file and one line in profiles/profiles.def.
#pragma once

#include <hb.h>

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "units/length.h"

namespace tenter::units {
struct Linear;  // linear.h
}

namespace tenter::text {

class Face;       // fonts.h
class Paragraph;  // paragraph.h
template <class Number>
struct LineQueryOf;  // lines.h
using LineQuery = LineQueryOf<double>;

/// Break opportunities of a text: entry i is true if a line may break before UTF-16 code unit i.
using BreakMap = std::vector<bool>;

/// A replacement by case mapping: `by` replaces the code units [begin, begin + length).
struct CaseEdit {
    std::uint32_t begin = 0;
    std::uint32_t length = 0;
    std::u16string by;
};
using CaseEdits = std::vector<CaseEdit>;

/// Height of a line above and below the baseline, including half the leading on each side. CSS px.
struct LineExtent {
    double above = 0;
    double below = 0;
};

/// The rules of one browser engine for line breaks, case mapping, rounding and `text-wrap: balance`.
class BreakProfile {
public:
    virtual ~BreakProfile() = default;
    /// The name for options and files: `blink` or `gecko`.
    [[nodiscard]] virtual std::string_view name() const = 0;
    /// The browser's name for people: `Chromium` or `Firefox`.
    [[nodiscard]] virtual std::string_view title() const = 0;
    /// The well-known browsers with this engine, for help: `Chrome, Edge, Opera`.
    [[nodiscard]] virtual std::string_view browsers() const = 0;
    /// The same profile where a CSS px is `ratio` device px.
    [[nodiscard]] virtual std::unique_ptr<BreakProfile> withRatio(double ratio) const = 0;
    /// Device px in a CSS px.
    [[nodiscard]] virtual double ratio() const { return 1; }
    /// The soft wrap opportunities of `text`, whose white space is already collapsed. CSS Text 3 § 5.1.
    [[nodiscard]] virtual BreakMap breaks(std::u16string_view text, const std::string& language) const = 0;
    /// True if a line may break before code unit `i` only when the word is wider than the line, even with
    /// `overflow-wrap: normal`.
    [[nodiscard]] virtual bool breaksOverflowingWordBefore(std::u16string_view text, std::size_t i) const = 0;
    /// True if a line does not end before code unit `i` if only one character precedes it on that line: the
    /// break depends on the character before that one.
    [[nodiscard]] virtual bool needsTwoBefore(std::u16string_view text, std::size_t i) const = 0;
    /// What happens if a line fits up to a soft hyphen, but not with the hyphen. True: the line is broken
    /// again in the available width less that of the hyphen, and a word may be cut between a letter and its
    /// soft hyphen. False: the soft hyphen is no place to end the line.
    [[nodiscard]] virtual bool reservesHyphen() const = 0;
    /// The replacements that `text-transform` makes. CSS Text 3 § 2.1.
    [[nodiscard]] virtual CaseEdits uppercase(std::u16string_view text,
                                              const std::string& language) const = 0;
    [[nodiscard]] virtual CaseEdits capitalize(std::u16string_view text,
                                               const std::string& language) const = 0;
    /// True if a line that ends without a space is reshaped up to its break, so that kerning across the break
    /// is lost.
    [[nodiscard]] virtual bool reshapesAtBreaks() const = 0;
    /// True if a face that lacks a fixed-width space (such as U+2000 to U+200A) makes it from its own space,
    /// as HarfBuzz does; false if the next face of the family list draws it.
    [[nodiscard]] virtual bool makesSpaces() const = 0;
    /// True if a face that lacks a letter with a mark composes it from letter and mark; false if the next
    /// face of the family list draws it.
    [[nodiscard]] virtual bool composes() const = 0;
    /// True if a face that lacks a hyphen or a no-break hyphen (U+2010, U+2011) draws it with its
    /// hyphen-minus; false if only HarfBuzz replaces it: a no-break hyphen by a hyphen.
    [[nodiscard]] virtual bool drawsHyphenMinus() const = 0;
    /// True if `font-kerning: auto` kerns `script`, an ISO 15924 tag of four letters. CSS Fonts 4 § 6.3
    /// leaves `auto` to the engine.
    [[nodiscard]] virtual bool kerns(std::string_view script) const = 0;
    /// The script that shapes text in which no character has a script, such as `11:00`. UAX #24 leaves it
    /// open.
    [[nodiscard]] virtual hb_script_t scriptOfCommon() const = 0;
    /// True if a character of no script has a script of its piece of text only: text of one direction and one
    /// style between forced breaks. False: of the paragraph.
    [[nodiscard]] virtual bool resolvesScriptsByPiece() const = 0;
    /// True if a line that starts with the character before code unit `i` may break before `i`, although the
    /// unbroken text has no break there: the engine does not look at the text before the line.
    [[nodiscard]] virtual bool breaksAtLineStart(std::u16string_view text, std::size_t i) const = 0;
    /// True if a soft hyphen is shaped in the first face of its family list, so that a text in another face
    /// is shaped in two pieces; false if text is shaped as if it had no soft hyphen.
    [[nodiscard]] virtual bool shapesSoftHyphens() const = 0;
    /// True if `unit` is shaped together with its neighbours; false if nothing is kerned across it.
    [[nodiscard]] virtual bool shapesAcross(char16_t unit) const = 0;
    /// True if letter spacing is added after each grapheme cluster, and once after a ligature of several;
    /// false if after each cluster of HarfBuzz. A conjunct in Devanagari is one grapheme cluster and may be
    /// two clusters of HarfBuzz, or the reverse.
    [[nodiscard]] virtual bool spacesGraphemes() const = 0;
    /// True if letter spacing is added after `character` in a run of `script`; false for the letters of
    /// cursive scripts, which join. CSS Text 3 § 8.2 leaves the set of characters to the engine.
    [[nodiscard]] virtual bool spacesAfter(char32_t character, hb_script_t script) const = 0;
    /// True if the min-content width under `overflow-wrap: anywhere` includes letter spacing.
    [[nodiscard]] virtual bool spacesMinContent() const = 0;
    /// True if letter spacing is added after the hyphen that is drawn at a soft hyphen.
    [[nodiscard]] virtual bool spacesHyphen() const = 0;
    /// True if a line feed between two Chinese or Japanese characters is removed. CSS Text 3 § 4.1.3.
    [[nodiscard]] virtual bool dropsLineFeedBetweenIdeographs() const = 0;
    /// True if a `min-height` in a subgrid makes its track too tall: the track is at least that height plus
    /// half the difference of the gaps on each side, not counting padding and border of the subgrid. By CSS
    /// Grid 2 § 9 the height includes the difference.
    [[nodiscard]] virtual bool addsGapToMinHeight() const = 0;
    /// Half of the row gap `gap` in CSS px, on the engine's grid: a track of a grid is lower by this much on
    /// each side with a gap than the part that it has in a subgrid without gaps. CSS Grid 2 § 9.
    [[nodiscard]] virtual double halfOfGap(double gap) const = 0;
    /// True if `vw` excludes a classic scrollbar that the root always shows.
    [[nodiscard]] virtual bool vwExcludesSteadyScrollbar() const = 0;
    /// `length` in CSS px, rounded to the grid on which the engine places boxes vertically, so that positions
    /// do not drift from the browser's down a long page. Widths are not rounded, so that wrap points are
    /// exact.
    [[nodiscard]] virtual double snapped(double length) const = 0;
    /// The same for the length `declared`, which resolves to `length` CSS px. Engines round some units in
    /// another way.
    [[nodiscard]] virtual double snapped(double length, const units::Length& declared) const = 0;
    /// Width in CSS px on the engine's grid of column `column` of a grid of `columns` equal columns that
    /// share `room` CSS px. CSS Grid 2 § 11.7 leaves the rounding to the engine.
    [[nodiscard]] virtual double columnWidth(double room, int columns, int column) const = 0;
    /// Line height in CSS px on that grid, for `number` times the font size `size` (CSS px), and for a
    /// length `declared`, which resolves to `length` CSS px.
    [[nodiscard]] virtual double lineHeight(double size, double number) const = 0;
    [[nodiscard]] virtual double lineHeight(double length, const units::Length& declared) const = 0;
    /// The least font size in CSS px at which the engine draws text in `language`; 0 if there is none.
    /// Lengths in em and the computed font size do not change. CSS Fonts 4 § 2.5 allows a minimum.
    [[nodiscard]] virtual double leastSize(const std::string& language) const = 0;
    /// CSS px that the engine adds to a border width before it rounds it down to whole device px.
    [[nodiscard]] virtual double borderAllowance() const = 0;
    /// The step in CSS px to which the engine truncates the `vw` term of a font size when it computes
    /// heights, and of the root's font size, which lengths in rem refer to; 0 if it does not truncate.
    [[nodiscard]] virtual double fluidStep() const = 0;
    /// A font size at which the engine draws `face` (null: a TrueType face), and an advance or spacing at
    /// that size, rounded to the engine's grid, in CSS px. They decide the width of a box that shrinks to
    /// its label, and where lines break if the size does not depend on the width.
    [[nodiscard]] virtual double drawnSize(double size, const Face* face) const = 0;
    [[nodiscard]] virtual double drawnAdvance(double advance) const = 0;
    /// `width` in CSS px of text in one inline box on a line, as the engine adds it to that of the next.
    [[nodiscard]] virtual double drawnInline(double width) const = 0;
    /// Mean amount in CSS px by which the engine truncates a font size that follows the viewport or card.
    /// Lines are broken at the size less this amount, so that the engine's sizes lie equally on both sides
    /// of it and wrap points keep a closed form.
    [[nodiscard]] virtual double meanTruncation() const = 0;
    /// CSS px by which a line may exceed the available width and still fit, on average over the grid of
    /// line and width.
    [[nodiscard]] virtual double fitAllowance() const = 0;
    /// Largest difference between a font size in this engine and the computed one that counts as agreement,
    /// in CSS px.
    [[nodiscard]] virtual double sizeTolerance() const = 0;
    /// The extent of an inline box of height `lineHeight` with `face` at `size` (CSS px) as its strut: half
    /// the leading on each side, rounded as in the engine. Its two sides add up to `lineHeight`. CSS Inline 3
    /// § 5.2.
    [[nodiscard]] virtual LineExtent extent(const Face& face, double size, double lineHeight) const = 0;
    /// True if the engine breaks or draws `text` with data that Tenter does not have (a dictionary, an emoji
    /// font): computed lines may then differ from the engine's.
    [[nodiscard]] virtual bool usesEngineData(std::u16string_view text) const = 0;
    /// Line ends under `text-wrap: balance`, as indices into `paragraph.opportunities()`; empty if the engine
    /// breaks the paragraph greedily. CSS Text 4 § 5.2 leaves the rule to the engine.
    [[nodiscard]] virtual std::vector<std::uint32_t> balanced(const Paragraph& paragraph,
                                                              const LineQuery& query) const = 0;
    /// The number of lines under `text-wrap: balance` over a range of widths in which greedy breaking makes
    /// `greedy` lines, none of which overflows. Lowers `until` to the end of the range in which the number is
    /// valid, in CSS px past its start.
    [[nodiscard]] virtual std::uint32_t balancedLines(const Paragraph& paragraph,
                                                      const LineQueryOf<units::Linear>& query,
                                                      std::uint32_t greedy, double& until) const = 0;
};

/// The profile called `name`, such as `blink` or `gecko`; null if there is none.
const BreakProfile* profile(std::string_view name);
/// `profile` where a CSS px is `ratio` device px (above 0). Both engines round the metrics of faces to device
/// px, Chromium also the heights of boxes. CSS Values 4 § 6.2. The result lives until the program ends.
const BreakProfile& atRatio(const BreakProfile& profile, double ratio);
// `blink()`, `gecko()`, …: one function for each profile, defined in its file.
#define TENTER_PROFILE(profile) const BreakProfile& profile();
#include "text/profiles/profiles.def"
#undef TENTER_PROFILE
/// All profiles, in the order in which they are shown.
const std::vector<const BreakProfile*>& profiles();
/// The profile for computations that need only one: the first of `profiles()`.
const BreakProfile& defaultProfile();
/// The profile of the browser called `title`, such as `Firefox`; null if there is none.
const BreakProfile* profileOfBrowser(std::string_view title);

/// Adds a profile at the end of `profiles()` for as long as this object exists. Tests use it to show that
/// everything works with any number of profiles. The profile itself must live until the program ends, because
/// stores keep its address. No other thread may use profiles when the object is made or destroyed.
class AddedProfile {
public:
    explicit AddedProfile(const BreakProfile& profile);
    ~AddedProfile();
    AddedProfile(const AddedProfile&) = delete;
    AddedProfile& operator=(const AddedProfile&) = delete;
};

}  // namespace tenter::text
