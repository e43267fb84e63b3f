// What is handed over, for callers that include Qt: there, `emit` is a macro, and core's namespace of that
// name cannot be written.
#pragma once

#include <string>

#include "project/project.h"

namespace tenter::desktop {

/// The stylesheet of one variant, in the project's unit: what `tenter-cli stylesheet` prints.
std::string stylesheetOf(const project::Project& project, std::size_t variant);
/// `clamp(…)` or a plain length: the font size of `role` in band `band`.
std::string fontSizeOf(const project::Project& project, std::size_t variant, std::size_t band,
                       const std::string& role);

}  // namespace tenter::desktop
