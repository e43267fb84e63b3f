// What is sized by the card's own width.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "project/project.h"

namespace tenter::project {

/// Roles that cards use, in document order; if none, every role the project knows.
std::vector<std::string> usedRoles(const Project& project);

/// The path of the first setting that is a share of the card's width (a ramp that follows it, or a length in
/// cqi), such as `text/body/follow`, among pictures and `roles`; empty if there is none. Where there is one,
/// cards must be containers. CSS Conditional 5 § 5.1.
std::optional<std::string> cardScaleAt(const Settings& settings, const std::vector<std::string>& roles);

}  // namespace tenter::project
