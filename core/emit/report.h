// A summary of a project for a terminal.
#pragma once

#include <string>

#include "project/project.h"
#include "text/paragraph_store.h"

namespace tenter::emit {

/// For each variant: a table of sizes, lines and slack at its key widths (`checks::keyWidths`), the widths at
/// which browsers give different line counts, the room for text, and the findings. Then the breakpoints of a
/// given theme and what the fonts lack.
std::string report(const project::Project& project, text::ParagraphStore& store,
                   const text::BreakProfile& profile);

}  // namespace tenter::emit
