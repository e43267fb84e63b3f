// Names of links, in a form that can be compared.
#pragma once

#include <string>
#include <string_view>

#include "project/project.h"

namespace tenter::checks {

/// `text` (UTF-8) with case folded (Unicode 15 § 3.13), white space and no-break spaces collapsed and
/// trimmed, and without soft hyphens and zero-width spaces.
std::string plainLabel(std::string_view text);

/// The accessible name of a link: its own name, or else its text.
std::string nameOf(const project::TextPart& part);

}  // namespace tenter::checks
