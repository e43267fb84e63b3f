// What a theme may say of a row's elements that a stylesheet must take back.
#pragma once

#include "emit/rules.h"

namespace tenter::emit {

/// Appends, to the rules of row, card, pictures and text, a reset for whatever would move them; then rules
/// for what stands between them and within them. `scope.given` is there. Every reset is neutral: which are
/// said, the theme decides.
void addResets(const BandScope& scope, Rules& rules);

}  // namespace tenter::emit
