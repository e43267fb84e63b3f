// Settings that are valid alone but that browsers cannot apply together.
#pragma once

#include "project/problem.h"
#include "project/project.h"

namespace tenter::project {

/// One problem for each such pair of settings that holds in a band, each pair once. Its place is the setting
/// to change; its `file` is empty. A file with such a problem is not read.
Problems conflicts(const Project& project);

}  // namespace tenter::project
