// The form of a stylesheet whose values are custom properties on the row.
#pragma once

#include <string>
#include <vector>

#include "emit/band_changes.h"
#include "emit/given_sheet.h"

namespace tenter::emit {

/// Moves values into custom properties of the element with the variant's class: values that change between
/// bands or variants, and those that a maintainer most often changes (sizes, colours, spacing). Rules then
/// use them by `var()`, and media queries set only custom properties. CSS Custom Properties 1 § 2 and § 3.
/// `blocks` are those of `blocks()` (emit/band_changes.h).
void moveToCustomProperties(const project::Project& project, const GivenSheet* given,
                            std::vector<Block>& blocks);

}  // namespace tenter::emit
