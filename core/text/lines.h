// Breaking a prepared paragraph into lines at a given font size and width.
#pragma once

#include <algorithm>
#include <cstdint>
#include <type_traits>
#include <vector>

#include "project/settings.h"
#include "text/paragraph.h"
#include "units/linear.h"

namespace tenter::text {

/// The slack below which a line is a tight fit: another browser or platform may break it differently. A share
/// of the line's width. Measured in Chromium 156 and Firefox 153: all their differences lay within 0.15 %.
inline constexpr double tightSlack = 0.0025;

/// Engines that break at the same places may still differ in lines with less slack, because of rounding.
inline constexpr double roundingSlack = 0.0015;

/// One line. Clusters [first, end) count for its width; clusters [end, next) are the spaces removed at its
/// end.
struct Line {
    std::uint32_t first = 0;
    std::uint32_t end = 0;
    std::uint32_t next = 0;
    bool hyphen = false;  ///< true if the line ends in a soft hyphen, which is drawn
    double width = 0;     ///< CSS px, hyphen and corrections included
    double slack =
        1;  ///< smallest change of the text width, as a share of it, that moves a line break; at most 1
};

/// Positions on a line that is not broken.
struct DrawnPositions {
    std::vector<double>
        ends;  ///< for each cluster the end of those before it, and the end of the line; CSS px
    const BreakProfile* profile = nullptr;  ///< rounds the advances of hyphens, too
};

/// The values that decide how a paragraph is broken into lines. CSS px.
template <class Number>
struct LineQueryOf {
    Number size = 16;      ///< font size
    Number available = 0;  ///< the width lines are broken at
    Number letterSpacing = 0;
    Number wordSpacing = 0;
    project::OverflowWrap overflowWrap = project::OverflowWrap::Normal;
    bool balance = false;
    /// Positions of the clusters as the engine rounds them; null: computed from `size` and the spacings. At
    /// one width only.
    const DrawnPositions* drawn = nullptr;
    /// Font size and line height in CSS px that decide how tall each line is; 0: all lines are equally tall.
    /// At one width only.
    double heightSize = 0, lineHeight = 0;
};
using LineQuery = LineQueryOf<double>;

/// Width in CSS px of `ems`, which a break adds to its line: a hyphen, or kerning undone.
template <class Number>
Number correctionWidth(double ems, const LineQueryOf<Number>& query) {
    if constexpr (std::is_same_v<Number, double>)
        if (query.drawn != nullptr && query.drawn->profile != nullptr)
            return query.drawn->profile->drawnAdvance(ems * query.size);
    return ems * query.size;
}

/// What the width of a line is made of: em of its size, letter spacings and word spacings.
struct LineContent {
    double ems = 0;
    std::uint32_t letters = 0;
    std::uint32_t words = 0;
};

/// The content of the line from cluster `first` to opportunity `at`; `startCorrection` is in em.
inline LineContent lineContent(const Paragraph& paragraph, std::uint32_t first, double startCorrection,
                               const Opportunity& at) {
    const std::uint32_t end = std::max(at.lineEnd, first);
    return {paragraph.ems(first, end) + startCorrection + at.endCorrection,
            paragraph.letters(first, end) + at.endLetterUnits, paragraph.words(first, end)};
}

/// Width in CSS px of the same line.
template <class Number>
Number lineWidth(const Paragraph& paragraph, const LineQueryOf<Number>& query, std::uint32_t first,
                 double startCorrection, const Opportunity& at) {
    if constexpr (std::is_same_v<Number, double>)
        if (query.drawn != nullptr) {
            const std::uint32_t end = std::max(at.lineEnd, first);
            return query.drawn->ends[end] - query.drawn->ends[first] +
                   correctionWidth(startCorrection + at.endCorrection, query) +
                   at.endLetterUnits * query.letterSpacing;
        }
    const LineContent content = lineContent(paragraph, first, startCorrection, at);
    Number width = content.ems * query.size;
    if (!units::isZero(query.letterSpacing)) width += content.letters * query.letterSpacing;
    if (!units::isZero(query.wordSpacing)) width += content.words * query.wordSpacing;
    return width;
}

/// Appends the paragraph's lines to `lines`; an empty paragraph has none.
void breakLines(const Paragraph& paragraph, const LineQuery& query, const BreakProfile& profile,
                std::vector<Line>& lines);

/// The extent of `line` of a paragraph with font size `size` and line height `lineHeight` (CSS px): the union
/// of the extents of the paragraph's strut and of the strut of each run in another weight or style. CSS
/// Inline 3 § 5.3.
LineExtent extentOf(const Paragraph& paragraph, const Line& line, double size, double lineHeight,
                    const BreakProfile& profile);

/// Max-content width in CSS px: the widest line if lines end at forced breaks only. CSS Sizing 3 § 5.1.
template <class Number>
Number maxContent(const Paragraph& paragraph, const LineQueryOf<Number>& query) {
    Number widest = 0;
    std::uint32_t first = 0;
    for (const Opportunity& end : paragraph.opportunities()) {
        if (end.kind != Opportunity::Kind::Forced) continue;
        widest = units::max(widest, lineWidth(paragraph, query, first, 0, end));
        first = end.cluster;
    }
    return widest;
}

/// Max-content width in CSS px of a label at font size `size`, with the engine's rounding of sizes and
/// advances: the width of a box that shrinks to its label.
double labelWidth(const Paragraph& paragraph, const LineQuery& query, double size,
                  const BreakProfile& profile);

/// Computes `drawn` for font size `size` in CSS px: each advance and spacing on the engine's grid.
void findDrawnPositions(const Paragraph& paragraph, const LineQuery& query, double size,
                        const BreakProfile& profile, DrawnPositions& drawn);

/// Min-content width in CSS px: the widest word. CSS Sizing 3 § 5.1.
template <class Number>
Number minContent(const Paragraph& paragraph, const LineQueryOf<Number>& query) {
    Number widest = 0;
    std::uint32_t first = 0;
    double inside = 0;
    // Engines measure words in the unbroken text. Measured in Chromium 156: the min-content width of "WA" is
    // that of a kerned "W".
    auto widen = [&](const LineQueryOf<Number>& how, const Opportunity& end) {
        Opportunity unbroken = end;
        unbroken.endCorrection =
            end.kind == Opportunity::Kind::SoftHyphen ? paragraph.hyphenAdvanceBefore(end.cluster) : 0;
        widest = units::max(widest, lineWidth(paragraph, how, first, inside - end.insideLigature, unbroken));
        first = end.cluster;
        inside = end.insideLigature;
    };
    auto word = [&](const Opportunity& end) { widen(query, end); };
    if (query.overflowWrap != project::OverflowWrap::Anywhere) {
        for (const Opportunity& end : paragraph.opportunities())
            word(end);
        return widest;
    }
    // Breaks inside words count for min-content with `anywhere` only, not with `break-word`. CSS Text 3
    // § 5.5.
    LineQueryOf<Number> cutting = query;
    if (!paragraph.spacesMinContent()) {
        cutting.letterSpacing = Number(0);
        cutting.drawn = nullptr;
    }
    // Firefox 153 adds no hyphen there.
    auto piece = [&](Opportunity end) {
        if (!paragraph.reservesHyphen() && end.kind == Opportunity::Kind::SoftHyphen)
            end.kind = Opportunity::Kind::Plain;
        widen(cutting, end);
    };
    auto cut = paragraph.overflowOpportunities().begin();
    for (const Opportunity& end : paragraph.opportunities()) {
        for (; cut != paragraph.overflowOpportunities().end() && cut->cluster < end.cluster; ++cut)
            piece(*cut);
        piece(end);
    }
    return widest;
}

}  // namespace tenter::text
