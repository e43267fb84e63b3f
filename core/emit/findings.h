// Findings as JSON and as a list for a terminal.
#pragma once

#include <string>
#include <vector>

#include "checks/checks.h"

namespace tenter::emit {

/// A JSON array with one finding per line; numbers in full double precision.
std::string findingsJson(const std::vector<checks::Finding>& findings);

/// `0 errors, 4 warnings, 1 note`.
std::string findingCounts(const std::vector<checks::Finding>& findings);

/// The findings as paragraphs: severity, check and share; the text; the widths that the text does not name;
/// the source. Shares are of `shareOf`, `widths` or `visits`. Indented by `indent` spaces.
std::string findingParagraphs(const project::Project& project, const std::vector<checks::Finding>& findings,
                              const std::string& shareOf, std::size_t indent = 0);

/// These paragraphs, then the silenced findings with the reasons, the counts and the caution.
std::string findingsList(const project::Project& project, const checks::Checked& checked,
                         const std::string& shareOf);

}  // namespace tenter::emit
