// `An+B`, as in :nth-child(2n + 1). CSS Syntax 3 § 6.
#pragma once

#include <optional>
#include <string_view>

#include "css/selectors.h"

namespace tenter::css {

/// Reads `odd`, `even`, `3`, `2n`, `-n + 3`; white space at the ends is ignored. Numbers beyond ±1e9 count as
/// that.
std::optional<Nth> readNth(std::string_view text);

}  // namespace tenter::css
