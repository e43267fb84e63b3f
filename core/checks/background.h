// Colours behind text and focus rings, and colours with enough contrast on them.
#pragma once

#include <string>

#include "layout/prepared.h"
#include "units/colour.h"

namespace tenter::checks {

/// The colour between cards in an interval: the row over the container over a white page.
units::Colour rowBackground(const layout::IntervalPlan& interval);

/// The colour behind a part in an interval: the card over the row over the container over a white page.
units::Colour cardBackground(const layout::IntervalPlan& interval);

/// The colour nearest to `ink`, towards black or white, that has at least `ratio` to 1 on `background`. Up to
/// 4.5 to 1 there is always one; `ink` if there is none.
units::Colour withContrast(const units::Colour& ink, const units::Colour& background, double ratio);

/// That colour and the direction in which contrast grows: `#767676 or darker`.
std::string coloursWithContrast(const units::Colour& ink, const units::Colour& background, double ratio);

}  // namespace tenter::checks
