// Contrast between colours.
#pragma once

#include "units/colour.h"

namespace tenter::units {

/// Relative luminance, 0 (black) to 1 (white); alpha is not looked at. WCAG 2.2, "relative luminance".
double luminance(const Colour& colour);

/// Contrast ratio, 1 to 21, of `ink` drawn on an opaque `ground`. WCAG 2.2, "contrast ratio".
double contrast(const Colour& ink, const Colour& ground);

/// `over` laid on an opaque `under`, in sRGB. CSS Compositing 1 § 9.1 (source over).
Colour compositeOver(const Colour& over, const Colour& under);

}  // namespace tenter::units
