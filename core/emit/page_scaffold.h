// What surrounds the row on an exported page.
#pragma once

#include <string>

#include "project/project.h"

namespace tenter::emit {

/// A class name for the container that no variant has.
std::string containerClass(const project::Project& project);

/// The rules that a theme would have for the page around the row: root size, scrollbar and the container with
/// the class `container`.
std::string scaffold(const project::Page& page, const std::string& container);

/// The name of the project and that of the variant.
std::string pageTitle(const project::Project& project, std::size_t variant);

}  // namespace tenter::emit
