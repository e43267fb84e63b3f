// Why an edit is refused, in the words of the window.
#pragma once

#include <QString>

#include "project/problem.h"
#include "project/project.h"

namespace tenter::desktop {

/// The problem as one or two sentences that name settings by their labels. JSON pointers to settings become
/// those, with the variant and the band of `project` that they lead to.
QString refusal(const project::Project& project, const project::Problem& problem);

}  // namespace tenter::desktop
