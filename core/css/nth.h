// `An+B`, as in :nth-child(2n + 1). CSS Syntax 3 § 6.
#pragma once

#include <optional>
#include <string_view>

#include "css/selectors.h"

namespace tenter::css {

/// The value of such as `odd`, `even`, `3`, `2n` or `-n + 3`; empty for anything else. White space at the
/// ends is ignored. Numbers are limited to ±1e9.
std::optional<Nth> readNth(std::string_view text);

}  // namespace tenter::css
