// Every kind of wish.
#pragma once

#include <string_view>
#include <vector>

#include "solve/constraint.h"

namespace tenter::solve {

/// The kinds in the order of constraints.def.
const std::vector<const Constraint*>& registry();

/// The kind with that name (`ConstraintTraits::name`); null if there is none.
const Constraint* constraintNamed(std::string_view name);

/// The keys of the short notation, each once, in the order of the registry.
std::vector<const WishKey*> wishKeys();

}  // namespace tenter::solve
