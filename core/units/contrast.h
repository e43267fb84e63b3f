// Contrast between colours.
#pragma once

#include "units/colour.h"

namespace tenter::units {

/// Relative luminance from 0 (black) to 1 (white); alpha is ignored. WCAG 2.2, "relative luminance".
double luminance(const Colour& colour);

/// Contrast ratio, from 1 to 21, of `ink` on an opaque `ground`. WCAG 2.2, "contrast ratio".
double contrast(const Colour& ink, const Colour& ground);

/// The opaque colour that results when `over` is drawn on an opaque `under`, mixed in sRGB. CSS Compositing 1
/// § 9.1 (source over).
Colour compositeOver(const Colour& over, const Colour& under);

}  // namespace tenter::units
