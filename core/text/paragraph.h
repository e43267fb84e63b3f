// A paragraph prepared once: shaped at unit em, with every place where a line may break. No width needs a
// second shaping, since advances scale with the size.
#pragma once

#include <cstdint>
#include <functional>
#include <map>
#include <memory>
#include <mutex>
#include <string>
#include <vector>

#include "project/project.h"
#include "text/fonts.h"
#include "text/item_shaper.h"
#include "text/profile.h"

namespace tenter::text {

/// A run of characters in one manner, face and direction.
struct ShapedRun {
    FacePtr face;
    project::Run::Kind kind = project::Run::Kind::Plain;
    std::string to;  ///< a link's address
    bool fallback = false;
    /// First face of the family in this run's manner: it decides how tall the run's box is on its line,
    /// whatever face draws the characters. CSS Inline 3 § 5.3.
    FacePtr strut;
    /// The hyphen drawn at a soft hyphen of this run, and its advance in em.
    Glyph hyphen;
    float hyphenAdvance = 0;
};

/// The smallest piece of shaped text, in logical order.
struct Cluster {
    std::uint32_t begin = 0;  ///< UTF-16 offset into the paragraph's text
    std::uint32_t firstGlyph = 0;
    std::uint16_t glyphCount = 0;
    std::uint16_t run = 0;
    std::uint8_t level = 0;        ///< bidirectional level, UAX #9
    bool space = false;            ///< a collapsible space: dropped at a line's end
    bool visible = true;           ///< false for a soft hyphen, a zero-width space, a forced break
    std::uint8_t letterUnits = 0;  ///< times letter spacing is added
    std::uint8_t wordUnits = 0;    ///< times word spacing is added
    float advance = 0;             ///< em, spacing not included
};

/// A cluster as it is drawn on a line that starts or ends beside it, inside what was shaped together.
struct ReshapedCluster {
    std::uint32_t index = 0;  ///< in the paragraph
    float advance = 0;        ///< em, spacing not included
    std::vector<Glyph> glyphs;
};

/// A place where a line may or must end: before cluster `cluster`.
struct Opportunity {
    /// OverflowWrap: inside a word that `overflow-wrap` allows to be cut. OverflowingWord: inside any word
    /// that is wider than its line.
    enum class Kind : std::uint8_t { Space, Plain, SoftHyphen, Forced, OverflowWrap, OverflowingWord };
    std::uint32_t cluster = 0;  ///< first cluster of the next line
    std::uint32_t lineEnd = 0;  ///< one past the last cluster of this line that counts for fit
    Kind kind = Kind::Space;
    float endCorrection = 0;    ///< em, added to a line that ends here (kerning undone, a hyphen's advance)
    float startCorrection = 0;  ///< em, added to a line that starts here
    std::uint8_t endLetterUnits = 0;  ///< letter spacing added with the hyphen
    /// True if a line that is too wide ends here if it starts one character before, although the unbroken
    /// text has no break here.
    bool breaksAtLineStart = false;
    /// True if a line does not end here that starts only one character before.
    bool needsTwoBefore = false;
    /// Values with which the engine decides if a line that is cut here fits. `fitCorrection`: em, added to
    /// its width. `insideLigature`: em, from the place that the engine takes for the cut inside a ligature.
    /// `reshapes`: the cut changes glyphs. A line that starts after cluster `affected` is not corrected.
    float fitCorrection = 0, insideLigature = 0;
    std::uint32_t affected = 0;
    bool reshapes = false;
};

/// A place in the copy that a paragraph was made from.
struct CopyPosition {
    std::uint32_t run = 0;   ///< index in the copy
    std::uint32_t unit = 0;  ///< UTF-16 code units from the start of that run's text; 0 in a forced break
    // NOLINTNEXTLINE(modernize-use-nullptr): clang-tidy 14 takes the zero of a defaulted <=> for a pointer.
    friend auto operator<=>(const CopyPosition&, const CopyPosition&) = default;
};

/// What decides a paragraph's shaping; sizes and widths do not.
struct ShapingStyle {
    std::vector<std::string> family;
    double weight = 400;
    bool italic = false;
    project::LetterCase letterCase = project::LetterCase::None;
    bool ligatures = true;    ///< false with letter spacing. CSS Text 3 § 8.2
    bool softHyphens = true;  ///< `hyphens: manual`
    /// Text that is not aligned to its start, and text in a box with a border or a background. They decide
    /// whether Chromium reshapes a line without the spaces at its end (ParagraphBuilder::showsEndOf).
    bool alignsEnds = false, decorated = false;
    std::string language = "en";
    bool rightToLeft = false;
    friend auto operator<=>(const ShapingStyle&, const ShapingStyle&) = default;
};

class Paragraph {
public:
    /// Shapes `copy`. Copy is hostile: any bytes give a paragraph, bad UTF-8 becomes U+FFFD.
    static std::shared_ptr<const Paragraph> prepare(const project::Copy& copy, const ShapingStyle& style,
                                                    Fonts& fonts, const BreakProfile& profile);

    [[nodiscard]] const std::u16string& text() const { return text_; }
    [[nodiscard]] const std::vector<Cluster>& clusters() const { return clusters_; }
    /// The place in the copy that code unit `unit` of `text()` comes from. White space that collapses stands
    /// for its first character, and all characters that case mapping makes of one for that one. At the end of
    /// `text()`, the end of the copy.
    [[nodiscard]] CopyPosition sourceOf(std::uint32_t unit) const;
    /// The code unit of `text()` that shows the place in the copy; where that place is not shown, as in white
    /// space that collapses, the next one that is. The size of `text()` past the last.
    [[nodiscard]] std::uint32_t unitAt(CopyPosition position) const;
    [[nodiscard]] const std::vector<Glyph>& glyphs() const { return glyphs_; }
    [[nodiscard]] const std::vector<ShapedRun>& runs() const { return runs_; }
    /// First face of the family in the paragraph's own manner; null if there is none.
    [[nodiscard]] const FacePtr& strut() const { return strut_; }
    /// True if some run's strut is another than the paragraph's, so that lines may be of unlike height.
    [[nodiscard]] bool unlikeStruts() const { return unlikeStruts_; }
    /// Opportunities in order, the paragraph's end last (Forced), without overflow opportunities.
    [[nodiscard]] const std::vector<Opportunity>& opportunities() const { return opportunities_; }
    /// Opportunities inside words, in order. The first call corrects them; several threads may call it.
    [[nodiscard]] const std::vector<Opportunity>& overflowOpportunities() const;
    /// The fewest lines it can have: one for each forced break and one more.
    [[nodiscard]] std::size_t forcedLines() const;
    [[nodiscard]] bool rightToLeft() const { return rightToLeft_; }
    /// `BreakProfile::spacesMinContent` of the profile that prepared it.
    [[nodiscard]] bool spacesMinContent() const { return spacesMinContent_; }
    /// `BreakProfile::reservesHyphen` of the profile that prepared it.
    [[nodiscard]] bool reservesHyphen() const { return reservesHyphen_; }
    [[nodiscard]] bool empty() const { return clusters_.empty(); }

    /// Sum over clusters [first, end): ems, letter spacings, word spacings.
    [[nodiscard]] double ems(std::uint32_t first, std::uint32_t end) const { return ems_[end] - ems_[first]; }
    [[nodiscard]] std::uint32_t letters(std::uint32_t first, std::uint32_t end) const {
        return letters_[end] - letters_[first];
    }
    [[nodiscard]] std::uint32_t words(std::uint32_t first, std::uint32_t end) const {
        return words_[end] - words_[first];
    }
    /// Grapheme clusters (UAX #29) that start in clusters [first, end).
    [[nodiscard]] std::uint32_t graphemes(std::uint32_t first, std::uint32_t end) const {
        return graphemes_[end] - graphemes_[first];
    }
    /// The advance in em of the hyphen of a line that ends before cluster `cluster`, above 0. The run of its
    /// soft hyphen decides: bold and italic have hyphens of other widths.
    [[nodiscard]] float hyphenAdvanceBefore(std::uint32_t cluster) const {
        return runs_[clusters_[cluster - 1].run].hyphenAdvance;
    }
    /// The clusters of the line of clusters [first, end) that the breaks at its ends change, in order: a
    /// ligature that a break divides, letters that no longer join or kern. An engine that does not reshape
    /// lines keeps all advances; the letters of its divided ligatures are here too, because it draws a share
    /// of the ligature that no glyph shows.
    [[nodiscard]] std::vector<ReshapedCluster> reshaped(std::uint32_t first, std::uint32_t end) const;
    /// True if no inline box and no piece of text of another direction starts or ends between two clusters
    /// that follow each other.
    [[nodiscard]] bool isInOneInline(const Cluster& one, const Cluster& next) const {
        return one.level == next.level && runs_[one.run].kind == runs_[next.run].kind;
    }
    /// Clusters [first, end) as UTF-8.
    [[nodiscard]] std::string utf8(std::uint32_t first, std::uint32_t end) const;
    /// Memory held, in bytes, without what faces hold: an estimate.
    [[nodiscard]] std::size_t memory() const;
    /// What the fonts lacked, in words.
    [[nodiscard]] const std::vector<FontNote>& notes() const { return notes_; }

private:
    friend class ParagraphBuilder;
    /// What joins a cluster with the one before it. Shaped: a break between them changes glyphs.
    enum class Joint : std::uint8_t { None, Shaped, Ligature };

    [[nodiscard]] const Item& itemOf(std::uint32_t cluster) const;
    /// True if a line that ends before `cluster` draws glyphs that differ from those of unbroken text.
    [[nodiscard]] bool breakChangesGlyphs(std::uint32_t cluster) const;
    void addReshaped(std::uint32_t first, std::uint32_t end, std::vector<ReshapedCluster>& list) const;

    std::u16string text_;
    std::vector<CopyPosition> sources_;  // for each unit of the text, and its end; never falls
    std::vector<Cluster> clusters_;
    std::vector<Joint> joints_;  // for each cluster
    std::vector<Glyph> glyphs_;
    std::vector<Item> items_;
    ItemShaper shaper_;
    std::vector<ShapedRun> runs_;
    FacePtr strut_;
    bool unlikeStruts_ = false;
    std::vector<Opportunity> opportunities_, overflowOpportunities_;
    std::vector<double> ems_;
    std::vector<std::uint32_t> letters_, words_, graphemes_;
    bool rightToLeft_ = false;
    bool reshapesAtBreaks_ = true;
    bool spacesMinContent_ = true;
    bool reservesHyphen_ = true;
    std::vector<FontNote> notes_;
    mutable std::once_flag corrected_;
    mutable std::function<void(Paragraph&)> correctOverflow_;  // until the first `overflowOpportunities()`
};

using ParagraphPtr = std::shared_ptr<const Paragraph>;

}  // namespace tenter::text
