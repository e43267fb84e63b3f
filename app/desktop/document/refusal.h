// Why an edit is refused, in the words of the window.
#pragma once

#include <QString>
#include <string>

#include "project/problem.h"
#include "project/project.h"

namespace tenter::desktop {

/// `Card padding top`: the name of the setting at `path` (such as `card/padding/top`), as its field has it.
QString settingTitle(const std::string& path);

/// The problem as one or two sentences that name settings by their labels. JSON pointers to settings become
/// those, with the variant and the band of `project` that they lead to.
QString refusal(const project::Project& project, const project::Problem& problem);

}  // namespace tenter::desktop
