// Copies a project's pictures and fonts into the folder that it is saved to.
#pragma once

#include <filesystem>
#include <optional>

#include "project/problem.h"
#include "project/project.h"

namespace tenter::desktop {

/// Copies the pictures and fonts of `project` from folder `from` into folder `to` and returns the project
/// with the new file names. Files outside `from` are copied into `to/pictures` or `to/fonts`. No existing
/// file is overwritten: a file with the same content is reused, otherwise the copy gets another name. Returns
/// nothing and adds a problem if a file cannot be copied.
std::optional<project::Project> collectFiles(const project::Project& project,
                                             const std::filesystem::path& from,
                                             const std::filesystem::path& to, project::Problems& problems);

/// `file` as a project in `folder` stores it: relative if it is inside the folder, otherwise the full path.
std::string storedPath(const std::filesystem::path& file, const std::filesystem::path& folder);

}  // namespace tenter::desktop
