// The places where wishes limit the sizes found, with the word that causes each limit.
#pragma once

#include "solve/solution.h"
#include "solve/solve.h"

namespace tenter::solve {

/// For each wish, variant and band with a binding constraint, the tightest one.
std::vector<Binding> bindingsOf(const Model& model, const std::vector<Wish>& wishes,
                                const Solution& solution);

/// `wish` at the place that a constraint comes from. `size`: of the role there, CSS px.
Binding bindingAt(const Model& model, const Wish& wish, const Origin& origin, double size);

}  // namespace tenter::solve
