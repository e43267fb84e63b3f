// The look of an existing row, read from the theme of its page.
#pragma once

#include <string>
#include <vector>

#include "markup/given.h"
#include "project/project.h"
#include "start/page_findings.h"
#include "start/page_piece.h"
#include "text/fonts.h"

namespace tenter::start {

/// What a page gives its row at all viewport widths.
struct PageLook {
    project::Settings style;           ///< that of the widest band
    std::vector<project::Band> bands;  ///< what the others change
    std::vector<PageNote> notes;       ///< one for each property that a project cannot hold
    std::vector<FoundElement> found;   ///< what the page declares for the row, its cards and its parts
};

/// Reads columns, gaps, widths, paddings, borders, colours, pictures and texts of the row from the rules of
/// `theme`, between two viewport widths (CSS px). `page` has the container of the row and the root size.
PageLook pageLook(const markup::GivenRow& row, const std::string& theme, const project::Page& page,
                  double least, double most, text::Fonts& fonts);

}  // namespace tenter::start
