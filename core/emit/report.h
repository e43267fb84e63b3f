// A project in short, to be read in a terminal.
#pragma once

#include <string>

#include "project/project.h"
#include "text/paragraph_store.h"

namespace tenter::emit {

/// For each variant a table of what its row is at the widths that tell most of it (`checks::keyWidths`),
/// where break profiles differ and how much longer copy may get; then where a given theme changes, and what
/// the fonts lacked.
std::string report(const project::Project& project, text::ParagraphStore& store,
                   const text::BreakProfile& profile);

}  // namespace tenter::emit
