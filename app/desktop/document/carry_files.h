// Takes a project's pictures and fonts along when it is saved into another folder.
#pragma once

#include <filesystem>

#include "project/problem.h"
#include "project/project.h"

namespace tenter::desktop {

/// Copies every file that `project` refers to from `from` to the same place under `to`. A file that is there
/// already stays if it is the same, and is a problem if it is not; then nothing is copied.
bool carryFiles(const project::Project& project, const std::filesystem::path& from,
                const std::filesystem::path& to, project::Problems& problems);

}  // namespace tenter::desktop
