// Resets for declarations of a theme.
#pragma once

#include "emit/rules.h"

namespace tenter::emit {

/// Adds resets to the rules of row, card, pictures and text, and rules for the elements between them and
/// inside them. `scope.given` is not null. Every reset is neutral; whether it is printed depends on the
/// theme.
void addResets(const BandScope& scope, Rules& rules);

}  // namespace tenter::emit
