// Reading a pasted font size as a ramp.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "intake/nearest_ramp.h"
#include "project/problem.h"
#include "project/settings.h"
#include "units/ramp.h"

namespace tenter::intake {

/// The context of a pasted size. All in CSS px.
struct SizeContext {
    double least = 320;  ///< range of viewport widths; of content widths for a size that follows the card
    double most = 1920;
    double root = 16;           ///< root font size of the theme
    std::optional<double> em;   ///< font size of the parent, for em and %; empty: the root size
    double negligible = 0.005;  ///< how far the ramp's numbers may be rounded
};

/// A pasted size as a ramp.
struct SizeReading {
    units::Ramp ramp;
    project::Follow follow = project::Follow::Viewport;
    bool exact = true;        ///< true if the largest error is at most 0.01 px
    double largestError = 0;  ///< largest difference of the ramp from the pasted size, CSS px
    double errorAt = 0;       ///< width of that difference, CSS px
    std::string says;         ///< the ramp, its error and the assumptions as sentences
};

/// The ramp of a font size in CSS: a value, declarations or a rule (see font_size_value.h). A size in cqi or
/// cqw follows the card. Empty, with a problem at `LINE:COLUMN` of `pasted`, if it cannot be read. A ramp
/// that is not exact has the pasted sizes at both ends of the widths.
std::optional<SizeReading> readSize(std::string_view pasted, const SizeContext& context,
                                    project::Problems& problems);

}  // namespace tenter::intake
