// Takes a project's pictures and fonts along when it is saved.
#pragma once

#include <filesystem>
#include <optional>

#include "project/problem.h"
#include "project/project.h"

namespace tenter::desktop {

/// Copies what `project`, whose files are looked for in `from`, refers to into the folder `to`, and gives the
/// project with the names its files have there. What lies outside `from` goes into `pictures` or `fonts`. No
/// file that is there is overwritten: one of the same content serves, beside another one stands a new name.
/// Empty, with a problem, if something could not be copied.
std::optional<project::Project> carryFiles(const project::Project& project, const std::filesystem::path& from,
                                           const std::filesystem::path& to, project::Problems& problems);

/// `file` as a project in `folder` keeps it: relative if it lies inside, else whole until it is saved.
std::string keptName(const std::filesystem::path& file, const std::filesystem::path& folder);

}  // namespace tenter::desktop
