// Settings that are sound alone but that browsers cannot honour together.
#pragma once

#include "project/problem.h"
#include "project/project.h"

namespace tenter::project {

/// One problem for each such pair of settings that holds in some band of some variant, told once, at the
/// setting to be changed; `file` is left empty. A file with one is not read.
Problems conflicts(const Project& project);

}  // namespace tenter::project
