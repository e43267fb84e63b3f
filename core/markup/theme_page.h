// The page of a row according to its theme: the root font size and the container of the row.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "css/cascade.h"
#include "markup/page_boxes.h"
#include "markup/tree.h"
#include "project/project.h"
#include "wording/sentence.h"

namespace tenter::markup {

/// The page in a range of viewport widths up to and including `upTo` (CSS px).
struct ThemeRange {
    double upTo = 0;
    css::Line rootSize = {16, 0};  ///< CSS px by viewport width
    project::Container container;
};

/// The page in an interval of viewport widths, all lengths linear.
struct PagePiece {
    double from = 0;
    double upTo = 0;
    css::Line root = {16, 0};
    PageBox box;
    units::Colour background{255, 255, 255, 255};
    bool rightToLeft = false;
};

/// The pieces as ranges of the page, each as long as possible. `exact` becomes false if a container cannot be
/// where a piece has it; `inexactPlace` says so in a sentence.
std::vector<ThemeRange> rangesOf(const std::vector<PagePiece>& pieces, bool& exact);
wording::Sentence inexactPlace();

/// What the theme sets for the page.
struct ThemePage {
    /// Rising; at least one. The last range has no upper end: its `upTo` is infinite.
    std::vector<ThemeRange> ranges;
    std::vector<wording::Sentence> cautions;  ///< what could not be read, a sentence each
    std::vector<wording::Sentence> unread;  ///< those of them after which the page can differ from the ranges
    std::vector<std::string> notes;         ///< what holds only here, such as lengths of an installed font
    std::vector<double> breakpoints;  ///< widths at which a media condition of the theme changes, CSS px

    /// The root size in px at wide viewports.
    [[nodiscard]] double rootSize() const;
    [[nodiscard]] const project::Container& container() const { return ranges.back().container; }
    /// The container at wide viewports in a sentence; "assumed" where something could not be read.
    [[nodiscard]] std::string containerSentence() const;
    /// Puts root size, container and their ranges into a page. Without `withContainer` its container stays.
    void into(project::Page& page, bool withContainer) const;
};

/// The root size and the container of `row`, the content box of its parent, between two viewport widths
/// (CSS px). `page` has the rules of the theme, from sources with these names, `tree` all elements that they
/// refer to.
ThemePage themePage(const Tree& tree, NodeId row, const css::Sheet& page, double narrowest, double widest,
                    std::vector<SheetPlace> sheets = {});

}  // namespace tenter::markup
