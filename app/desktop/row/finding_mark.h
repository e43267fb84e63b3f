// The part that the chosen finding is of, marked as a draughtsman marks a place: outlined, hatched around.
#pragma once

#include "checks/finding.h"
#include "row/overlays.h"

namespace tenter::desktop::row {

/// Around the finding's part, or its card if it names none. At a width where it is not found the outline is
/// dashed, and nothing is hatched.
void paintFinding(OverlayTools& tools, const checks::Finding& finding);

}  // namespace tenter::desktop::row
