// Which wishes decide the sizes that were found, and by which word.
#pragma once

#include "solve/best.h"
#include "solve/solve.h"

namespace tenter::solve {

/// Where wishes decide: for each demand and band the row that does.
std::vector<Binding> bindingsOf(const Model& model, const std::vector<Demand>& demands, const Best& best);

/// A row as a place to be told.
Binding placeOf(const Model& model, const Demand& demand, const Spot& spot, double size);

}  // namespace tenter::solve
