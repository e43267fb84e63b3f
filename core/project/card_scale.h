// Settings that depend on the width of the card.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "project/project.h"

namespace tenter::project {

/// The roles that cards use, in document order. If no card has text: every role of the project.
std::vector<std::string> usedRoles(const Project& project);

/// The path of the first setting of pictures and `roles` that depends on the width of the card: a ramp that
/// follows it, or a length in cqi. Such as `text/body/follow`; empty if there is none. If there is one, cards
/// must be size containers. CSS Conditional 5 § 5.1.
std::optional<std::string> cardScaleAt(const Settings& settings, const std::vector<std::string>& roles);

}  // namespace tenter::project
