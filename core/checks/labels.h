// Labels as they are compared.
#pragma once

#include <string>
#include <string_view>

#include "project/project.h"

namespace tenter::checks {

/// UTF-8 with case folded (Unicode 15 § 3.13), white space and no-break spaces collapsed and trimmed, soft
/// hyphens and zero-width spaces left out.
std::string plainLabel(std::string_view text);

/// What a link is called: its name, or else its copy.
std::string nameOf(const project::TextPart& part);

}  // namespace tenter::checks
