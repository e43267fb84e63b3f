// New cards and parts, each with a text that names its role.
#pragma once

#include <string>

#include "project/project.h"

namespace tenter::desktop {

/// A part of `role` with the text `New heading`, `New paragraph`, `New kicker`; a button links to `#`.
project::TextPart newTextPart(const std::string& role);
/// A card of a heading, a paragraph and a button.
project::Card newCard();

}  // namespace tenter::desktop
