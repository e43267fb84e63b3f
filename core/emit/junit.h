// Findings as JUnit XML, the format in which pipelines list tests.
#pragma once

#include <string>
#include <vector>

#include "emit/checked_project.h"

namespace tenter::emit {

/// One test suite for each project, one test case for each check. A test case fails if its check has a
/// finding of severity `failOn` or above; its less severe findings are its output. A check that is silenced
/// and has silenced findings is skipped.
std::string junit(const std::vector<CheckedProject>& projects, checks::Severity failOn);

}  // namespace tenter::emit
