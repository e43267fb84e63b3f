// Findings as JSON and as a list to be read.
#pragma once

#include <string>
#include <vector>

#include "checks/checks.h"

namespace tenter::emit {

/// A JSON array, one finding a line; numbers in full double precision.
std::string findingsJson(const std::vector<checks::Finding>& findings);

/// `0 errors, 4 warnings, 1 note`.
std::string findingCounts(const std::vector<checks::Finding>& findings);

/// One paragraph a finding, then what is silenced and why, the caution at the end. `shareOf` says what shares
/// are of: `the widths` or `the visits`.
std::string findingsList(const checks::Checked& checked, const std::string& shareOf);

}  // namespace tenter::emit
