// The mark of the chosen finding: an outline around its part with hatching outside.
#pragma once

#include "checks/finding.h"
#include "row/overlays.h"

namespace tenter::desktop::row {

/// Draws the mark around the finding's part, or around its card if it has no part. If the finding does not
/// occur at the current width, the outline is dashed and there is no hatching.
void paintFinding(OverlayTools& tools, const checks::Finding& finding);

}  // namespace tenter::desktop::row
