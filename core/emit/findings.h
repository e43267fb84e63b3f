// Findings as JSON and as a list for a terminal.
#pragma once

#include <string>
#include <vector>

#include "checks/checks.h"
#include "remedy/remedies.h"

namespace tenter::emit {

/// The remedies of each finding of a list. Empty: they were not asked for.
using RemediesOfAll = std::vector<std::vector<remedy::Remedy>>;

/// A JSON array with one finding per line; numbers in full double precision.
std::string findingsJson(const std::vector<checks::Finding>& findings);
/// The same with the remedies of each finding (emit/remedies.h).
std::string findingsJson(const project::Project& project, const std::vector<checks::Finding>& findings,
                         const RemediesOfAll& remedies);

/// The findings of several projects in one array; each finding names the file of its project. `files`,
/// `findings` and, if it is not empty, `remedies` have one entry for each project.
std::string findingsJson(const std::vector<const project::Project*>& projects,
                         const std::vector<std::string>& files,
                         const std::vector<std::vector<checks::Finding>>& findings,
                         const std::vector<RemediesOfAll>& remedies);

/// `0 errors, 4 warnings, 1 note`.
std::string findingCounts(const std::vector<checks::Finding>& findings);

/// The findings as paragraphs: severity, check and share; the text; the widths that the text does not name;
/// the source; the remedies, if there are any in `remedies`. Shares are of `shareOf`, `widths` or `visits`.
/// Indented by `indent` spaces.
std::string findingParagraphs(const project::Project& project, const std::vector<checks::Finding>& findings,
                              const std::string& shareOf, std::size_t indent = 0,
                              const RemediesOfAll& remedies = {});

/// These paragraphs, then the silenced findings with the reasons, the counts and the caution.
std::string findingsList(const project::Project& project, const checks::Checked& checked,
                         const std::string& shareOf, const RemediesOfAll& remedies = {});

}  // namespace tenter::emit
