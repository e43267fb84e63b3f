// Colours behind text and focus rings, and colours with enough contrast on them.
#pragma once

#include <string>

#include "checks/subject.h"
#include "units/colour.h"

namespace tenter::checks {

/// The colour between cards in band `band`: the row over the container over a white page.
units::Colour rowBackground(const Subject& subject, std::size_t band);

/// The colour behind a part in band `band`: the card over the row over the container over a white page.
units::Colour cardBackground(const Subject& subject, std::size_t band);

/// The colour nearest to `ink`, towards black or white, that has at least `ratio` to 1 on `background`. Up to
/// 4.5 to 1 there is always one; `ink` if there is none.
units::Colour withContrast(const units::Colour& ink, const units::Colour& background, double ratio);

/// That colour and the direction in which contrast grows: `#767676 or darker`.
std::string coloursWithContrast(const units::Colour& ink, const units::Colour& background, double ratio);

}  // namespace tenter::checks
