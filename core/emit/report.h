// A project in short, to be read in a terminal.
#pragma once

#include <string>

#include "project/project.h"
#include "text/paragraph.h"

namespace tenter::emit {

/// For each variant a table of what its row is at both ends of the range and at both sides of each
/// breakpoint, and where break profiles differ; then what the fonts lacked.
std::string report(const project::Project& project, text::ParagraphStore& store,
                   const text::BreakProfile& profile);

}  // namespace tenter::emit
