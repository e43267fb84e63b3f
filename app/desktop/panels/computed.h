// The value of a length setting in px at the current viewport width.
#pragma once

#include <optional>
#include <string>

#include "session/layout_cache.h"

namespace tenter::desktop::panels {

/// CSS px of the length or line height `value` of the setting `path`; empty for keywords and other values.
std::optional<double> computedPixels(const LayoutCache& layouts, const std::string& path,
                                     const project::Json& value);

}  // namespace tenter::desktop::panels
