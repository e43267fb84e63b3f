// The default style of a part under the pointer.
#pragma once

#include "project/settings.h"

namespace tenter::project {

/// Sets the unset members of `style.hover` from the colours at rest: the background darker, the others equal.
/// So a button with its own colour keeps that colour under the pointer.
void fillHover(TextStyle& style);

}  // namespace tenter::project
