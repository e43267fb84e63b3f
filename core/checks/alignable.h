// Whether the parts of a row can be aligned.
#pragma once

#include "checks/check.h"

namespace tenter::checks {

/// False if another setting prevents that parts of neighbouring cards are aligned, such as a centred last
/// line of cards; then no finding may advise it.
bool canAlignParts(const Subject& subject);

}  // namespace tenter::checks
