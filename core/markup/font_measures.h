// Lengths of installed fonts, for units that depend on the font of an element.
#pragma once

#include "css/cascade.h"

namespace tenter::markup {

/// Finds the first font of a family list that is installed, as browsers on this computer do, and remembers
/// it.
css::FontLookup fontLookup();

}  // namespace tenter::markup
