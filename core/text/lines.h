// Breaking a prepared paragraph into lines at one size and width.
#pragma once

#include <algorithm>
#include <cstdint>
#include <vector>

#include "project/settings.h"
#include "text/paragraph.h"
#include "units/linear.h"

namespace tenter::text {

/// Lines with less slack than this share of their width are tight: engines and platforms may break there
/// otherwise. Measured in Chromium 156 and Firefox 153: every difference of theirs lay within 0.15 %.
inline constexpr double tightSlack = 0.0025;

/// A line: clusters [first, end) count for its width; [end, next) are spaces dropped at its end.
struct Line {
    std::uint32_t first = 0;
    std::uint32_t end = 0;
    std::uint32_t next = 0;
    bool hyphen = false;
    double width = 0;  ///< CSS px, hyphen and corrections included
    double slack = 1;  ///< how far this line is from breaking otherwise, as a share of its width; at most 1
};

/// What lines depend on besides the paragraph. CSS px.
template <class Number>
struct LineQueryOf {
    Number size = 16;
    Number available = 0;
    Number letterSpacing = 0;
    Number wordSpacing = 0;
    project::OverflowWrap overflowWrap = project::OverflowWrap::Normal;
    bool balance = false;
};
using LineQuery = LineQueryOf<double>;

/// Width in CSS px of a line from cluster `first` (with that start's correction in em) to opportunity `at`.
template <class Number>
Number lineWidth(const Paragraph& paragraph, const LineQueryOf<Number>& query, std::uint32_t first,
                 double startCorrection, const Opportunity& at) {
    const std::uint32_t end = std::max(at.lineEnd, first);
    Number width = (paragraph.ems(first, end) + startCorrection + at.endCorrection) * query.size;
    if (!units::isZero(query.letterSpacing))
        width += (paragraph.letters(first, end) + at.endLetterUnits) * query.letterSpacing;
    if (!units::isZero(query.wordSpacing)) width += paragraph.words(first, end) * query.wordSpacing;
    return width;
}

/// Appends the paragraph's lines to `lines`; an empty paragraph has none.
void breakLines(const Paragraph& paragraph, const LineQuery& query, const BreakProfile& profile,
                std::vector<Line>& lines);

/// The paragraph on one line per forced break: max-content width, CSS px. CSS Sizing 3 § 5.1.
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

/// The same of a box that shrinks to a label of font size `size`, as the engine's grids make it.
double labelWidth(const Paragraph& paragraph, const LineQuery& query, double size,
                  const BreakProfile& profile);

/// Its widest word: min-content width, CSS px. CSS Sizing 3 § 5.1.
template <class Number>
Number minContent(const Paragraph& paragraph, const LineQueryOf<Number>& query) {
    Number widest = 0;
    std::uint32_t first = 0;
    double correction = 0;
    auto word = [&](const Opportunity& end) {
        widest = units::max(widest, lineWidth(paragraph, query, first, correction, end));
        first = end.cluster;
        correction = end.startCorrection;
    };
    if (query.overflowWrap != project::OverflowWrap::Anywhere) {
        for (const Opportunity& end : paragraph.opportunities())
            word(end);
        return widest;
    }
    // Only `anywhere` lets a word's cuts count for the narrowest width. CSS Text 3 § 5.5.
    auto cut = paragraph.overflowOpportunities().begin();
    for (const Opportunity& end : paragraph.opportunities()) {
        for (; cut != paragraph.overflowOpportunities().end() && cut->cluster < end.cluster; ++cut)
            word(*cut);
        word(end);
    }
    return widest;
}

}  // namespace tenter::text
