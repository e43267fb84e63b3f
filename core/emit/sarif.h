// Findings as SARIF, the format in which pipelines show results beside files.
#pragma once

#include <string>
#include <vector>

#include "emit/checked_project.h"

namespace tenter::emit {

/// A SARIF log with one run. OASIS SARIF 2.1.0. Each finding is a result with the line of its part in the
/// project file; silenced findings are suppressed results with their reason.
std::string sarif(const std::vector<CheckedProject>& projects);

}  // namespace tenter::emit
