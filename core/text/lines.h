// Breaking a prepared paragraph into lines at one size and width.
#pragma once

#include <cstdint>
#include <vector>

#include "project/settings.h"
#include "text/paragraph.h"

namespace tenter::text {

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
struct LineQuery {
    double size = 16;
    double available = 0;
    double letterSpacing = 0;
    double wordSpacing = 0;
    project::OverflowWrap overflowWrap = project::OverflowWrap::Normal;
    bool balance = false;
};

/// Width in CSS px of a line from cluster `first` (with that start's correction in em) to opportunity `at`.
double lineWidth(const Paragraph& paragraph, const LineQuery& query, std::uint32_t first,
                 double startCorrection, const Opportunity& at);

/// Appends the paragraph's lines to `lines`; an empty paragraph has none.
void breakLines(const Paragraph& paragraph, const LineQuery& query, const BreakProfile& profile,
                std::vector<Line>& lines);

/// The paragraph on one line per forced break, and its widest word. CSS Sizing 3 § 5.1: max-content and
/// min-content width, CSS px.
double maxContent(const Paragraph& paragraph, const LineQuery& query);
double minContent(const Paragraph& paragraph, const LineQuery& query);

}  // namespace tenter::text
