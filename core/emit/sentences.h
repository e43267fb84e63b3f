// The comments of a stylesheet, as sentences.
#pragma once

#include <string>
#include <vector>

#include "project/project.h"

namespace tenter::emit {

/// `Heading: 15 px where the page is 860 px wide, 21 px where it is 1680`; empty for a flat ramp.
std::string rampSentence(const std::string& role, const units::Ramp& ramp, project::Follow follow);

/// What the stylesheet is for.
std::string headSentence(const project::Project& project, const std::vector<std::size_t>& variants);

/// `walks-pair and walks-trio`, with a dot before each.
std::string classList(const project::Project& project, const std::vector<std::size_t>& variants);

/// `3 columns`.
std::string columnWords(int columns);

/// The role's name as a sentence starts with it.
std::string capitalised(const std::string& role);

}  // namespace tenter::emit
