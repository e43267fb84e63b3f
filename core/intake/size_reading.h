// A pasted font size as a ramp.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "project/problem.h"
#include "project/settings.h"
#include "units/ramp.h"

namespace tenter::intake {

/// What a pasted size is read against. All in CSS px.
struct SizeContext {
    double least = 320;  ///< the band's widths; for a size that follows the card, the card's content widths
    double most = 1920;
    double root = 16;          ///< the theme's root size
    std::optional<double> em;  ///< the parent's font size, which em and % are of; the root's if empty
};

struct SizeReading {
    units::Ramp ramp;
    project::Follow follow = project::Follow::Viewport;
    bool exact = true;     ///< nowhere more than 0.01 px off
    double departs = 0;    ///< CSS px that the ramp is off at most
    double departsAt = 0;  ///< the width where it is
    std::string says;      ///< all of it in words, and what was assumed
};

/// Reads a size as CSS has it: a value, declarations or a rule (see font_size_value.h). It follows the card
/// if it is in cqi or cqw. Empty if it cannot be read, with the place in `pasted`. Other ramps than exact
/// ones go through the sizes at both ends of the widths.
std::optional<SizeReading> readSize(std::string_view pasted, const SizeContext& context,
                                    project::Problems& problems);

}  // namespace tenter::intake
