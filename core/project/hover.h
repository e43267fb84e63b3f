// What a part looks like under the pointer if nothing is said.
#pragma once

#include "project/settings.h"

namespace tenter::project {

/// Fills what `style.hover` leaves unset from the colours at rest, so that a button given another colour does
/// not fall back to the default one under the pointer: the background a shade darker, the rest as it is.
void fillHover(TextStyle& style);

}  // namespace tenter::project
