// What lies behind text and rings.
#pragma once

#include "checks/subject.h"
#include "units/colour.h"

namespace tenter::checks {

/// Container and row laid on a white page in band `band`: what is between cards.
units::Colour rowGround(const Subject& subject, std::size_t band);

/// Container, row and card laid on a white page in band `band`: what is behind a part.
units::Colour cardGround(const Subject& subject, std::size_t band);

/// The colour nearest to `ink`, towards black or white, that has at least `ratio` to 1 on `ground`; `ink` if
/// none has.
units::Colour withContrast(const units::Colour& ink, const units::Colour& ground, double ratio);

}  // namespace tenter::checks
