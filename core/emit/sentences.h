// The comments of a stylesheet. They use plain spaces before units, so that stylesheets need no encoding.
#pragma once

#include <string>
#include <vector>

#include "project/project.h"

namespace tenter::emit {

/// `Heading: 15 px where the page is 860 px wide, 21 px where it is 1680 px.`; empty for a flat ramp.
std::string rampSentence(const std::string& role, const units::Ramp& ramp, project::Follow follow);

/// The first comment: project, classes and range of viewport widths.
std::string headSentence(const project::Project& project, const std::vector<std::size_t>& variants);

/// `.walks-pair and .walks-trio`.
std::string classList(const project::Project& project, const std::vector<std::size_t>& variants);

/// The role with a capital at its start.
std::string capitalised(const std::string& role);

}  // namespace tenter::emit
