// The figures of a row at one width, and sentences about all widths, for reports.
#pragma once

#include <string>

#include "layout/layout.h"
#include "text/paragraph_store.h"

namespace tenter::emit {

/// The figures of a role over all cards of a layout.
struct RoleFigures {
    bool there = false;
    double size = 0;          ///< CSS px
    std::uint32_t lines = 0;  ///< the most of any card
    double slack = 1;         ///< the smallest of any card
};
RoleFigures figuresOf(const layout::PreparedRow& row, const layout::Layout& laid, const std::string& role);

/// `281.6 × 225.3`, of the widest picture in CSS px; `none` without pictures.
std::string widestPicture(const layout::Layout& laid);

/// One sentence: at which whole widths the break profiles give different line counts.
std::string engineDifferences(const project::Project& project, std::size_t variant,
                              text::ParagraphStore& store);

/// One sentence: the breakpoints of the page's theme. Empty without given markup.
std::string themeBreakpoints(const project::Project& project);

}  // namespace tenter::emit
