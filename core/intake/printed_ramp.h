// The ramp in round numbers that the stylesheet prints as a given font size.
#pragma once

#include <optional>
#include <string_view>

#include "project/settings.h"
#include "units/ramp.h"

namespace tenter::intake {

/// The ramp with the roundest widths and the fewest decimals whose font size is printed as `css`
/// (units/ramp.h), so that it lays out the same text. Different ramps have the same printed size, because its
/// numbers have four decimals; people choose round ones. `near`: the ramp of the printed numbers; `root`: the
/// root font size, CSS px. Empty if `css` is not printed for any ramp close to it.
std::optional<units::Ramp> rampPrintedAs(std::string_view css, const units::Ramp& near, double root,
                                         project::Follow follow);

}  // namespace tenter::intake
